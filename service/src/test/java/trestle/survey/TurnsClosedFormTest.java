package trestle.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

/** Turns and ground speed at their ends, where the geometry is known. */
class TurnsClosedFormTest {
    @Test
    void twoRadiiApartAreHalfACircle() {
        assertThat(Turns.wayM(60, 30)).isCloseTo(Math.PI * 30, offset(1e-9));
        assertThat(Turns.wayM(100, 30)).isCloseTo(Math.PI * 30 + 40, offset(1e-9));
    }

    /** Onto the same line again: seven thirds of half a circle. */
    @Test
    void backOntoTheSameLineIsSevenThirds() {
        assertThat(Turns.wayM(0, 30)).isCloseTo(7 * Math.PI / 3 * 30, offset(1e-9));
    }

    @Test
    void theRadiusOfABank() {
        assertThat(Turns.radiusM(20, Math.PI / 4)).isCloseTo(400 / 9.80665, offset(1e-9));
    }

    @Test
    void windAheadBehindAndAcross() {
        Wind wind = new Wind(5, 0);
        assertThat(wind.groundMPerS(13, 0)).isCloseTo(8, offset(1e-12));
        assertThat(wind.groundMPerS(13, Math.PI)).isCloseTo(18, offset(1e-12));
        assertThat(wind.groundMPerS(13, Math.PI / 2)).isCloseTo(12, offset(1e-12));
        assertThat(wind.groundMPerS(4, Math.PI / 2)).isZero();
    }
}
