package trestle.finding;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

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

    /**
     * What forbids it.
     *
     * @return codes of the findings that are a stop
     */
    public Set<String> stops() {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .map(Finding::code)
                .collect(Collectors.toSet());
    }

    /**
     * The same without some checks: another calculation over the same parts makes them.
     *
     * @param codes of the checks that go
     * @return the judgement; its findings stay
     */
    public Judgement withoutChecks(Set<String> codes) {
        return new Judgement(
                checks.stream().filter(check -> !codes.contains(check.code())).toList(), findings, assumptions);
    }
}
