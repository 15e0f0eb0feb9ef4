package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/**
 * Packs against an earlier implementation of our own of the same equations, with plain steps of 2 s,
 * which is not in this repository: a check of the arithmetic, not of the model, and nothing
 * published. NMC cells of 5.1099 Ah kept at 25 °C, 54.6 W. Its end is the first step past the
 * cutoff; allowance 0.2 %.
 */
class PackCrossCheckTest {
    private static final double CAPACITY_AH = 5.1099;
    private static final double POWER_W = 54.6;

    @Test
    void twelveCells() {
        Discharge discharge = toCell(Cells.pack(segment(12, 1)), POWER_W);
        expect(discharge, 14_272, 216.46);
        assertThat(discharge.highestCurrentA()).isCloseTo(1.517, within(0.001));
        assertThat(discharge.end().stateOfChargeFraction(0)).isCloseTo(0.046, within(0.001));
    }

    @Test
    void twoSegmentsOfSixAreTwelve() {
        Discharge joined = toCell(Cells.pack(segment(6, 1), segment(6, 1)), POWER_W);
        expect(joined, 14_272, 216.46);
        Discharge one = toCell(Cells.pack(segment(12, 1)), POWER_W);
        assertThat(joined.durationS()).isCloseTo(one.durationS(), withPercentage(1e-7));
    }

    @Test
    void fourInParallelAtFourTimesThePowerGiveFourTimesTheEnergy() {
        expect(toCell(Cells.pack(segment(12, 4)), 4 * POWER_W), 14_272, 865.84);
    }

    @Test
    void aSegmentOfNineTenthsEndsTheFlightEarly() {
        Discharge discharge = toCell(weak(), POWER_W);
        expect(discharge, 12_918, 195.92);
        assertThat(discharge.limitingSegment()).isEqualTo(1);
        assertThat(discharge.segments().get(0).cellVoltageV()).isCloseTo(3.348, within(0.002));
        assertThat(discharge.segments().get(1).cellVoltageV()).isCloseTo(3.00, within(0.001));
    }

    @Test
    void aPackCutoffDrivesTheWeakSegmentLower() {
        Discharge discharge = toPack(weak(), 36);
        expect(discharge, 13_246, 200.90);
        assertThat(discharge.segments().get(1).cellVoltageV()).isCloseTo(2.727, within(0.01));
    }

    @Test
    void aSegmentStartedAtFourFifths() {
        Pack pack = Cells.pack(segment(6, 1), new Segment(6, 1, Cells.nmc(CAPACITY_AH), 1, 0.8));
        expect(toCell(pack, POWER_W), 11_316, 171.63);
        Discharge at36 = toPack(pack, 36);
        expect(at36, 11_784, 178.72);
        assertThat(at36.segments().get(1).cellVoltageV()).isCloseTo(2.578, within(0.01));
        Discharge at33 = toPack(pack, 33);
        expect(at33, 11_990, 181.85);
        assertThat(at33.segments().get(1).cellVoltageV()).isCloseTo(2.097, within(0.01));
    }

    @Test
    void fourCellsStartedAtSevenTenthsFallBelowTwoVoltsUnseen() {
        Pack pack = Cells.pack(segment(8, 1), new Segment(4, 1, Cells.nmc(CAPACITY_AH), 1, 0.7));
        Discharge discharge = toPack(pack, 36);
        expect(discharge, 10_694, 162.19);
        assertThat(discharge.segments().get(1).cellVoltageV()).isCloseTo(2.006, within(0.01));
    }

    private static Segment segment(int series, int parallel) {
        return Segment.full(series, parallel, Cells.nmc(CAPACITY_AH));
    }

    private static Pack weak() {
        return Cells.pack(segment(6, 1), Segment.full(6, 1, Cells.nmc(0.9 * CAPACITY_AH)));
    }

    private static Discharge toCell(Pack pack, double powerW) {
        return Discharge.of(Cells.isothermal(pack), new Load.Power(powerW), new Cutoff.CellVoltage(3.0));
    }

    /** Without the guard against over-discharge, to see how far the weak cells go. */
    private static Discharge toPack(Pack pack, double packV) {
        Limits limits = Limits.unguarded(pack, packV, Double.NEGATIVE_INFINITY);
        return Discharge.of(Cells.isothermal(pack), new Load.Power(POWER_W), limits, Trace.NONE);
    }

    private static void expect(Discharge discharge, double durationS, double energyWh) {
        assertThat(discharge.durationS()).isCloseTo(durationS, withPercentage(0.2));
        assertThat(discharge.energyJ() / 3600).isCloseTo(energyWh, withPercentage(0.2));
    }
}
