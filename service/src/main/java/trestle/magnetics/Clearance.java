package trestle.magnetics;

import java.util.List;
import trestle.finding.Assumption;
import trestle.finding.Finding;

/**
 * The compass among its leads.
 *
 * @param runs each run alone, in their order
 * @param worst all runs, fields added as magnitudes; its least distance is the one to keep from
 *     every run alike
 * @param likely all runs, fields added by root sum of squares; its least distance likewise
 * @param findings judgements
 * @param assumptions model choices that touched a number
 */
public record Clearance(
        List<Disturbance> runs,
        Disturbance worst,
        Disturbance likely,
        List<Finding> findings,
        List<Assumption> assumptions) {
    /** Copies the lists. */
    public Clearance {
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }
}
