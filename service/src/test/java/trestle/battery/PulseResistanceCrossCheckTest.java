package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ten-second resistance of each set, times capacity, against an earlier implementation of our own of
 * the same equations, which is not in this repository; three digits. Nothing published.
 */
class PulseResistanceCrossCheckTest {

    @ParameterizedTest
    @CsvSource({"nmc, 0.183", "lipo, 0.120", "lco, 0.109", "lfp, 0.075", "nco, 0.057"})
    void resistanceTimesCapacity(String name, double ohmAh) {
        CellSet set = switch (name) {
            case "lco" -> Cells.LCO;
            case "nco" -> Cells.NCO;
            default -> CellSet.read("/trestle/battery/" + name + ".properties");
        };
        double capacityC = 3600 * 2.5;
        assertThat(PulseResistance.ohm(set, capacityC, 1) * 2.5).isCloseTo(ohmAh, within(0.0005));
    }

    @Test
    void aMeasuredResistanceIsReproduced() {
        CellSet set = Chemistry.LI_ION.set();
        double capacityC = 3600 * 3.2;
        for (double ohm : new double[] {0.020, 0.045, 0.057, 0.120}) {
            double factor = PulseResistance.factor(set, capacityC, ohm).orElseThrow();
            assertThat(PulseResistance.ohm(set, capacityC, factor)).isCloseTo(ohm, within(1e-6));
        }
    }

    @Test
    void aResistanceBelowThatOfDiffusionHasNoFactor() {
        assertThat(PulseResistance.factor(Chemistry.LI_ION.set(), 3600 * 3.2, 0.0001))
                .isEmpty();
    }
}
