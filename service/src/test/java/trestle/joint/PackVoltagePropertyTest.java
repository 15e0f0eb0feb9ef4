package trestle.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import trestle.battery.Cell;
import trestle.battery.CellLimits;
import trestle.battery.Chemistry;
import trestle.battery.Covering;
import trestle.battery.Cutoff;
import trestle.battery.Discharge;
import trestle.battery.InternalResistance;
import trestle.battery.Pack;
import trestle.battery.PackState;
import trestle.battery.Segment;
import trestle.battery.Surroundings;
import trestle.propulsion.Supply;
import trestle.propulsion.VoltageSource;
import trestle.units.Charge;

/** The pack behind a drive is the pack of the battery discipline. */
class PackVoltagePropertyTest {
    private static final int CELLS_IN_SERIES = 6;

    /** Straight lines between the rows lie this near to the model, V for each cell. */
    private static final double MOST_OFF_V = 0.001;

    private static final Surroundings COLD = Surroundings.of(278.15, Covering.WRAPPED);

    @Example
    void supplyKnowsFullVoltageRatingAndCutoff() {
        Supply supply = PackVoltage.supply(pack(1), Optional.of(new Cutoff.CountedCells(3.1, 6, true)), COLD);
        assertThat(supply.fullVoltageV()).isCloseTo(25.2, within(1e-9));
        assertThat(supply.maxCurrentA()).hasValue(4 * 9.8);
        assertThat(supply.cutoffVoltageV().orElseThrow()).isCloseTo(18.6, within(1e-9));
        assertThat(PackVoltage.supply(pack(1), Optional.empty(), COLD).cutoffVoltageV())
                .isEmpty();
    }

    @Property(tries = 100)
    void voltageIsThatOfADischargeAtItsFirstMoment(
            @ForAll @DoubleRange(min = 5, max = 1200) double powerW,
            @ForAll @DoubleRange(min = 0.2, max = 1) double charge) {
        Pack pack = pack(charge);
        double startV = Discharge.atConstantPower(pack, powerW, new Cutoff.CellMinimum(), COLD)
                .startVoltageV();
        assertThat(source(pack).terminalVoltageV(powerW / startV))
                .isCloseTo(startV, within(CELLS_IN_SERIES * MOST_OFF_V));
    }

    @Property(tries = 100)
    void voltageFallsWithCurrentWithoutEnd(
            @ForAll @DoubleRange(min = 0, max = 2000) double currentA,
            @ForAll @DoubleRange(min = 0.01, max = 500) double moreA) {
        VoltageSource source = source(pack(1));
        assertThat(source.terminalVoltageV(currentA + moreA)).isLessThan(source.terminalVoltageV(currentA));
    }

    @Example
    void withoutCurrentItIsTheVoltageAtRest() {
        assertThat(source(pack(0.6)).terminalVoltageV(0))
                .isCloseTo(PackState.of(pack(0.6), COLD).restVoltageV(), within(1e-9));
    }

    private static VoltageSource source(Pack pack) {
        return PackVoltage.supply(pack, Optional.empty(), COLD).source();
    }

    private static Pack pack(double charge) {
        Cell cell = new Cell(
                Chemistry.LI_ION,
                Charge.cFromAh(4.9),
                new InternalResistance.Dc(0.032),
                OptionalDouble.empty(),
                new CellLimits(
                        OptionalDouble.of(9.8), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
                List.of());
        return new Pack(List.of(new Segment(4, 4, cell, 1, charge), new Segment(2, 4, cell, 0.94, charge)), 0.008);
    }
}
