package trestle.propulsion;

import java.util.ArrayList;
import java.util.List;
import trestle.finding.Assumption;
import trestle.finding.Finding;

/**
 * How propeller, motor, controller and supply go together.
 *
 * @param performance what the drive does
 * @param headroom what is left below each rating
 * @param findings judgements
 * @param assumptions model choices that touched a number
 */
public record PropulsionMatch(
        DrivePerformance performance, Headroom headroom, List<Finding> findings, List<Assumption> assumptions) {

    /** Copies the lists. */
    public PropulsionMatch {
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
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
        List<Finding> findings = new ArrayList<>();
        findings.addAll(RatingFindings.of(task.system(), performance.atFullThrottle()));
        findings.addAll(FlightFindings.of(task, performance));
        findings.addAll(PropellerFindings.of(task, performance));
        findings.addAll(MeasurementFindings.of(task, performance, train));
        return new PropulsionMatch(
                performance, Headroom.of(task.system(), performance.atFullThrottle()), findings, ModelChoices.of(task));
    }
}
