package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The quick integration of a peak against a plain one, and at its ends. */
class PeakRiseTest {
    @Property(tries = 100)
    void stiffStepsAgreeWithManySmallOnes(
            @ForAll @IntRange(min = 2, max = 24) int awg,
            @ForAll Insulation insulation,
            @ForAll Enclosure enclosure,
            @ForAll @DoubleRange(min = 0, max = 0.9) double share,
            @ForAll @DoubleRange(min = 1, max = 3) double overload,
            @ForAll @DoubleRange(min = 0.1, max = 60) double durationS) {
        Wire wire = Wire.usual(Gauge.awg(awg), insulation);
        HeatPath path = new HeatPath(wire, WireTasks.in(enclosure, 25, 2));
        double ratedA = SteadyState.currentA(wire, path, insulation.ratingTemperatureK());
        SteadyState from = SteadyState.of(wire, path, share * ratedA).orElseThrow();
        double peakA = overload * ratedA;
        double plainK = plainK(wire, path, from, peakA, durationS);
        // One in a thousand of the rise, and the tolerance of a step.
        PeakRise.end(wire, path, from, peakA, durationS)
                .map(PeakEnd::conductorK)
                .ifPresentOrElse(
                        k -> assertThat(k).isCloseTo(plainK, within(0.05 + 2e-3 * (plainK - from.conductorK()))),
                        () -> assertThat(plainK).isGreaterThan(0.99 * Copper.MELTING_POINT_K));
    }

    @Property(tries = 100)
    void longPeakSettlesWhereTheSteadyStateIs(
            @ForAll @IntRange(min = 2, max = 30) int awg,
            @ForAll Insulation insulation,
            @ForAll @DoubleRange(min = 0.05, max = 1.5) double load) {
        Wire wire = Wire.usual(Gauge.awg(awg), insulation);
        HeatPath path = new HeatPath(wire, WireTasks.freeAir(25));
        SteadyState cold = SteadyState.of(wire, path, 0).orElseThrow();
        double currentA = load * SteadyState.currentA(wire, path, insulation.ratingTemperatureK());
        double settledK = SteadyState.of(wire, path, currentA).orElseThrow().conductorK();
        assertThat(PeakRise.end(wire, path, cold, currentA, 1e5).orElseThrow().conductorK())
                .isCloseTo(settledK, within(0.2));
    }

    @Property(tries = 100)
    void longerPeakIsNeverCooler(
            @ForAll @IntRange(min = 2, max = 30) int awg,
            @ForAll @DoubleRange(min = 10, max = 300) double currentA,
            @ForAll @DoubleRange(min = 0.01, max = 100) double durationS) {
        Wire wire = Wire.usual(Gauge.awg(awg), Insulation.SILICONE_200);
        HeatPath path = new HeatPath(wire, WireTasks.freeAir(25));
        SteadyState cold = SteadyState.of(wire, path, 0).orElseThrow();
        double shortK = PeakRise.end(wire, path, cold, currentA, durationS)
                .map(PeakEnd::conductorK)
                .orElse(Copper.MELTING_POINT_K);
        double longK = PeakRise.end(wire, path, cold, currentA, 1.5 * durationS)
                .map(PeakEnd::conductorK)
                .orElse(Copper.MELTING_POINT_K);
        assertThat(longK).isGreaterThanOrEqualTo(shortK - 0.1);
    }

    @Test
    void copperMeltsInAThousandAmperes() {
        Wire wire = Wire.usual(Gauge.awg(30), Insulation.SILICONE_200);
        HeatPath path = new HeatPath(wire, WireTasks.freeAir(25));
        SteadyState cold = SteadyState.of(wire, path, 0).orElseThrow();
        assertThat(PeakRise.end(wire, path, cold, 1000, 1)).isEmpty();
    }

    /** Runge and Kutta's fourth-order method with steps far below every time constant. */
    private static double plainK(Wire wire, HeatPath path, SteadyState from, double currentA, double durationS) {
        double fastestS =
                path.innerResistanceKMPerW() * Math.min(wire.copperCapacityJPerMK(), wire.insulationCapacityJPerMK());
        int steps = (int) Math.ceil(Math.max(200, 8 * durationS / fastestS));
        double h = durationS / steps;
        double c = from.conductorK();
        double s = from.surfaceK();
        for (int i = 0; i < steps && c < Copper.MELTING_POINT_K; i++) {
            double[] k1 = rates(wire, path, currentA, c, s);
            double[] k2 = rates(wire, path, currentA, c + h / 2 * k1[0], s + h / 2 * k1[1]);
            double[] k3 = rates(wire, path, currentA, c + h / 2 * k2[0], s + h / 2 * k2[1]);
            double[] k4 = rates(wire, path, currentA, c + h * k3[0], s + h * k3[1]);
            c += h / 6 * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]);
            s += h / 6 * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]);
        }
        return c;
    }

    private static double[] rates(Wire wire, HeatPath path, double currentA, double c, double s) {
        double made = currentA * currentA * wire.resistancePerMOhm(c);
        double through = (c - s) / path.innerResistanceKMPerW();
        return new double[] {
            (made - through) / wire.copperCapacityJPerMK(),
            (through - path.heatWPerM(s)) / wire.insulationCapacityJPerMK()
        };
    }
}
