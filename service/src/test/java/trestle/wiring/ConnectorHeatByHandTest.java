package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Connectors as we worked them by hand; that ratings are for a rise of 30 K is from memory (IEC 60512-5). */
class ConnectorHeatByHandTest {
    private static final double AIR_K = 313.15;
    private static final Connector PLUG = new Connector("plug", 0.3e-3, 60, 1);

    private static WireRun run(double currentA, Optional<CurrentPeak> peak) {
        return new WireRun("main", currentA, 0.2, 25.2, peak, 1, List.of(PLUG), true, true);
    }

    /** 30 K times the square of 46/60 and of 28/60. */
    @ParameterizedTest
    @CsvSource({"46, 17.63", "28, 6.53"})
    void theRiseGoesWithTheSquareOfTheCurrent(double currentA, double riseK) {
        assertThat(ConnectorHeat.steadyRiseK(PLUG, currentA)).isCloseTo(riseK, within(0.005));
    }

    @Test
    void aContactMakesItsOwnHeat() {
        assertThat(ConnectorHeat.lossW(PLUG, 46)).isCloseTo(0.6348, within(0.00005));
    }

    @Test
    void aThermalResistanceDecidesWhereItIsKnown() {
        Connector known = new Connector("plug", 0.3e-3, 60, 1, OptionalDouble.of(28), 30);
        assertThat(ConnectorHeat.steadyRiseK(known, 46)).isCloseTo(0.6348 * 28, within(0.002));
    }

    /** One time constant of 90 s lets 0.632121 of the difference in. */
    @Test
    void aPeakComesOnTopOfWhatIsThere() {
        ConnectorHeat heat = ConnectorHeat.of(PLUG, run(28, Optional.of(new CurrentPeak(46, 90))), AIR_K);
        assertThat(heat.riseK()).isCloseTo(6.5333 + 0.632121 * (17.6333 - 6.5333), within(0.0005));
        assertThat(heat.temperatureK()).isCloseTo(AIR_K + heat.riseK(), within(1e-9));
        assertThat(heat.lossW()).isCloseTo(28 * 28 * 0.3e-3, within(1e-9));
    }

    @Test
    void withoutAPeakItIsThatOfTheContinuousCurrent() {
        assertThat(ConnectorHeat.of(PLUG, run(46, Optional.empty()), AIR_K).riseK())
                .isCloseTo(17.6333, within(0.0005));
    }

    /**
     * The inrush of 2200 µF at 25.2 V through 60 mΩ has V²C/(2R) = 11.642 A²s; 6 mm² of copper takes 952 555 A²s from 25 to
     * 200 °C by Onderdonk's equation: wires do not mind, plugs do.
     */
    @Test
    void anInrushIsNothingToAWire() {
        double inrushA2S = 25.2 * 25.2 * 2200e-6 / (2 * 0.060);
        double oneSecondA = Fusing.onderdonkCurrentA(6e-6, 25, 200, 1);
        assertThat(inrushA2S).isCloseTo(11.642, within(0.0005));
        assertThat(oneSecondA * oneSecondA).isCloseTo(952_555, within(0.5));
    }
}
