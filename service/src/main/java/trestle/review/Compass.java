package trestle.review;

import java.util.List;
import java.util.OptionalDouble;
import trestle.magnetics.Clearance;
import trestle.magnetics.CompassClearance;
import trestle.magnetics.CompassTask;
import trestle.magnetics.LeadRun;
import trestle.wiring.CurrentPeak;
import trestle.wiring.GaugeAnswer;
import trestle.wiring.WireRun;

/**
 * The compass as the review judged it.
 *
 * @param task the leads with the currents of this aircraft
 * @param clearance what they do to the compass
 */
public record Compass(CompassTask task, Clearance clearance) {
    /** Leads that touch, where no wire meets the limits and so none has a diameter, m. */
    private static final double NOMINAL_SEPARATION_M = 5e-3;

    static Compass of(CompassPlan plan, List<RunReview> runs) {
        List<LeadRun> leads = plan.leads().stream()
                .map(lead -> lead(lead, runs.get(lead.runIndex())))
                .toList();
        CompassTask task =
                new CompassTask(leads, plan.earthHorizontalT(), plan.allowedHeadingErrorRad(), plan.allowedBasis());
        return new Compass(task, CompassClearance.of(task));
    }

    private static LeadRun lead(CompassLead lead, RunReview reviewed) {
        WireRun run = reviewed.task().run();
        OptionalDouble peakA =
                run.peak().stream().mapToDouble(CurrentPeak::currentA).findFirst();
        double separationM = lead.separationM().orElseGet(() -> touchingM(reviewed));
        // A compass cannot stand between two leads that are one bundle: the nearest is beside it.
        double distanceM = Math.max(lead.distanceM(), (separationM + touchingM(reviewed)) / 2);
        return new LeadRun(
                run.name(), run.currentA(), peakA, separationM, lead.twisted(), distanceM, OptionalDouble.empty());
    }

    private static double touchingM(RunReview run) {
        return run.fitted()
                .map(GaugeAnswer::wire)
                .map(wire -> wire.outerDiameterM())
                .orElse(NOMINAL_SEPARATION_M);
    }
}
