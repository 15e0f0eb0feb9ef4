package trestle.endpoint;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import trestle.api.model.ApiFinding;
import trestle.api.model.ApiSeverity;
import trestle.finding.Check;
import trestle.finding.Outcome;
import trestle.finding.Subject;

/**
 * Says once, for all essential checks that could not be made, what to give so that they can: nothing
 * passes by silence.
 */
final class NotJudged {
    static final String CODE = "not-judged";

    /** More names than this are counted: a sentence is read, a list is in the checks. */
    private static final int MOST_NAMED = 4;

    private NotJudged() {}

    /**
     * The finding for what was not judged.
     *
     * @param checks of one calculation
     * @param place where its parts stand in the request
     * @return the finding; empty where every essential check was made
     */
    static Optional<ApiFinding> of(List<Check> checks, Function<Subject, String> place) {
        List<Check> missed = checks.stream()
                .filter(check -> check.essential() && check.outcome() == Outcome.NOT_JUDGED)
                .toList();
        if (missed.isEmpty()) {
            return Optional.empty();
        }
        Set<String> about = new LinkedHashSet<>();
        Set<String> give = new LinkedHashSet<>();
        missed.forEach(check -> {
            about.add(check.about());
            check.give().forEach(subject -> give.add(place.apply(subject)));
        });
        String at = give.isEmpty()
                ? place.apply(missed.get(0).subject())
                : give.iterator().next();
        return Optional.of(ApiFinding.builder()
                .severity(ApiSeverity.ATTENTION)
                .code(CODE)
                .message("Not judged: " + named(about) + (give.isEmpty() ? "." : ". Give " + named(give) + "."))
                .at(at)
                .build());
    }

    private static String named(Set<String> names) {
        List<String> first = new ArrayList<>(names);
        int more = first.size() - MOST_NAMED;
        return more <= 0
                ? String.join(", ", first)
                : String.join(", ", first.subList(0, MOST_NAMED)) + " and " + more + " more (see checks)";
    }
}
