package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds for any pack and load. */
class DischargePropertyTest {
    /** Interpolation and the reuse of steps leave this much, relative. */
    private static final double NOISE = 1e-4;

    @Property(tries = 150)
    void moreLoadIsNeverLongerAndTheRatioNeverLess(
            @ForAll @IntRange(max = 2) int kind,
            @ForAll @DoubleRange(min = 0.05, max = 3) double ratePerH,
            @ForAll @DoubleRange(min = 1.02, max = 2) double factor,
            @ForAll @DoubleRange(min = -15, max = 45) double ambientC) {
        PackState start = PackState.of(pack(kind, 6, 2, 1), air(ambientC));
        double powerW = start.pack().nominalEnergyJ() / 3600 * ratePerH;
        double lightS = discharge(start, powerW).durationS();
        double heavyS = discharge(start, powerW * factor).durationS();
        assertThat(heavyS).isLessThanOrEqualTo(lightS * (1 + NOISE));
    }

    @Property(tries = 100)
    void energyFallsAsTheCutoffRises(
            @ForAll @IntRange(max = 2) int kind,
            @ForAll @DoubleRange(min = 0.1, max = 2) double ratePerH,
            @ForAll @DoubleRange(min = 2.5, max = 3.5) double cutoffV,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double riseV) {
        PackState start = PackState.of(pack(kind, 6, 2, 1), air(20));
        Load load = new Load.Power(start.pack().nominalEnergyJ() / 3600 * ratePerH);
        double lowJ = Discharge.of(start, load, new Cutoff.CellVoltage(cutoffV)).energyJ();
        double highJ = Discharge.of(start, load, new Cutoff.CellVoltage(cutoffV + riseV))
                .energyJ();
        assertThat(highJ).isLessThanOrEqualTo(lowJ * (1 + NOISE));
    }

    @Property(tries = 100)
    void aPackScalesWithItsCells(
            @ForAll @IntRange(max = 2) int kind,
            @ForAll @IntRange(min = 1, max = 14) int series,
            @ForAll @IntRange(min = 1, max = 12) int parallel,
            @ForAll @DoubleRange(min = 0.1, max = 2) double ratePerH) {
        Discharge one = discharge(Cells.isothermal(pack(kind, 1, 1, 1)), 12 * ratePerH);
        Discharge many =
                discharge(Cells.isothermal(pack(kind, series, parallel, 1)), 12 * ratePerH * series * parallel);
        assertThat(many.durationS()).isCloseTo(one.durationS(), withPercentage(1e-6));
        assertThat(many.energyJ()).isCloseTo(series * parallel * one.energyJ(), withPercentage(1e-6));
    }

    @Property(tries = 100)
    void splittingASegmentChangesNothing(
            @ForAll @IntRange(max = 2) int kind,
            @ForAll @IntRange(min = 1, max = 11) int first,
            @ForAll @DoubleRange(min = 0.1, max = 2) double ratePerH,
            @ForAll @DoubleRange(min = -10, max = 40) double ambientC) {
        Cell cell = cell(kind);
        Pack whole = Cells.pack(Segment.full(12, 2, cell));
        Pack split = Cells.pack(Segment.full(first, 2, cell), Segment.full(12 - first, 2, cell));
        double powerW = whole.nominalEnergyJ() / 3600 * ratePerH;
        Discharge one = discharge(PackState.of(whole, air(ambientC)), powerW);
        Discharge two = discharge(PackState.of(split, air(ambientC)), powerW);
        assertThat(two.energyJ()).isCloseTo(one.energyJ(), withPercentage(1e-6));
    }

    /** Below 1C; at higher rates a cold cell may heat itself past a warmer one. */
    @Property(tries = 100)
    void aColderCellThatStaysColdNeverGivesMore(
            @ForAll @IntRange(max = 2) int kind,
            @ForAll @DoubleRange(min = 0.1, max = 1) double ratePerH,
            @ForAll @DoubleRange(min = -10, max = 35) double ambientC,
            @ForAll @DoubleRange(min = 0.5, max = 5) double colderK) {
        Pack pack = pack(kind, 1, 1, 1);
        double powerW = pack.nominalEnergyJ() / 3600 * ratePerH;
        double warmJ = discharge(kept(pack, ambientC), powerW).energyJ();
        double coldJ = discharge(kept(pack, ambientC - colderK), powerW).energyJ();
        assertThat(coldJ).isLessThanOrEqualTo(warmJ * (1 + NOISE));
    }

    /** What the cells lose at rest is what they deliver, heat, and lose in the leads. */
    @Property(tries = 100)
    void energyIsConserved(
            @ForAll @IntRange(max = 2) int kind,
            @ForAll @DoubleRange(min = 0.1, max = 2) double ratePerH,
            @ForAll @DoubleRange(min = 0, max = 0.05) double leadOhm,
            @ForAll @DoubleRange(min = -5, max = 40) double ambientC) {
        Pack pack = new Pack(pack(kind, 6, 3, 1).segments(), leadOhm);
        PackState start = PackState.of(pack, air(ambientC));
        Discharge discharge = discharge(start, pack.nominalEnergyJ() / 3600 * ratePerH);
        double outJ = discharge.energyJ() + discharge.heatJ() + discharge.leadLossJ();
        double storedJ = storedJ(start, discharge.end());
        // Current is held over a step: half a step's growth of it is the error.
        assertThat(outJ).isCloseTo(storedJ, withPercentage(0.15));
    }

    @Property(tries = 200)
    void everyNumberIsFinite(
            @ForAll @IntRange(max = 2) int kind,
            @ForAll @IntRange(max = 2) int otherKind,
            @ForAll @DoubleRange(min = 0.3, max = 1) double health,
            @ForAll @DoubleRange(min = 0, max = 1) double charge,
            @ForAll @DoubleRange(min = 0.01, max = 100) double ratePerH,
            @ForAll @DoubleRange(min = -50, max = 70) double ambientC,
            @ForAll @DoubleRange(min = 1, max = 60) double packCutoffV) {
        Pack pack = new Pack(
                List.of(new Segment(6, 2, cell(kind), health, charge), Segment.full(4, 1, cell(otherKind))), 0.02);
        Load load = new Load.Power(pack.nominalEnergyJ() / 3600 * ratePerH);
        PackEnergy energy =
                PackEnergy.of(new PackTask(pack, load, new Cutoff.PackVoltage(packCutoffV), air(ambientC), 0.2));
        Discharge discharge = energy.discharge();
        List<Double> numbers = new ArrayList<>(List.of(
                discharge.durationS(),
                discharge.energyJ(),
                discharge.heatJ(),
                discharge.startVoltageV(),
                discharge.endVoltageV(),
                discharge.lowestVoltageV(),
                discharge.highestCurrentA(),
                discharge.highestTemperatureK(),
                energy.budget().energyBelowCutoffJ(),
                energy.budget().durationToReserveS(),
                energy.times().packS(),
                energy.times().weakestCellS(),
                energy.cRatePerH(),
                energy.chargeTimeS().orElse(0)));
        energy.curve().forEach(it -> numbers.addAll(List.of(it.voltageV(), it.temperatureK())));
        assertThat(numbers).allMatch(Double::isFinite);
        assertThat(energy.budget().energyBelowCutoffJ()).isNotNegative();
    }

    /** To the error of the steps themselves, 0.03 %. */
    @Property(tries = 100)
    void aRunCutAnywhereGoesOnAsIfItWereWhole(
            @ForAll @IntRange(max = 2) int kind,
            @ForAll @DoubleRange(min = 0.02, max = 0.95) double share,
            @ForAll @DoubleRange(min = 0.1, max = 1) double ratePerH) {
        PackState start = PackState.of(pack(kind, 12, 2, 1), air(15));
        double powerW = start.pack().nominalEnergyJ() / 3600 * ratePerH;
        Discharge whole = discharge(start, powerW);
        Load.Profile first = new Load.Profile(List.of(new PowerStep(powerW, share * whole.durationS())));
        Discharge begun = Discharge.of(start, first, new Cutoff.CellVoltage(2.8));
        Discharge rest = discharge(begun.end(), powerW);
        assertThat(begun.ending()).isEqualTo(DischargeEnd.PROFILE_END);
        assertThat(begun.durationS() + rest.durationS()).isCloseTo(whole.durationS(), withPercentage(0.05));
    }

    private static Discharge discharge(PackState start, double powerW) {
        return Discharge.of(start, new Load.Power(powerW), new Cutoff.CellVoltage(2.8));
    }

    private static double storedJ(PackState from, PackState to) {
        double sumJ = 0;
        int slices = 2000;
        for (int k = 0; k < from.pack().segments().size(); k++) {
            Segment segment = from.pack().segments().get(k);
            CellState cell = from.copyOfCell(k);
            double low = to.stateOfChargeFraction(k);
            double high = from.stateOfChargeFraction(k);
            double meanV = 0;
            for (int i = 0; i < slices; i++) {
                cell.charge = low + (high - low) * (i + 0.5) / slices;
                meanV += cell.restV() / slices;
            }
            double cellC = cell.cell().capacityC() * (high - low);
            sumJ += segment.seriesCount() * segment.parallelCount() * cellC * meanV;
        }
        return sumJ;
    }

    private static PackState kept(Pack pack, double temperatureC) {
        return PackState.of(
                pack, List.of(PackState.cell(pack.segments().get(0), Bath.keepingAt(temperatureC + 273.15))));
    }

    private static Surroundings air(double ambientC) {
        return Surroundings.of(ambientC + 273.15, Covering.WRAPPED);
    }

    private static Pack pack(int kind, int series, int parallel, double health) {
        return Cells.pack(new Segment(series, parallel, cell(kind), health, 1));
    }

    private static Cell cell(int kind) {
        return Cell.typical(Chemistry.values()[kind], 4 * 3600);
    }
}
