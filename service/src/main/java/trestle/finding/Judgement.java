package trestle.finding;

import java.util.List;

/**
 * What a calculation thinks of its own numbers.
 *
 * @param checks everything that was or could have been judged, always in the same order
 * @param findings what did not pass, and the notes, in the order they were found
 * @param assumptions model choices that touched a number
 */
public record Judgement(List<Check> checks, List<Finding> findings, List<Assumption> assumptions) {
    /** Copies the lists. */
    public Judgement {
        checks = List.copyOf(checks);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }
}
