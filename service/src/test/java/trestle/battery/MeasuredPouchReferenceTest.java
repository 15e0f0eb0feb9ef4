package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The pouch set against the four discharges it was fitted to, 40 points each: how well it fits, not
 * how well it foretells another cell. See reference/rieger2016/README.md.
 */
class MeasuredPouchReferenceTest {
    private static final double NOMINAL_A = 2.28;

    /** First sample of all four curves, before the load: sets the charge at the start. */
    private static final double REST_V = 4.1811;

    /** 35 W/m²K of Ai et al. over about 0.6 dm² of pouch; heat of entropy is left out. */
    private static final double COOLING_W_PER_K = 0.2;

    private static final double HEAT_CAPACITY_J_PER_K = 41.3;

    @ParameterizedTest
    @CsvSource({"0.1, 0.0145", "0.5, 0.0066", "1, 0.0059", "2, 0.0113"})
    void measuredDischargesAreMetWithinSevenTenthsOfAPercentOfEnergy(double rate, double rmsV) {
        SampledCurve measured = measured(rate);
        SampledCurve ours = ours(rate);
        assertThat(measured.rmsAgainstV(ours)).isLessThan(rmsV);
        IntStream.rangeClosed(30, 33)
                .mapToDouble(tenths -> tenths / 10.0)
                .forEach(cutoffV -> assertThat(measured.energyErrorPercent(ours, cutoffV))
                        .as("energy to %s V", cutoffV)
                        .isBetween(-0.66, 0.66));
    }

    @Test
    void temperatureAtTheEndOf2CIsMet() {
        SampledCurve ours = ours(2);
        assertThat(ours.at(ours.durationS(), 3) - 298.15).isCloseTo(10.4, within(1.4));
    }

    private static SampledCurve ours(double rate) {
        CellSet set = Chemistry.LIPO.set();
        Bath bath = new Bath(298.15, 298.15, COOLING_W_PER_K, HEAT_CAPACITY_J_PER_K);
        double charge = set.electrodes().fractionAtOpenCircuitV(REST_V);
        return SampledCurve.of(Cells.one(set, bath, charge), new Load.Current(rate * NOMINAL_A), 2.95);
    }

    private static SampledCurve measured(double rate) {
        String name = rate < 1 ? Double.toString(rate) : Integer.toString((int) rate);
        return SampledCurve.read("/reference/rieger2016/discharge_" + name + "C.csv");
    }
}
