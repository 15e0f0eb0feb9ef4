package trestle.propulsion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;

/** What a limited throttle would keep, and what it would leave. */
final class ThrottleChecks {
    private final PropulsionTask task;
    private final DrivePerformance performance;
    private final Optional<ThrottleLimit> least;

    private ThrottleChecks(PropulsionTask task, DrivePerformance performance, List<ThrottleLimit> limits) {
        this.task = task;
        this.performance = performance;
        least = ThrottleLimits.least(limits);
    }

    /** Judges the throttle that keeps every rating. */
    static void judge(PropulsionTask task, DrivePerformance performance, List<ThrottleLimit> limits, Judge judge) {
        ThrottleChecks checks = new ThrottleChecks(task, performance, limits);
        Subject propeller = Subject.of(PropulsionPart.PROPELLER);
        judge.check("throttle-limit", "throttle that keeps every rating", propeller, checks::limit);
        judge.check(
                "rating-duration",
                "full throttle for as long as the motor's ratings hold",
                Subject.of(PropulsionPart.MOTOR_RATING_DURATION),
                checks::duration);
    }

    private void limit(Trial trial) {
        if (least.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.SUPPLY));
            return;
        }
        ThrottleLimit limit = least.get();
        double percent = 100 * limit.throttleFraction();
        trial.of(percent, "%").atLeast(100, Basis.COMPUTED);
        if (limit.throttleFraction() == 0) {
            trial.stop(
                    "throttle-limit",
                    "No throttle keeps the %s within its limit.",
                    limit.rating().label());
            return;
        }
        sinks(trial, limit);
        boolean onlyAirspeed = limit.rating() == KeptRating.NEVER_EXCEED;
        String sentence =
                "Limit throttle to %.0f %%: the %s then stays within its limit; thrust at rest falls from %s to"
                        + " %s N%s.";
        Object[] values = {
            Math.floor(percent),
            limit.rating().label(),
            Figures.of(performance.atRest().map(OperatingPoint::thrustN).orElse(0.0)),
            Figures.of(limit.thrustN().orElse(0)),
            left(limit)
        };
        trial.stopIf(limit.limits() && !onlyAirspeed, "throttle-limit", sentence, values)
                .attentionIf(limit.limits(), "throttle-limit", sentence, values);
    }

    private void sinks(Trial trial, ThrottleLimit limit) {
        boolean sinks = limit.limits() && limit.climbRateMPerS().orElse(1) <= 0;
        if (sinks) {
            trial.stopIf(
                    true,
                    "limit-too-low-to-fly",
                    "To keep the %s within its limit, throttle may be %.0f %%, and there the aircraft does not climb: take a"
                            + " smaller propeller or a part of a higher rating%s.",
                    limit.rating().label(),
                    Math.floor(100 * limit.throttleFraction()),
                    smaller());
        }
    }

    private static String left(ThrottleLimit limit) {
        StringBuilder left = new StringBuilder();
        limit.thrustToWeightRatio().ifPresent(it -> left.append(Judge.text(" (%.2f of weight)", it)));
        limit.topSpeedMPerS().ifPresent(it -> left.append(Judge.text(", level top speed is %.1f m/s", it)));
        limit.climbRateMPerS()
                .ifPresent(it -> left.append(
                        Judge.text(it < 0 ? ", it sinks at %.1f m/s" : ", it climbs at %.1f m/s", Math.abs(it))));
        return left.toString();
    }

    private String smaller() {
        return SmallerPropeller.of(task)
                .map(p -> Judge.text(
                        "; by the same model a propeller of %s x %s in keeps every rating at full throttle and climbs",
                        Figures.of(Length.inFromM(p.diameterM())), Figures.of(Length.inFromM(p.pitchM()))))
                .orElse("");
    }

    private void duration(Trial trial) {
        OptionalDouble rated = task.system().motor().ratingDurationS();
        OptionalDouble held = task.limits().fullThrottleDurationS();
        if (rated.isEmpty() || held.isEmpty()) {
            trial.notJudged(Subject.of(
                    rated.isEmpty() ? PropulsionPart.MOTOR_RATING_DURATION : PropulsionPart.FULL_THROTTLE_DURATION));
            return;
        }
        trial.of(held.getAsDouble(), "s")
                .atMost(rated.getAsDouble(), Basis.REQUEST)
                .attention(
                        "rating-duration-short",
                        "The motor's ratings hold for %.0f s and full throttle lasts %.0f s: hold it no longer, or give"
                                + " the ratings that hold for good.",
                        rated.getAsDouble(),
                        held.getAsDouble());
    }
}
