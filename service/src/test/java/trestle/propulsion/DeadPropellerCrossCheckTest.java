package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.atmosphere.AirState;

/**
 * A dead 14x8 at 13 m/s, worked out with a separate program of the same blade-element equations in air of 1.225 kg/m³ and
 * 1.81e-5 Pa s; nothing measured stands behind it. At 15 °C, with 1.789e-5 Pa s, a blade that turns freely drags 0.6 % less.
 */
class DeadPropellerCrossCheckTest {
    /** Warm enough for that viscosity, at the pressure that gives that density. */
    private static final AirState AIR = new AirState(292.44, 1.225 * 8314.32 / 28.9644 * 292.44);

    private static final double SPEED = 13;

    private static Propeller propeller(BladeType type) {
        return new Propeller(0.3556, 0.2032, 2, type, new GeometryOnly(), OptionalDouble.empty());
    }

    @Test
    void theAirIsThatOfTheOtherProgram() {
        assertThat(AIR.densityKgPerM3()).isCloseTo(1.225, within(1e-9));
        assertThat(AIR.viscosityPaS()).isCloseTo(1.81e-5, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "EFFICIENT, 0, 2907, 0.420",
        "EFFICIENT, 0.02, 2691, 0.849",
        "EFFICIENT, 0.05, 2361, 1.392",
        "EFFICIENT, 0.10, 1800, 1.988"
    })
    void windmillingSlowsAndDragsMoreAgainstATorque(BladeType type, double torqueNm, double rpm, double dragN) {
        DeadPropeller dead = DeadPropeller.turning(propeller(type), torqueNm, 0, SPEED, AIR);
        assertThat(dead.rotationRadPerS() * 60 / (2 * Math.PI)).isCloseTo(rpm, within(0.5));
        assertThat(dead.dragN()).isCloseTo(dragN, within(0.0005));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.816", "0.02, 1.191", "0.05, 1.653"})
    void theGeneralBladeDragsMore(double torqueNm, double dragN) {
        assertThat(DeadPropeller.turning(propeller(BladeType.GENERAL), torqueNm, 0, SPEED, AIR)
                        .dragN())
                .isCloseTo(dragN, within(0.0005));
    }

    /** The wind gives that blade at most 0.092 N m. */
    @Test
    void aTorqueThatTheWindDoesNotGiveStopsIt() {
        DeadPropeller dead = DeadPropeller.turning(propeller(BladeType.GENERAL), 0.10, 0, SPEED, AIR);
        assertThat(dead.rotationRadPerS()).isZero();
        assertThat(dead.dragN()).isGreaterThan(0);
    }

    /** Solidity 0.08178: 0.8 and 0.1 of it times the disc. */
    @Test
    void standingItDragsByItsSolidity() {
        assertThat(BladeElementModel.of(propeller(BladeType.EFFICIENT)).solidity())
                .isCloseTo(0.08178, within(0.000005));
        double pressurePa = 0.5 * 1.225 * SPEED * SPEED;
        assertThat(dead(DeadPropellerState.STOPPED) / pressurePa).isCloseTo(0.00650, within(0.000005));
        assertThat(dead(DeadPropellerState.FOLDED) / pressurePa).isCloseTo(0.00081, within(0.000005));
    }

    private static double dead(DeadPropellerState state) {
        Motor motor = new Motor(
                39.8,
                0.036,
                1.1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return DeadPropeller.of(propeller(BladeType.EFFICIENT), motor, state, SPEED, AIR)
                .dragN();
    }
}
