package trestle.propulsion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import trestle.atmosphere.StandardAtmosphere;
import trestle.numeric.Root;

/**
 * The highest throttle that keeps each rating. What a rating is held against rises with throttle at an airspeed, so
 * one bracketed root tells the throttle of each; a state is asked for only where full throttle passes a rating.
 */
final class ThrottleLimits {
    /** Climb speed over stall speed. Common practice, no source. */
    private static final double CLIMB_IN_STALL_SPEEDS = 1.3;

    private static final double LEAST_THROTTLE = 0.01;
    private static final double ACCURACY = 1e-9;

    /** So far below the root, the rating is kept and not just met. */
    private static final double KEPT_BY = 2e-9;

    private final PropulsionTask task;
    private final PowerTrain train;
    private final DrivePerformance performance;

    private ThrottleLimits(PropulsionTask task, PowerTrain train, DrivePerformance performance) {
        this.task = task;
        this.train = train;
        this.performance = performance;
    }

    /** The limit of each rating that is stated and to be kept, in the order of {@link KeptRating}. */
    static List<ThrottleLimit> each(PropulsionTask task, PowerTrain train, DrivePerformance performance) {
        return new ThrottleLimits(task, train, performance).each();
    }

    /** The lowest of them: it keeps all; empty where there is none. */
    static Optional<ThrottleLimit> least(List<ThrottleLimit> limits) {
        return limits.stream().min(Comparator.comparingDouble(ThrottleLimit::throttleFraction));
    }

    /** Climb speed, m/s: 1.3 stall speeds; empty where lift is not known. */
    static OptionalDouble climbSpeedMPerS(PropulsionTask task) {
        if (task.cruise().isEmpty() || task.limits().maxLiftCoefficient().isEmpty()) {
            return OptionalDouble.empty();
        }
        double airspeed = task.cruise().get().airspeedMPerS();
        double most = task.limits().maxLiftCoefficient().getAsDouble();
        return task.cruise().get().drag().liftCoefficient(airspeed).stream()
                .map(lift -> CLIMB_IN_STALL_SPEEDS * airspeed * Math.sqrt(lift / most))
                .findFirst();
    }

    private List<ThrottleLimit> each() {
        List<ThrottleLimit> limits = new ArrayList<>();
        if (performance.atRest().isEmpty()) {
            return limits;
        }
        for (Rating rating : Rating.loads(task)) {
            rating.limit().stream()
                    .filter(limit -> kept(rating.kept()))
                    .forEach(limit -> limits.add(slow(rating, limit)));
        }
        Rating rotation = Rating.rotation(task);
        rotation.limit().stream()
                .filter(limit -> kept(rotation.kept()))
                .forEach(limit ->
                        limits.add(fast(rotation.kept(), throttle -> rotationAt(rotation.value(), throttle) - limit)));
        task.limits().neverExceedMPerS().stream()
                .filter(limit -> kept(KeptRating.NEVER_EXCEED))
                .filter(limit -> task.cruise().isPresent())
                .forEach(limit -> limits.add(fast(
                        KeptRating.NEVER_EXCEED, throttle -> topMPerS(throttle).orElse(0) - limit)));
        return limits;
    }

    private boolean kept(KeptRating rating) {
        return task.limits().keep().contains(rating);
    }

    /** A rating that rest or slow flight loads most. */
    private ThrottleLimit slow(Rating rating, double limit) {
        List<Double> airspeeds = slowAirspeedsMPerS(rating.value());
        DoubleUnaryOperator excess = throttle -> airspeeds.stream()
                        .mapToDouble(v -> valueAt(rating.value(), throttle, v))
                        .max()
                        .orElse(0)
                - limit;
        double throttle = highest(excess);
        double atRest = valueAt(rating.value(), throttle, 0);
        boolean resting = airspeeds.stream().allMatch(v -> valueAt(rating.value(), throttle, v) <= atRest);
        return described(throttle, rating.kept(), resting ? LimitPlace.REST : LimitPlace.CLIMB);
    }

    /** Rest, the climb speed, and where full throttle loads the part most. */
    private List<Double> slowAirspeedsMPerS(ToDoubleFunction<OperatingPoint> value) {
        List<Double> airspeeds = new ArrayList<>(List.of(0.0));
        climbSpeedMPerS(task).ifPresent(airspeeds::add);
        performance.atFullThrottle().stream()
                .max(Comparator.comparingDouble(value))
                .ifPresent(p -> airspeeds.add(p.airspeedMPerS()));
        return airspeeds;
    }

    private ThrottleLimit fast(KeptRating rating, DoubleUnaryOperator excess) {
        return described(highest(excess), rating, LimitPlace.LEVEL_TOP_SPEED);
    }

    private double valueAt(ToDoubleFunction<OperatingPoint> value, double throttle, double airspeedMPerS) {
        return throttle <= 0
                ? 0
                : train.atThrottle(throttle, airspeedMPerS)
                        .map(value::applyAsDouble)
                        .orElse(0.0);
    }

    /** Rotation in the fastest level flight; where no drag is known, where thrust ends. */
    private double rotationAt(ToDoubleFunction<OperatingPoint> rotation, double throttle) {
        OptionalDouble fastest =
                task.cruise().isPresent() ? topMPerS(throttle) : FlightSpeeds.zeroThrustMPerS(train, throttle);
        return Math.max(valueAt(rotation, throttle, 0), valueAt(rotation, throttle, fastest.orElse(0)));
    }

    private OptionalDouble topMPerS(double throttle) {
        OptionalDouble end = FlightSpeeds.zeroThrustMPerS(train, throttle);
        return end.isPresent() && task.cruise().isPresent()
                ? FlightSpeeds.topMPerS(train, task.cruise().get(), throttle, end.getAsDouble())
                : OptionalDouble.empty();
    }

    private static double highest(DoubleUnaryOperator excess) {
        if (excess.applyAsDouble(1) <= 0) {
            return 1;
        }
        OptionalDouble met = Root.between(excess, LEAST_THROTTLE, 1, ACCURACY);
        return Math.max(0, met.orElse(0) - KEPT_BY);
    }

    private ThrottleLimit described(double throttle, KeptRating rating, LimitPlace place) {
        if (throttle <= 0) {
            return new ThrottleLimit(
                    0,
                    rating,
                    Optional.of(place),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }
        boolean full = throttle == 1;
        Optional<OperatingPoint> atRest = full ? performance.atRest() : train.atThrottle(throttle, 0);
        OptionalDouble thrustN =
                atRest.stream().mapToDouble(OperatingPoint::thrustN).findFirst();
        return new ThrottleLimit(
                throttle,
                rating,
                full ? Optional.empty() : Optional.of(place),
                thrustN,
                atRest.stream().mapToDouble(OperatingPoint::supplyCurrentA).findFirst(),
                full ? performance.topSpeedMPerS() : topMPerS(throttle),
                climbRateMPerS(throttle),
                thrustN.isPresent() && weightN().isPresent()
                        ? OptionalDouble.of(thrustN.getAsDouble() / weightN().getAsDouble())
                        : OptionalDouble.empty());
    }

    /** {@code (T − D) V / W} at the climb speed. */
    private OptionalDouble climbRateMPerS(double throttle) {
        OptionalDouble climb = climbSpeedMPerS(task);
        if (climb.isEmpty()
                || weightN().isEmpty()
                || !task.cruise().orElseThrow().drag().holdsInSlowFlight()) {
            return OptionalDouble.empty();
        }
        double airspeed = climb.getAsDouble();
        double dragN = task.cruise().orElseThrow().drag().dragN(airspeed);
        double thrustN = train.thrustN(throttle, airspeed).orElse(0);
        return OptionalDouble.of((thrustN - dragN) * airspeed / weightN().getAsDouble());
    }

    private OptionalDouble weightN() {
        return task.takeoffMassKg().isPresent()
                ? OptionalDouble.of(task.takeoffMassKg().getAsDouble() * StandardAtmosphere.GRAVITY_M_PER_S2)
                : OptionalDouble.empty();
    }
}
