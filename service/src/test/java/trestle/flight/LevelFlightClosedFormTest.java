package trestle.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import org.junit.jupiter.api.Test;

/** Stall and drag against closed forms and by hand; nothing published. */
class LevelFlightClosedFormTest {

    /** 8000 N on 17 m² at C_Lmax 2.2 and 1.225 kg/m³: 18.688 m/s by hand. */
    @Test
    void stallSpeedOfALightAeroplane() {
        Airframe airframe = new Airframe(8000 / GRAVITY_M_PER_S2, 17, 11, 2.2);
        assertThat(airframe.stallSpeedMPerS(1.225)).isCloseTo(18.688, within(0.0005));
    }

    /**
     * Standard theory: C_D = 2 C_D0 at the flattest glide, 4 C_D0 at least power; speeds as
     * 3^(−1/4), powers as 2 / 3^(3/4).
     */
    @Test
    void closedFormsOfThePlainPolar() {
        DragPolar polar = DragPolar.of(0.024, 0.82, 9.3);
        double glide = polar.bestGlideLiftCoefficient();
        double leastPower = polar.leastPowerLiftCoefficient();
        assertThat(polar.dragCoefficient(glide)).isCloseTo(2 * 0.024, within(1e-14));
        assertThat(polar.dragCoefficient(leastPower)).isCloseTo(4 * 0.024, within(1e-14));
        double speedRatio =
                LevelFlight.airspeedMPerS(5, 0.8, 1.2, leastPower) / LevelFlight.airspeedMPerS(5, 0.8, 1.2, glide);
        assertThat(speedRatio).isCloseTo(Math.pow(3, -0.25), within(1e-12));
        assertThat(speedRatio).isCloseTo(0.7598, within(5e-5));
        double dragRatio = (polar.dragCoefficient(leastPower) / leastPower) / (polar.dragCoefficient(glide) / glide);
        assertThat(speedRatio * dragRatio).isCloseTo(0.8774, within(5e-5));
    }

    /** With the least drag away from no lift, the closed forms are still the extremes. */
    @Test
    void closedFormsOfAShiftedPolarAreExtremes() {
        DragPolar polar = new DragPolar(0.02, 0.045, 0.3);
        double glide = polar.bestGlideLiftCoefficient();
        double leastPower = polar.leastPowerLiftCoefficient();
        for (double off : new double[] {-1e-3, 1e-3}) {
            assertThat((glide + off) / polar.dragCoefficient(glide + off))
                    .isLessThan(glide / polar.dragCoefficient(glide));
            assertThat(Math.pow(leastPower + off, 1.5) / polar.dragCoefficient(leastPower + off))
                    .isLessThan(Math.pow(leastPower, 1.5) / polar.dragCoefficient(leastPower));
        }
    }
}
