package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.units.Length;
import trestle.units.Temperature;

/**
 * Melting currents against a published table of Preece's law (reference/fusing/README.md) and the short-circuit form
 * of cables, from memory; and our peak against them. No worked example of Onderdonk's equation in a source that can be
 * named was found.
 */
class FusingReferenceTest {
    private static final double CIRCULAR_MIL_M2 = Math.PI / 4 * 0.0254e-3 * 0.0254e-3;

    /** The diameter is printed to 0.0001 in, which is worth 1.5 times its share in current. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/fusing/preece.csv", numLinesToSkip = 1)
    void preecesTableIsReproduced(double currentA, double diameterIn) {
        double halfDigit = 0.00005;
        assertThat(Fusing.preeceCurrentA(Length.mFromIn(diameterIn)))
                .isCloseTo(currentA, within(1.5 * currentA * halfDigit / diameterIn + 1e-4 * currentA));
    }

    /**
     * ICEA P-32-382, short circuits of insulated cable, from memory: {@code (I/A)² t = 0.0297 log10((T2 + 234) / (T1 + 234))}; Onderdonk
     * has 1/33, 2 % more.
     */
    @Test
    void onderdonkIsNearTheShortCircuitFormOfCables() {
        double areaM2 = 2581 * CIRCULAR_MIL_M2;
        double iceaA = 2581 * Math.sqrt(0.0297 * Math.log10((1083 + 234) / (25 + 234.0)) / 5);
        assertThat(Fusing.onderdonkCurrentA(areaM2, 25, 1083, 5)).isCloseTo(iceaA, withPercentage(1.1));
    }

    /**
     * In a twentieth of a second hardly any heat leaves the copper: our peak then agrees with
     * Onderdonk and with the cable form, which differ by 2 % in the heat.
     */
    @ParameterizedTest
    @ValueSource(doubles = {100, 200, 500, 1000})
    void shortPeakHeatsCopperAsOnderdonkSays(double endC) {
        Gauge solid = new Gauge(GaugeSystem.AWG, "10", 5.26e-6, Copper.resistancePerMOhm(5.26e-6));
        Wire wire = Wire.usual(solid, Insulation.SILICONE_200);
        HeatPath path = new HeatPath(wire, Surroundings.freeAir(Temperature.kFromC(25), 0));
        SteadyState cold = SteadyState.of(wire, path, 0).orElseThrow();
        double currentA = Fusing.onderdonkCurrentA(solid.areaM2(), 25, endC, 0.05);
        double reachedC = Temperature.cFromK(
                PeakRise.end(wire, path, cold, currentA, 0.05).orElseThrow().conductorK());
        assertThat(reachedC - 25).isCloseTo(endC - 25, withPercentage(3));
    }
}
