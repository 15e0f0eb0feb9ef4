package trestle.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import org.junit.jupiter.api.Test;

/** Lift, drag and power of a textbook's aeroplane; see reference/anderson-flight/README.md. */
class LevelFlightReferenceTest {
    private static final double NEWTON_PER_LBF = 4.4482216;
    private static final double METRE_PER_FT = 0.3048;
    private static final double SEA_LEVEL_KG_PER_M3 = 0.002377 * 515.378819;

    /**
     * Example 6.19, read second hand: 0.8 · 230 hp are just used up at 81.01 m/s. Half a digit of the airspeed is
     * worth 24 W of 137 kW.
     */
    @Test
    void greatestAirspeedUsesUpThePowerAvailable() {
        double massKg = (11494.35 + 1633.15 - 3916) / GRAVITY_M_PER_S2;
        DragPolar polar = DragPolar.of(0.025, 0.8, 10.912 * 10.912 / 16.16);
        double powerW = 81.01 * LevelFlight.dragN(polar, massKg, 16.16, 1.225, 81.01);
        assertThat(powerW).isCloseTo(0.8 * 230 * 746, within(24.0));
    }

    /** Example 6.1 at 200 ft/s, from memory: C_L 0.357, C_D 0.0319, L/D 11.2, 263 lb. */
    @Test
    void thrustRequiredOfATextbookAeroplane() {
        double massKg = 2950 * NEWTON_PER_LBF / GRAVITY_M_PER_S2;
        double areaM2 = 174 * METRE_PER_FT * METRE_PER_FT;
        double airspeedMPerS = 200 * METRE_PER_FT;
        DragPolar polar = DragPolar.of(0.025, 0.8, 7.37);
        double q = LevelFlight.dynamicPressurePa(SEA_LEVEL_KG_PER_M3, airspeedMPerS);
        double cl = LevelFlight.liftCoefficient(massKg, areaM2, q);
        double cd = polar.dragCoefficient(cl);
        double dragN = LevelFlight.dragN(polar, massKg, areaM2, SEA_LEVEL_KG_PER_M3, airspeedMPerS);
        assertThat(cl).isCloseTo(0.357, within(0.0005));
        assertThat(cd).isCloseTo(0.0319, within(0.00005));
        assertThat(cl / cd).isCloseTo(11.2, within(0.05));
        assertThat(dragN / NEWTON_PER_LBF).isCloseTo(263, within(1.0));
    }
}
