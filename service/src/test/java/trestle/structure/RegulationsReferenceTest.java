package trestle.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Formulas of CS-VLA 341 and 14 CFR 23.341 (read as transcripts) and of 14 CFR 23.337, 23.473 (from memory) and 23.725 (read).
 * The rules print formulas, not these numbers: they were worked apart from this code.
 */
class RegulationsReferenceTest {
    private static final double KG_PER_M2_PER_PSF = 4.88242764;
    private static final double M_PER_FT = 0.3048;

    /** CS-VLA 341: Kg = 0.88 μ/(5.3 + μ). */
    @Test
    void alleviation() {
        double[] ratio = {5, 10, 20, 50, 100};
        double[] factor = {0.42718, 0.57516, 0.69565, 0.79566, 0.83571};
        for (int i = 0; i < ratio.length; i++) {
            assertThat(Gust.alleviation(ratio[i])).isCloseTo(factor[i], within(5e-6));
        }
    }

    /** 14 CFR 23.341 at 16 lb/ft², 4.9 ft, 4.5 per rad, 120 kt, 50 ft/s; its 498 is 498.53 rounded, so the forms differ by 0.1 %. */
    @Test
    void gustLoadFactorInPoundsAndInSiUnits() {
        double massRatio = Gust.massRatio(16 * KG_PER_M2_PER_PSF, 0.0023769 * 515.378818, 4.9 * M_PER_FT, 4.5);
        double alleviation = Gust.alleviation(massRatio);
        assertThat(massRatio).isCloseTo(18.977, within(5e-4));
        assertThat(alleviation).isCloseTo(0.68788, within(5e-6));
        assertThat(1 + alleviation * 50 * 120 * 4.5 / (498 * 16)).isCloseTo(3.3309, within(5e-5));
        double metric = 1 + Gust.increment(alleviation, 50 * M_PER_FT, 120 * 1852 / 3600.0, 4.5, 16 * 47.880259);
        assertThat(metric).isCloseTo(3.3284, within(5e-5));
    }

    @Test
    void manoeuvringLimit() {
        assertThat(Flight.conventionalLimit(4118)).isCloseTo(3.800, within(5e-4));
        assertThat(Flight.conventionalLimit(6000)).isCloseTo(3.600, within(5e-4));
        assertThat(Flight.conventionalLimit(12500)).isCloseTo(3.167, within(5e-4));
    }

    /** 23.725: 3.6 √(W/S) inches fall at 16 lb/ft² to 8.787 ft/s; 23.473: 8.800 ft/s. */
    @Test
    void sinkSpeed() {
        double sink = Flight.sinkMPerS(16 * 47.880259) / M_PER_FT;
        assertThat(sink).isCloseTo(8.800, within(5e-4));
        assertThat(sink / 8.787).isCloseTo(1, within(0.0015));
    }
}
