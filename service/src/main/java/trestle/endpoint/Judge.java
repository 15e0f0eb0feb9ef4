package trestle.endpoint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import trestle.api.model.Assumption;
import trestle.api.model.ComputedBy;
import trestle.api.model.Finding;
import trestle.api.model.Judgement;
import trestle.api.model.Severity;
import trestle.api.model.Verdict;
import trestle.finding.Subject;

/** Writes what a discipline thinks of its numbers into the part that every answer carries. */
final class Judge {
    private Judge() {}

    /**
     * The judgement on one calculation.
     *
     * @param findings of the discipline
     * @param choices model choices of the discipline
     * @param place where the discipline's parts stand in the request
     * @param reading the defaults noted while reading the request
     * @param cautions safety sentences
     * @param models the models behind the numbers
     * @return verdict, findings worst first, assumptions, cautions and origin
     */
    static Judgement of(
            List<trestle.finding.Finding> findings,
            List<trestle.finding.Assumption> choices,
            Function<Subject, String> place,
            Reading reading,
            List<String> cautions,
            List<String> models) {
        List<Finding> written = findings.stream().map(f -> write(f, place)).toList();
        List<Assumption> assumptions = new ArrayList<>(reading.assumptions());
        choices.forEach(c -> assumptions.add(new Assumption(place.apply(c.subject()), c.assumed(), c.because())));
        return of(written, assumptions, cautions, models);
    }

    /**
     * The judgement that follows from findings that are already written.
     *
     * @param findings in any order
     * @param assumptions all of them
     * @param cautions safety sentences
     * @param models the models behind the numbers
     * @return the judgement
     */
    static Judgement of(
            List<Finding> findings, List<Assumption> assumptions, List<String> cautions, List<String> models) {
        List<Finding> worstFirst = findings.stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        return Judgement.builder()
                .verdict(verdict(worstFirst))
                .findings(worstFirst)
                .assumptions(assumptions)
                .cautions(cautions)
                .computedBy(new ComputedBy(Version.current(), models))
                .build();
    }

    private static Verdict verdict(List<Finding> worstFirst) {
        if (worstFirst.isEmpty()) {
            return Verdict.FIT;
        }
        return switch (worstFirst.get(0).severity()) {
            case STOP -> Verdict.STOP;
            case ATTENTION -> Verdict.ATTENTION;
            case NOTE -> Verdict.FIT;
        };
    }

    private static Finding write(trestle.finding.Finding finding, Function<Subject, String> place) {
        return Finding.builder()
                .severity(Severity.valueOf(finding.severity().name()))
                .code(finding.code())
                .message(finding.message())
                .at(place.apply(finding.subject()))
                .value(Writing.boxed(finding.value()))
                .limit(Writing.boxed(finding.limit()))
                .build();
    }
}
