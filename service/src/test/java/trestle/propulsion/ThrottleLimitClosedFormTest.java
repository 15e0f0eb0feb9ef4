package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.finding.Basis;
import trestle.units.Rotation;

/**
 * Throttle limits against the three-constant motor solved by hand, for a propeller whose torque goes with the square
 * of its rotation, {@code Q = k ω²}: {@code ω = √((I − I0) / (K k))}, {@code V_m = ω / K + I R}, and
 * {@code V_m = d (U − d I R_p)} behind a pack of resistance R_p. Nothing published: worked from the constants below.
 */
class ThrottleLimitClosedFormTest {
    private static final double TORQUE_FACTOR = 2.5e-6;
    private static final double DIAMETER_M = 0.3556;
    private static final double DENSITY = Drives.AIR.densityKgPerM3();

    @Test
    void fullThrottleOnAStiffSupply() {
        OperatingPoint rest = train(Supply.steady(24)).atFullThrottle(0).orElseThrow();
        assertThat(rest.rotationRadPerS()).isCloseTo(844.63, within(0.005));
        assertThat(Rotation.rpmFromRadPerS(rest.rotationRadPerS())).isCloseTo(8065.6, within(0.05));
        assertThat(rest.motorCurrentA()).isCloseTo(72.071, within(0.0005));
    }

    @Test
    void motorCurrentLimitsTheThrottle() {
        ThrottleLimit limit = limit(Supply.steady(24), OptionalDouble.of(45), OptionalDouble.empty());
        OperatingPoint full = train(Supply.steady(24)).atFullThrottle(0).orElseThrow();
        OperatingPoint at =
                train(Supply.steady(24)).atThrottle(limit.throttleFraction(), 0).orElseThrow();
        assertThat(limit.rating()).isEqualTo(KeptRating.MOTOR_CURRENT);
        assertThat(limit.where()).hasValue(LimitPlace.REST);
        assertThat(limit.throttleFraction()).isCloseTo(0.76774, within(0.000005));
        assertThat(at.rotationRadPerS()).isCloseTo(664.29, within(0.005));
        assertThat(at.motorVoltageV()).isCloseTo(18.4259, within(0.00005));
        assertThat(limit.thrustN().orElseThrow() / full.thrustN()).isCloseTo(0.61856, within(0.000005));
        // Less what the controller takes for itself, which the formula does not have.
        double lossA = Controller.lossCurrentA(24, at.motorCurrentA(), at.throttleFraction());
        assertThat(limit.staticCurrentA().orElseThrow() - lossA).isCloseTo(34.5485, within(0.00005));
    }

    @Test
    void motorPowerLimitsTheThrottle() {
        ThrottleLimit limit = limit(Supply.steady(24), OptionalDouble.empty(), OptionalDouble.of(950));
        OperatingPoint at =
                train(Supply.steady(24)).atThrottle(limit.throttleFraction(), 0).orElseThrow();
        assertThat(limit.rating()).isEqualTo(KeptRating.MOTOR_POWER);
        assertThat(limit.throttleFraction()).isCloseTo(0.80611, within(0.000005));
        assertThat(at.rotationRadPerS()).isCloseTo(694.64, within(0.005));
        assertThat(at.motorCurrentA()).isCloseTo(49.104, within(0.0005));
        assertThat(at.motorVoltageV()).isCloseTo(19.3467, within(0.00005));
    }

    @Test
    void packThatSagsLimitsAtAHigherThrottle() {
        // The controller's own loss at the limit does not count in the formula: the pack does not feel it here.
        double lossA = Controller.lossCurrentA(24.6, 45, 0.8);
        VoltageSource source = currentA -> 24.6 - 0.060 * Math.max(0, currentA - lossA);
        Supply supply = new Supply(source, 25.2, OptionalDouble.empty(), OptionalDouble.empty());
        ThrottleLimit limit = limit(supply, OptionalDouble.of(45), OptionalDouble.empty());
        OperatingPoint at =
                train(supply).atThrottle(limit.throttleFraction(), 0).orElseThrow();
        assertThat(limit.throttleFraction()).isCloseTo(0.82344, within(0.000005));
        assertThat(at.supplyVoltageV()).isCloseTo(22.3767, within(0.00005));
    }

    private static ThrottleLimit limit(Supply supply, OptionalDouble maxCurrentA, OptionalDouble maxPowerW) {
        DriveLimits limits = new DriveLimits(
                OptionalDouble.empty(),
                Basis.REQUEST,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                EnumSet.of(KeptRating.MOTOR_CURRENT, KeptRating.MOTOR_POWER));
        PropulsionTask task = new PropulsionTask(
                system(supply, maxCurrentA, maxPowerW),
                Drives.AIR,
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(0.0),
                limits);
        return PropulsionMatch.of(task).throttleLimit().orElseThrow();
    }

    private static PowerTrain train(Supply supply) {
        return PowerTrain.of(system(supply, OptionalDouble.empty(), OptionalDouble.empty()), Drives.AIR);
    }

    /** Resistance of winding and controller together 38.5 mΩ. The motor's voltage is that behind the controller. */
    private static PropulsionSystem system(Supply supply, OptionalDouble maxCurrentA, OptionalDouble maxPowerW) {
        Motor motor =
                new Motor(Rotation.radPerSFromRpm(380), 0.0385, 1.1, OptionalDouble.empty(), maxCurrentA, maxPowerW);
        double power = TORQUE_FACTOR * Math.pow(2 * Math.PI, 3) / (DENSITY * Math.pow(DIAMETER_M, 5));
        CoefficientTable flat =
                new CoefficientTable(List.of(new CoefficientRow(0, 0.1, power), new CoefficientRow(1, 0.05, power)));
        Propeller propeller = new Propeller(DIAMETER_M, 0.2, 2, BladeType.GENERAL, flat, OptionalDouble.empty());
        return new PropulsionSystem(motor, new Controller(200, 30, 0), propeller, 1, supply);
    }
}
