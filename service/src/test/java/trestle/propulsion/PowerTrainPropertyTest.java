package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import trestle.units.Rotation;

class PowerTrainPropertyTest {

    private static PowerTrain train(double rpmPerV, double diameterIn, double pitchRatio, double packOhm) {
        Motor motor = new Motor(
                Rotation.radPerSFromRpm(rpmPerV),
                0.04,
                1.0,
                OptionalDouble.of(15),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        PropulsionSystem system = new PropulsionSystem(
                motor,
                Drives.controller(),
                Drives.propeller(diameterIn, pitchRatio * diameterIn),
                1,
                Drives.pack(24.5, packOhm));
        return PowerTrain.of(system, Drives.AIR);
    }

    /**
     * Short of the pack's power peak, past which more throttle truly gives less, and above the
     * throttle at which the wind turns the propeller faster than the motor.
     */
    @Property(tries = 150)
    void moreThrottleNeverGivesLessThrust(
            @ForAll @DoubleRange(min = 200, max = 600) double rpmPerV,
            @ForAll @DoubleRange(min = 10, max = 20) double diameterIn,
            @ForAll @DoubleRange(min = 0.4, max = 1.0) double pitchRatio,
            @ForAll @DoubleRange(min = 0, max = 0.06) double packOhm,
            @ForAll @DoubleRange(min = 0.3, max = 0.95) double throttle,
            @ForAll @DoubleRange(min = 0.01, max = 0.05) double more,
            @ForAll @DoubleRange(min = 0, max = 12) double airspeed) {
        PowerTrain train = train(rpmPerV, diameterIn, pitchRatio, packOhm);
        Optional<OperatingPoint> driven = train.atThrottle(throttle, airspeed);
        Assume.that(driven.isPresent());
        OperatingPoint less = driven.orElseThrow();
        OperatingPoint greater = train.atThrottle(throttle + more, airspeed).orElseThrow();
        Assume.that(greater.supplyVoltageV() > 0.5 * 24.5);
        assertThat(greater.rotationRadPerS()).isGreaterThan(less.rotationRadPerS());
        double rounding = 1e-6;
        assertThat(greater.thrustN()).isGreaterThanOrEqualTo(less.thrustN() - rounding);
    }

    @Property(tries = 150)
    void powerIsConservedAndEveryEfficiencyIsAFraction(
            @ForAll @DoubleRange(min = 200, max = 600) double rpmPerV,
            @ForAll @DoubleRange(min = 10, max = 20) double diameterIn,
            @ForAll @DoubleRange(min = 0.4, max = 1.0) double pitchRatio,
            @ForAll @DoubleRange(min = 0, max = 0.06) double packOhm,
            @ForAll @DoubleRange(min = 0.2, max = 1) double throttle,
            @ForAll @DoubleRange(min = 0.5, max = 25) double airspeed) {
        PowerTrain train = train(rpmPerV, diameterIn, pitchRatio, packOhm);
        train.atThrottle(throttle, airspeed).filter(p -> p.thrustN() > 0).ifPresent(p -> {
            Efficiency e = p.efficiency();
            assertThat(e.propeller()).isBetween(0.0, 1.0).isLessThanOrEqualTo(p.idealPropellerEfficiency());
            assertThat(e.motor()).isBetween(0.0, 1.0);
            assertThat(e.controller()).isBetween(0.0, 1.0);
            assertThat(e.total() * p.electricalPowerW()).isCloseTo(p.thrustN() * airspeed, within(1e-6));
            assertThat(p.supplyVoltageV()).isCloseTo(24.5 - packOhm * p.supplyCurrentA(), within(1e-6));
            assertThat(p.throttleFraction()).isCloseTo(throttle, within(1e-9));
            double heatW = p.motorCurrentA() * p.motorCurrentA() * 0.04 + noLoadPowerW(train, p);
            assertThat(p.motorPowerW() - heatW).isCloseTo(p.shaftPowerW(), within(1e-6));
        });
    }

    private static double noLoadPowerW(PowerTrain train, OperatingPoint point) {
        Motor motor = train.system().motor();
        return motor.noLoadCurrentA(point.rotationRadPerS())
                * point.rotationRadPerS()
                / motor.speedConstantRadPerSPerV();
    }

    @Property(tries = 100)
    void holdingAThrustUndoesTheThrottleThatGaveIt(
            @ForAll @DoubleRange(min = 200, max = 600) double rpmPerV,
            @ForAll @DoubleRange(min = 10, max = 20) double diameterIn,
            @ForAll @DoubleRange(min = 0, max = 0.03) double packOhm,
            @ForAll @DoubleRange(min = 0.4, max = 1) double throttle,
            @ForAll @DoubleRange(min = 0, max = 8) double airspeed) {
        PowerTrain train = train(rpmPerV, diameterIn, 0.6, packOhm);
        OperatingPoint point = train.atThrottle(throttle, airspeed).orElseThrow();
        Assume.that(point.thrustN() > 0.1 && point.supplyVoltageV() > 0.5 * 24.5);
        OperatingPoint held = train.holding(point.thrustN(), airspeed).orElseThrow();
        assertThat(held.throttleFraction()).isCloseTo(throttle, within(1e-5));
        assertThat(held.supplyCurrentA()).isCloseTo(point.supplyCurrentA(), withPercentage(0.01));
        assertThat(train.efficiency(airspeed, point.thrustN()).orElseThrow()).isEqualTo(held.efficiency());
    }

    @Property(tries = 100)
    void thrustAtFullThrottleFallsWithAirspeed(
            @ForAll @DoubleRange(min = 200, max = 600) double rpmPerV,
            @ForAll @DoubleRange(min = 10, max = 20) double diameterIn,
            @ForAll @DoubleRange(min = 0.4, max = 0.7) double pitchRatio,
            @ForAll @DoubleRange(min = 0, max = 12) double airspeed,
            @ForAll @DoubleRange(min = 0.5, max = 5) double faster) {
        PowerTrain train = train(rpmPerV, diameterIn, pitchRatio, 0.02);
        double slow = train.thrustN(airspeed).orElseThrow();
        Assume.that(slow > 0);
        assertThat(train.thrustN(airspeed + faster).orElse(-1)).isLessThan(slow);
    }

    /** On a supply that does not sag, motors do not know of each other. */
    @Property(tries = 50)
    void motorsOnASteadySupplyAddUp(
            @ForAll @IntRange(min = 2, max = 8) int count, @ForAll @DoubleRange(min = 0, max = 20) double airspeed) {
        PropulsionSystem one = Drives.with(Supply.steady(24));
        PropulsionSystem many =
                new PropulsionSystem(one.motor(), one.controller(), one.propeller(), count, one.supply());
        OperatingPoint single =
                PowerTrain.of(one, Drives.AIR).atFullThrottle(airspeed).orElseThrow();
        OperatingPoint all =
                PowerTrain.of(many, Drives.AIR).atFullThrottle(airspeed).orElseThrow();
        assertThat(all.thrustN()).isCloseTo(count * single.thrustN(), withPercentage(1e-4));
        assertThat(all.supplyCurrentA()).isCloseTo(count * single.supplyCurrentA(), withPercentage(1e-4));
        assertThat(all.motorCurrentA()).isCloseTo(single.motorCurrentA(), withPercentage(1e-4));
    }

    @Property(tries = 50)
    void aSofterPackGivesLessThrust(
            @ForAll @DoubleRange(min = 0, max = 0.1) double packOhm,
            @ForAll @DoubleRange(min = 0.01, max = 0.05) double more) {
        assertThat(train(320, 16, 0.5, packOhm + more).thrustN(0).orElseThrow())
                .isLessThan(train(320, 16, 0.5, packOhm).thrustN(0).orElseThrow());
    }
}
