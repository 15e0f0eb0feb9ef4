package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import trestle.units.Length;
import trestle.units.Rotation;

class ThrottleLimitPropertyTest {

    /** At the limit each rating is kept, and the one that binds is met. */
    @Property(tries = 60)
    void theLimitKeepsEveryRatingAndMeetsTheOneThatBinds(
            @ForAll @DoubleRange(min = 10, max = 90) double motorA,
            @ForAll @DoubleRange(min = 200, max = 2000) double motorW,
            @ForAll @DoubleRange(min = 10, max = 90) double controllerA,
            @ForAll @DoubleRange(min = 4000, max = 8000) double rpm,
            @ForAll @DoubleRange(min = 6, max = 14) double pitchIn) {
        Motor motor = new Motor(
                Rotation.radPerSFromRpm(320),
                0.05,
                1.2,
                OptionalDouble.of(20),
                OptionalDouble.of(motorA),
                OptionalDouble.of(motorW));
        Propeller propeller = new Propeller(
                Length.mFromIn(16),
                Length.mFromIn(pitchIn),
                2,
                BladeType.EFFICIENT,
                new GeometryOnly(),
                OptionalDouble.of(Rotation.radPerSFromRpm(rpm)));
        PropulsionSystem system =
                new PropulsionSystem(motor, new Controller(controllerA, 26, 0.003), propeller, 1, Drives.pack());
        PropulsionTask task = Drives.task(system);
        PropulsionMatch match = PropulsionMatch.of(task);
        ThrottleLimit limit = match.throttleLimit().orElseThrow();
        PowerTrain train = PowerTrain.of(system, task.air());
        OperatingPoint rest = train.atThrottle(limit.throttleFraction(), 0).orElseThrow();
        OperatingPoint top = limit.topSpeedMPerS().isPresent()
                ? train.atThrottle(
                                limit.throttleFraction(), limit.topSpeedMPerS().getAsDouble())
                        .orElseThrow()
                : rest;
        for (Rating rating : Rating.loads(task)) {
            assertThat(rating.value().applyAsDouble(rest))
                    .isLessThanOrEqualTo(rating.limit().orElse(Double.MAX_VALUE));
        }
        assertThat(Rotation.rpmFromRadPerS(top.rotationRadPerS())).isLessThanOrEqualTo(rpm);
        if (limit.limits() && limit.where().orElseThrow() == LimitPlace.REST) {
            Rating binding = Rating.loads(task).stream()
                    .filter(rating -> rating.kept() == limit.rating())
                    .findFirst()
                    .orElseThrow();
            assertThat(binding.value().applyAsDouble(rest))
                    .isGreaterThan(0.9999 * binding.limit().orElseThrow());
        }
    }
}
