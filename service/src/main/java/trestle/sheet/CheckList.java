package trestle.sheet;

import static trestle.sheet.Markup.each;
import static trestle.sheet.Markup.element;
import static trestle.sheet.Markup.text;
import static trestle.sheet.Markup.when;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import trestle.finding.Outcome;

/** Lays out what was judged, and what was not. */
final class CheckList {
    private static final List<String> COLUMNS = List.of("Check", "Value", "Limit", "Passed by");

    private final List<Checked> checks;

    /** Where limits are from, each once: its place gives the mark of a row. */
    private final List<String> bases;

    CheckList(List<Checked> checks) {
        this.checks = checks;
        this.bases = checks.stream()
                .map(Checked::basis)
                .filter(basis -> !basis.isEmpty())
                .distinct()
                .toList();
    }

    /** How many came out how, such as 117 checks passed, 1 not passed, 8 not judged. */
    String counted() {
        long passed = checks.stream().filter(Checked::passed).count();
        long judged = checks.stream().filter(Checked::judged).count();
        List<String> parts = new ArrayList<>();
        parts.add(passed == 1 ? "1 check passed" : passed + " checks passed");
        if (judged > passed) {
            parts.add((judged - passed) + " not passed");
        }
        if (checks.size() > judged) {
            parts.add((checks.size() - judged) + " not judged");
        }
        return String.join(", ", parts);
    }

    boolean allJudged() {
        return checks.stream().allMatch(Checked::judged);
    }

    /** What was not judged, with what to give; checks that want the same stand together. */
    Markup notJudged() {
        Map<List<String>, List<Checked>> alike = checks.stream()
                .filter(check -> !check.judged())
                .collect(Collectors.groupingBy(Checked::give, LinkedHashMap::new, Collectors.toList()));
        return element("ul", "", each(List.copyOf(alike.values()), CheckList::wanting));
    }

    private static Markup wanting(List<Checked> alike) {
        List<String> give = alike.get(0).give();
        return element(
                "li",
                "",
                element(
                        "span",
                        "",
                        alike.stream().map(Checked::about).distinct().collect(Collectors.joining("; "))),
                Markup.SPACE,
                element("code", "", give.isEmpty() ? "" : "give " + String.join(", ", give)));
    }

    /** Every check that was judged and has a number, in its order. */
    Markup table() {
        return element(
                "table",
                "",
                element("thead", "", element("tr", "", each(COLUMNS, column -> element("th", "", column)))),
                element(
                        "tbody",
                        "",
                        each(
                                checks.stream()
                                        .filter(check -> check.judged() && !saidAtOnce(check))
                                        .toList(),
                                this::row)));
    }

    /** What the marks stand for. */
    Markup marks() {
        return when(
                !bases.isEmpty(),
                element(
                        "p",
                        "",
                        text("Where a marked limit is from:"),
                        each(
                                bases,
                                basis -> element(
                                        "span",
                                        "",
                                        Markup.SPACE,
                                        mark(basis),
                                        Markup.SPACE,
                                        text(basis + (bases.indexOf(basis) == bases.size() - 1 ? "." : ";"))))));
    }

    private Markup mark(String basis) {
        return element("sup", "", String.valueOf(bases.indexOf(basis) + 1));
    }

    /** What passed without a number to show, in a sentence: a row each would be mostly empty. */
    Markup passedWithoutNumbers() {
        List<String> said = checks.stream()
                .filter(CheckList::saidAtOnce)
                .map(Checked::about)
                .toList();
        return when(
                !said.isEmpty(),
                element("p", "", "Passed too, with nothing to measure: " + String.join("; ", said) + "."));
    }

    private static boolean saidAtOnce(Checked check) {
        return check.passed()
                && check.value().isEmpty()
                && check.limit().isEmpty()
                && check.margin().isEmpty()
                && check.basis().isEmpty();
    }

    private Markup row(Checked check) {
        return element(
                "tr",
                word(check.outcome()),
                element("th", "", text(check.about()), when(!check.basis().isEmpty(), mark(check.basis()))),
                element("td", "", check.value()),
                element("td", "", check.limit()),
                element("td", "", outcome(check)));
    }

    private static String outcome(Checked check) {
        return check.passed() && !check.margin().isEmpty() ? check.margin() : word(check.outcome());
    }

    private static String word(Outcome outcome) {
        return outcome.name().toLowerCase(Locale.ROOT);
    }
}
