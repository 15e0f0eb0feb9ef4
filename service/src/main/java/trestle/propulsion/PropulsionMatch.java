package trestle.propulsion;

import java.util.List;
import java.util.Optional;
import trestle.finding.Judge;
import trestle.finding.Judgement;

/**
 * How propeller, motor, controller and supply go together.
 *
 * @param performance what the drive does
 * @param headroom what is left below each rating
 * @param limits the highest throttle that keeps each rating, for those that are stated and to be kept
 * @param judgement checks, findings, and the model choices that touched a number
 */
public record PropulsionMatch(
        DrivePerformance performance, Headroom headroom, List<ThrottleLimit> limits, Judgement judgement) {
    /** Copies the list. */
    public PropulsionMatch {
        limits = List.copyOf(limits);
    }

    /**
     * The highest throttle that keeps every rating.
     *
     * @return the lowest of the limits; empty where no rating is stated or the propeller does not turn
     */
    public Optional<ThrottleLimit> throttleLimit() {
        return ThrottleLimits.least(limits);
    }

    /**
     * Matches a drive.
     *
     * @param task the drive and what is asked of it
     * @return the match
     */
    public static PropulsionMatch of(PropulsionTask task) {
        return of(task, PowerTrain.of(task.system(), task.air()));
    }

    /**
     * Matches a drive that was made ready before, so that others can go on asking it.
     *
     * @param task the drive and what is asked of it
     * @param train that drive in that air
     * @return the match
     */
    public static PropulsionMatch of(PropulsionTask task, PowerTrain train) {
        DrivePerformance performance = DrivePerformance.of(task, train);
        List<ThrottleLimit> limits = ThrottleLimits.each(task, train, performance);
        Judge judge = new Judge();
        RatingChecks.judge(task, performance, judge);
        ThrottleChecks.judge(task, performance, limits, judge);
        MotorChecks.judge(task, performance, judge);
        FlightChecks.judge(task, performance, judge);
        PropellerChecks.judge(task, performance, judge);
        MeasurementChecks.judge(task, performance, train, judge);
        ModelChoices.assume(task, judge);
        List<OperatingPoint> level = performance.level(task.cruise().isPresent());
        Headroom headroom = Headroom.of(task.system(), performance.atFullThrottle(), level);
        return new PropulsionMatch(performance, headroom, limits, judge.judgement());
    }
}
