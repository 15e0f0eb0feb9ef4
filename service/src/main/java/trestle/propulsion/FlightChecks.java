package trestle.propulsion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** Does the wing carry the aircraft in cruise, and does thrust fly it? */
final class FlightChecks {
    /** Throttle above which cruise leaves little to climb or to age with. Common practice. */
    private static final double HIGH_CRUISE_THROTTLE = 0.8;

    /** Airspeed over stall speed below which a gust stalls. Common practice. */
    private static final double THIN_STALL_SPEEDS = 1.2;

    /** As many airspeeds as a sentence names. */
    private static final int NAMED = 3;

    private final PropulsionTask task;
    private final DrivePerformance performance;

    private FlightChecks(PropulsionTask task, DrivePerformance performance) {
        this.task = task;
        this.performance = performance;
    }

    /** Judges a drive's use in flight. */
    static void judge(PropulsionTask task, DrivePerformance performance, Judge judge) {
        FlightChecks flight = new FlightChecks(task, performance);
        Subject thrust = Subject.of(PropulsionPart.CRUISE_THRUST);
        judge.essential(
                "lift-coefficient",
                "lift coefficient in cruise",
                Subject.of(PropulsionPart.CRUISE_AIRSPEED),
                flight.inCruise(flight::lift));
        judge.essential("cruise-thrust", "thrust in cruise", thrust, flight.inCruise(flight::cruise));
        judge.check("cruise-throttle", "throttle in cruise", thrust, flight.inCruise(flight::throttle));
        judge.check("curve-airspeeds", "airspeeds of the curve", Subject.of(PropulsionPart.AIRSPEED), flight::curve);
    }

    private Consumer<Trial> inCruise(BiConsumer<Trial, CruiseDemand> judged) {
        return trial -> task.cruise()
                .ifPresentOrElse(
                        demand -> judged.accept(trial, demand),
                        () -> trial.notJudged(
                                Subject.of(PropulsionPart.CRUISE_THRUST), Subject.of(PropulsionPart.CRUISE_AIRSPEED)));
    }

    private void lift(Trial trial, CruiseDemand demand) {
        double airspeed = demand.airspeedMPerS();
        OptionalDouble lift = demand.drag().liftCoefficient(airspeed);
        OptionalDouble most = task.limits().maxLiftCoefficient();
        if (lift.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.TAKEOFF_MASS), Subject.of(PropulsionPart.WING_AREA));
        } else if (most.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.MAX_LIFT));
        } else {
            lift(trial, airspeed, lift.getAsDouble(), most.getAsDouble());
        }
    }

    private void lift(Trial trial, double airspeed, double lift, double most) {
        double stall = airspeed * Math.sqrt(lift / most);
        trial.of(lift, "")
                .atMost(most, task.limits().liftBasis())
                .stop(
                        "lift-coefficient-exceeded",
                        "Level flight at %.2f m/s takes a lift coefficient of %.2f and the aircraft has %.2f: it stalls"
                                + " at %.2f m/s. Cruise at %.1f m/s or more.",
                        airspeed,
                        lift,
                        most,
                        stall,
                        THIN_STALL_SPEEDS * stall)
                .atMost(most / (THIN_STALL_SPEEDS * THIN_STALL_SPEEDS), Basis.COMMON_PRACTICE)
                .attention(
                        "lift-coefficient-thin",
                        "Cruise at %.1f m/s is %.2f stall speeds, below 1.2 (common practice): a gust can stall it."
                                + " Cruise at %.1f m/s or more.",
                        airspeed,
                        airspeed / stall,
                        THIN_STALL_SPEEDS * stall);
    }

    private void cruise(Trial trial, CruiseDemand demand) {
        double neededN = demand.thrustN();
        double mostN = Math.max(
                0,
                performance.fullThrottleInCruise().map(OperatingPoint::thrustN).orElse(0.0));
        boolean falls = performance.cruise().isEmpty();
        trial.of(mostN, "N")
                .atLeast(neededN, Basis.COMPUTED)
                .stopIf(
                        falls && performance.topSpeedMPerS().isEmpty(),
                        "thrust-never-reaches-drag",
                        "Thrust at full throttle is below the drag at every airspeed, %.2f N against %.2f N at"
                                + " %.1f m/s: this drive does not fly level.",
                        mostN,
                        neededN,
                        demand.airspeedMPerS())
                .stopIf(
                        falls,
                        "cruise-thrust-short",
                        "Full throttle gives %.2f N at %.1f m/s and cruise takes %.2f N: level top speed is %.1f m/s.",
                        mostN,
                        demand.airspeedMPerS(),
                        neededN,
                        performance.topSpeedMPerS().orElse(0));
    }

    private void throttle(Trial trial, CruiseDemand demand) {
        Optional<OperatingPoint> cruise = performance.cruise();
        if (cruise.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.CRUISE_THRUST));
            return;
        }
        double percent = 100 * cruise.get().throttleFraction();
        trial.of(percent, "%")
                .atMost(100 * HIGH_CRUISE_THROTTLE, Basis.COMMON_PRACTICE)
                .attention(
                        "cruise-throttle-high",
                        "Cruise takes %.0f %% throttle; above %.0f %% (common practice) little is left for climb, gusts"
                                + " and a low pack.",
                        percent,
                        100 * HIGH_CRUISE_THROTTLE);
    }

    /** Airspeeds that were asked for, and at which the wind drives the propeller. */
    private void curve(Trial trial) {
        OptionalDouble end = performance.zeroThrustSpeedMPerS();
        List<Double> asked = task.airspeedsMPerS();
        if (asked.isEmpty() || end.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.AIRSPEED));
            return;
        }
        List<Integer> beyond = IntStream.range(0, asked.size())
                .filter(i -> asked.get(i) > end.getAsDouble())
                .boxed()
                .toList();
        double fastest = asked.stream().mapToDouble(v -> v).max().orElse(0);
        trial.at(
                        beyond.isEmpty()
                                ? Subject.of(PropulsionPart.AIRSPEED)
                                : Subject.of(PropulsionPart.AIRSPEED, beyond.get(0)))
                .of(fastest, "m/s")
                .atMost(end.getAsDouble(), Basis.COMPUTED)
                .note(
                        "airspeed-beyond-thrust",
                        "At %s m/s full throttle gives no thrust: it ends at %.1f m/s.",
                        named(beyond.stream().map(asked::get).toList()),
                        end.getAsDouble());
    }

    private static String named(List<Double> airspeeds) {
        String first =
                airspeeds.stream().limit(NAMED).map(v -> Judge.text("%.1f", v)).collect(Collectors.joining(", "));
        return airspeeds.size() > NAMED ? first + " and more" : first;
    }
}
