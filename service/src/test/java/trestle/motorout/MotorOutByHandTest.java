package trestle.motorout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * A twin of 6.8 kg as we worked it by hand: 12 N on 450 mm without drag of the dead propeller at 13 m/s in 1.225 kg/m³; fin
 * of 6.5 dm² and 320 mm at 950 mm, rudder of 35 % at 25°. Nothing published stands behind it.
 */
class MotorOutByHandTest {
    private static final double WEIGHT_N = 6.8 * 9.80665;
    private static final Fin FIN = new Fin(0.065, 0.32, 0.95, 1, 0.9, OptionalDouble.of(0.35), Math.toRadians(25));

    private static MotorOutTask task(Fin fin, DoubleUnaryOperator thrustN, double deadAreaM2, double speed) {
        return new MotorOutTask(fin, 0.95, 0.45, 1, thrustN, deadAreaM2, speed, 6, WEIGHT_N, 1.225);
    }

    private static MotorOut usual() {
        return MotorOut.of(task(FIN, v -> 12, 0, 13));
    }

    @Test
    void theFinLiftsAsOneWithATailplaneAtItsEnd() {
        assertThat(FIN.aspectRatio()).isCloseTo(2.44185, within(0.000005));
        assertThat(FIN.liftSlopePerRad()).isCloseTo(2.91861, within(0.000005));
        assertThat(FIN.rudderEffect()).isCloseTo(0.70666, within(0.000005));
    }

    @Test
    void fullRudderIsNotEnoughAtTheSafeClimbSpeed() {
        MotorOut out = usual();
        assertThat(out.controlNm()).isCloseTo(4.14159, within(0.000005));
        assertThat(out.yawNm()).isCloseTo(5.4, within(1e-12));
        assertThat(Math.toDegrees(out.rudderNeededRad().orElseThrow())).isCloseTo(32.60, within(0.005));
        assertThat(out.minimumControlMPerS().orElseThrow()).isCloseTo(14.844, within(0.0005));
        assertThat(out.largestThrustN()).isCloseTo(9.2035, within(0.00005));
        assertThat(out.held()).isFalse();
    }

    /** At 15 m/s the 12 N are held, and their side force asks the bank of the whole moment. */
    @Test
    void theBankCarriesTheSideForce() {
        MotorOut out = MotorOut.of(task(FIN, v -> 12, 0, 15));
        assertThat(out.held()).isTrue();
        assertThat(Math.toDegrees(out.bankNeededRad())).isCloseTo(4.890, within(0.0005));
    }

    /** (N/l)² / (q π e h²) with what is held, and the climb of what is left. */
    @Test
    void whatIsHeldClimbsOnWhatIsLeft() {
        MotorOut out = usual();
        double pressurePa = 0.5 * 1.225 * 13 * 13;
        double sideN = 4.14159 / 0.95;
        double trimN = sideN * sideN / (pressurePa * Math.PI * 0.8 * 0.32 * 0.32);
        assertThat(out.trimDragN()).isCloseTo(trimN, within(1e-4));
        assertThat(out.climbRateMPerS()).isCloseTo(13 * (9.2035 - 6 - trimN) / WEIGHT_N, within(1e-4));
    }

    @Test
    void theMinimumControlSpeedSolvesForThrustThatFallsWithAirspeed() {
        MotorOut out = MotorOut.of(task(FIN, v -> 12 - 0.4 * (v - 13), 0.004, 13));
        double speed = out.minimumControlMPerS().orElseThrow();
        double pressurePa = 0.5 * 1.225 * speed * speed;
        assertThat(FIN.controlNm(pressurePa, 0.95))
                .isCloseTo((12 - 0.4 * (speed - 13) + 0.004 * pressurePa) * 0.45, within(1e-6));
        assertThat(speed).isLessThan(14.844);
    }

    @Test
    void aFinWithoutRudderHoldsBySideslip() {
        Fin bare = new Fin(0.065, 0.32, 0.95, 1, 0.9, OptionalDouble.empty(), Math.toRadians(25));
        MotorOut out = MotorOut.of(task(bare, v -> 12, 0, 13));
        assertThat(out.rudderNeededRad()).isEmpty();
        assertThat(out.controlNm()).isCloseTo(4.14159 * 10 / (0.8 * 0.70666 * 25), within(1e-4));
    }

    @Test
    void twoFinsStandFree() {
        Fin pair = new Fin(0.065, 0.32, 0.95, 2, 0.9, OptionalDouble.of(0.35), Math.toRadians(25));
        assertThat(pair.aspectRatio()).isCloseTo(0.32 * 0.32 / 0.065, within(1e-12));
    }
}
