package trestle.propulsion;

import trestle.finding.Judge;
import trestle.finding.Judgement;

/**
 * How propeller, motor, controller and supply go together.
 *
 * @param performance what the drive does
 * @param headroom what is left below each rating
 * @param judgement checks, findings, and the model choices that touched a number
 */
public record PropulsionMatch(DrivePerformance performance, Headroom headroom, Judgement judgement) {

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
        Judge judge = new Judge();
        RatingChecks.judge(task.system(), performance.atFullThrottle(), judge);
        FlightChecks.judge(task, performance, judge);
        PropellerChecks.judge(task, performance, judge);
        MeasurementChecks.judge(task, performance, train, judge);
        ModelChoices.assume(task, judge);
        return new PropulsionMatch(
                performance, Headroom.of(task.system(), performance.atFullThrottle()), judge.judgement());
    }
}
