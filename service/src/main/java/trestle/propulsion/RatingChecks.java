package trestle.propulsion;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** Holds the states at full throttle against what each part is rated for. */
final class RatingChecks {
    /** Load above which a rating is thinly kept. Common practice, no source. */
    private static final double THIN_LOAD_RATIO = 0.9;

    private final PropulsionTask task;
    private final DrivePerformance performance;

    private RatingChecks(PropulsionTask task, DrivePerformance performance) {
        this.task = task;
        this.performance = performance;
    }

    /** Judges a drive's ratings by its states at full throttle. */
    static void judge(PropulsionTask task, DrivePerformance performance, Judge judge) {
        RatingChecks ratings = new RatingChecks(task, performance);
        judge.essential(
                "controller-voltage",
                "full pack at the motor controller",
                Subject.of(PropulsionPart.CONTROLLER_MAX_VOLTAGE),
                ratings::controllerVoltage);
        Rating.loads(task).forEach(rating -> ratings.hold(rating, judge));
        judge.essential(
                "propeller-rotation",
                "speed of the propeller in level flight at full throttle",
                Subject.of(PropulsionPart.PROPELLER_MAX_ROTATION),
                trial -> ratings.rotation(trial, Rating.rotation(task)));
        judge.check(
                "propeller-rotation-in-dive",
                "speed of the propeller in a dive at full throttle",
                Subject.of(PropulsionPart.PROPELLER_MAX_ROTATION),
                trial -> ratings.dive(trial, Rating.rotation(task)));
        judge.check("never-exceed", "level top speed", Subject.of(PropulsionPart.NEVER_EXCEED), ratings::neverExceed);
    }

    private void controllerVoltage(Trial trial) {
        double fullV = task.system().supply().fullVoltageV();
        if (task.system().controller().maxVoltageV().isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.CONTROLLER_MAX_VOLTAGE));
            return;
        }
        double limitV = task.system().controller().maxVoltageV().getAsDouble();
        trial.of(fullV, "V")
                .atMost(limitV, Basis.REQUEST)
                .stop(
                        "controller-voltage-exceeded",
                        "The full pack has %.1f V and the motor controller is rated for %.1f V: connecting it can"
                                + " destroy the controller.",
                        fullV,
                        limitV);
    }

    private void hold(Rating rating, Judge judge) {
        String about = rating.kept().label() + " at full throttle";
        Subject subject = Subject.of(rating.part());
        if (rating.essential()) {
            judge.essential(rating.code(), about, subject, trial -> hold(trial, rating, performance.atFullThrottle()));
        } else {
            judge.check(rating.code(), about, subject, trial -> hold(trial, rating, performance.atFullThrottle()));
        }
    }

    private static void hold(Trial trial, Rating rating, List<OperatingPoint> points) {
        Optional<OperatingPoint> worst = points.stream().max(Comparator.comparingDouble(rating.value()));
        if (rating.limit().isEmpty()) {
            trial.notJudged(Subject.of(rating.part()));
        } else if (worst.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.SUPPLY));
        } else {
            within(trial, rating, worst.get(), rating.limit().getAsDouble());
        }
    }

    private static void within(Trial trial, Rating rating, OperatingPoint at, double allowed) {
        double greatest = rating.value().applyAsDouble(at);
        String place = at.airspeedMPerS() == 0 ? "at rest" : Judge.text("and %.1f m/s", at.airspeedMPerS());
        trial.of(greatest, rating.unit())
                .atMost(allowed, Basis.REQUEST)
                .stop(
                        rating.code() + "-exceeded",
                        "At full throttle %s the %s is %s %s, above %s rating of %s %s.",
                        place,
                        rating.kept().label(),
                        Figures.of(greatest),
                        rating.unit(),
                        rating.owner(),
                        Figures.of(allowed),
                        rating.unit())
                .atMost(THIN_LOAD_RATIO * allowed, Basis.COMMON_PRACTICE)
                .attention(
                        rating.code() + "-thin",
                        "At full throttle %s the %s is %s %s, over 90 %% (common practice) of %s rating of %s %s.",
                        place,
                        rating.kept().label(),
                        Figures.of(greatest),
                        rating.unit(),
                        rating.owner(),
                        Figures.of(allowed),
                        rating.unit());
    }

    /** The propeller turns fastest in the fastest level flight. */
    private void rotation(Trial trial, Rating rating) {
        hold(trial, rating, performance.level(task.cruise().isPresent()));
    }

    /** In a dive it may turn faster still: the builder is told, and not stopped. */
    private void dive(Trial trial, Rating rating) {
        Optional<OperatingPoint> fastest =
                performance.atFullThrottle().stream().max(Comparator.comparingDouble(rating.value()));
        if (rating.limit().isEmpty()) {
            trial.notJudged(Subject.of(rating.part()));
        } else if (task.cruise().isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.CRUISE_THRUST), Subject.of(PropulsionPart.CRUISE_AIRSPEED));
        } else if (fastest.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.SUPPLY));
        } else {
            dive(trial, rating, fastest.get());
        }
    }

    private void dive(Trial trial, Rating rating, OperatingPoint fastest) {
        double limit = rating.limit().orElseThrow();
        boolean level =
                performance.level(true).stream().anyMatch(p -> rating.value().applyAsDouble(p) > limit);
        trial.of(rating.value().applyAsDouble(fastest), rating.unit())
                .atMost(limit, Basis.REQUEST)
                .noteIf(
                        !level && rating.value().applyAsDouble(fastest) > limit,
                        "propeller-speed-in-dive",
                        "In a dive at full throttle the propeller turns up to %s rpm (at %.1f m/s), above its %s rpm:"
                                + " throttle back before you dive.",
                        Figures.of(rating.value().applyAsDouble(fastest)),
                        fastest.airspeedMPerS(),
                        Figures.of(limit));
    }

    private void neverExceed(Trial trial) {
        if (task.limits().neverExceedMPerS().isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.NEVER_EXCEED));
            return;
        }
        if (performance.topSpeedMPerS().isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.CRUISE_THRUST), Subject.of(PropulsionPart.CRUISE_AIRSPEED));
            return;
        }
        double top = performance.topSpeedMPerS().getAsDouble();
        double limit = task.limits().neverExceedMPerS().getAsDouble();
        trial.of(top, "m/s")
                .atMost(limit, Basis.REQUEST)
                .attention(
                        "never-exceed-passed",
                        "Level flight at full throttle reaches %.1f m/s, above the %.1f m/s that must never be exceeded:"
                                + " throttle back in time.",
                        top,
                        limit);
    }
}
