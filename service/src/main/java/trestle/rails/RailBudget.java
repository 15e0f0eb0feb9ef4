package trestle.rails;

import java.util.List;
import trestle.finding.Assumption;
import trestle.finding.Finding;

/**
 * What the rails carry and draw.
 *
 * @param rails one a rail, in their order
 * @param systemsPowerW mean power of all rails from the pack, W
 * @param peakPowerW power of all rails at their peaks together, W
 * @param findings judgements
 * @param assumptions model choices that touched a number
 */
public record RailBudget(
        List<RailLoad> rails,
        double systemsPowerW,
        double peakPowerW,
        List<Finding> findings,
        List<Assumption> assumptions) {
    /** Copies the lists. */
    public RailBudget {
        rails = List.copyOf(rails);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }
}
