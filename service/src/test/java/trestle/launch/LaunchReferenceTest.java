package trestle.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;

/**
 * Glide and turn against a textbook and a handbook; see reference/anderson-flight/README.md. No launch with its
 * numbers in print was found: throw, dolly, bungee and catapult have closed forms only, {@link LaunchClosedFormTest}.
 */
class LaunchReferenceTest {

    /**
     * FAA, Pilot's Handbook of Aeronautical Knowledge, chapter 5, from memory: 120 kt, 30° of bank: 2215 ft, by R = V² / (11.26 tan φ).
     * Its 11.26 is 0.3 % below g in kt² per ft (11.294), hence our 2208 ft.
     */
    @Test
    void turnRadiusOfTheHandbook() {
        double metrePerFt = 0.3048;
        double knotMPerS = 1852.0 / 3600;
        double radiusFt =
                Turn.ofBankRad(Math.toRadians(30)).radiusM(120 * knotMPerS).orElseThrow() / metrePerFt;
        assertThat(radiusFt).isCloseTo(2215 * 11.26 / 11.294, within(0.5));
        assertThat(radiusFt).isCloseTo(2215, withPercentage(0.35));
    }

    /** The same handbook, from memory: 60° of bank is 2 g, and the stall speed rises by about 40 %. */
    @Test
    void sixtyDegreesOfBankDoubleTheLoad() {
        Turn steep = Turn.ofBankRad(Math.toRadians(60));
        assertThat(steep.loadFactor()).isCloseTo(2, within(1e-12));
        assertThat(steep.stallSpeedMPerS(50)).isCloseTo(70.7, within(0.05));
        assertThat(new Turn(2).bankRad()).isCloseTo(Math.toRadians(60), within(1e-12));
        assertThat(new Turn(1).radiusM(20)).isEqualTo(OptionalDouble.empty());
    }

    /** Examples 6.1 and 6.7, read second hand: C_D0 0.025, e 0.8, A 7.37: (L/D)max 13.6, 4.2°. */
    @Test
    void flattestGlideOfATextbookAeroplane() {
        Airframe airframe = new Airframe(13127.5 / GRAVITY_M_PER_S2, 16.165, 10.912, 1.6);
        Glide glide = Glide.of(airframe, DragPolar.of(0.025, 0.8, 10.912 * 10.912 / 16.165), 1.225);
        assertThat(glide.bestRatio()).isCloseTo(13.6, within(0.05));
        assertThat(Math.toDegrees(Math.atan(1 / glide.bestRatio()))).isCloseTo(4.2, within(0.05));
        // 4 C_D0 at least sink: V / (C_L / C_D), where the wing reaches that lift.
        assertThat(glide.leastSinkMPerS()).isLessThan(glide.bestRatioAirspeedMPerS() / glide.bestRatio());
    }
}
