package trestle.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Stall, lift and drag against textbook examples; see reference/flight-handbook/README.md. */
class LevelFlightReferenceTest {
    private static final double NEWTON_PER_LBF = 4.4482216;
    private static final double METRE_PER_FT = 0.3048;
    private static final double SEA_LEVEL_KG_PER_M3 = 0.002377 * 515.378819;

    /** Anderson-style problem on a teaching page: W 8000 N, S 17 m², C_Lmax 2.2: 18.69 m/s. */
    @Test
    void stallSpeedOfALightAeroplane() {
        double massKg = 8000 / GRAVITY_M_PER_S2;
        Airframe airframe = new Airframe(massKg, 17, 11, 2.2);
        assertThat(airframe.stallSpeedMPerS(1.225)).isCloseTo(18.69, within(0.005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/flight-handbook/level_flight.csv", numLinesToSkip = 1)
    void thrustRequiredOfTextbookAeroplanes(
            String id,
            double weightLbf,
            double wingAreaFt2,
            double airspeedFtPerS,
            double oswaldEfficiency,
            double aspectRatio,
            double zeroLiftCoefficient,
            double liftCoefficient,
            double dragCoefficient,
            double liftToDrag,
            double thrustLbf,
            double thrustToleranceLbf) {
        double massKg = weightLbf * NEWTON_PER_LBF / GRAVITY_M_PER_S2;
        double areaM2 = wingAreaFt2 * METRE_PER_FT * METRE_PER_FT;
        double airspeedMPerS = airspeedFtPerS * METRE_PER_FT;
        DragPolar polar = DragPolar.of(zeroLiftCoefficient, oswaldEfficiency, aspectRatio);
        double q = LevelFlight.dynamicPressurePa(SEA_LEVEL_KG_PER_M3, airspeedMPerS);
        double cl = LevelFlight.liftCoefficient(massKg, areaM2, q);
        double cd = polar.dragCoefficient(cl);
        double dragLbf = LevelFlight.dragN(polar, massKg, areaM2, SEA_LEVEL_KG_PER_M3, airspeedMPerS) / NEWTON_PER_LBF;
        assertThat(cl).as(id).isCloseTo(liftCoefficient, within(0.0005));
        assertThat(cd).as(id).isCloseTo(dragCoefficient, within(0.00005));
        assertThat(cl / cd).as(id).isCloseTo(liftToDrag, within(0.05));
        assertThat(dragLbf).as(id).isCloseTo(thrustLbf, within(thrustToleranceLbf));
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
