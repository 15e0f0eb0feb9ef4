package trestle.sheet;

import static trestle.sheet.Markup.each;
import static trestle.sheet.Markup.element;
import static trestle.sheet.Markup.text;
import static trestle.sheet.Markup.when;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import trestle.finding.Caution;

/** Lays a sheet out as a page. */
final class SheetPage {
    private static final String UNNAMED = "Unnamed aircraft";
    private static final String WHOLE = "whole aircraft";

    /** A bare value says nothing without its place; a sentence does, and paper is short. */
    private static final int LONGEST_BARE = 40;

    private static final String LIMITS = "; a limit without a mark is from the document or computed";

    private static final Markup CSS = css();

    private final Sheet sheet;
    private final String name;
    private final CheckList checks;

    SheetPage(Sheet sheet) {
        this.sheet = sheet;
        this.name = sheet.name().isBlank() ? UNNAMED : sheet.name();
        this.checks = new CheckList(sheet.checks());
    }

    String html() {
        return "<!DOCTYPE html>\n"
                + "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>"
                + "<meta charset=\"utf-8\"/>"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>"
                + "<meta name=\"color-scheme\" content=\"light\"/>"
                + element("title", "", "Build review: " + name).html()
                + element("style", "", CSS).html()
                + "</head>\n"
                + body().html()
                + "\n</html>\n";
    }

    /** What a builder reads fills the first page, figures and cautions the second; the lists follow. */
    private Markup body() {
        List<Table> tables = sheet.tables();
        List<String> figures = sheet.figures();
        Markup overview = element(
                "div",
                "overview",
                element("div", "", keyNumbers(), each(first(tables), SheetPage::table), signature()),
                each(first(figures), SheetPage::figure));
        return element(
                "body",
                "",
                element(
                        "main",
                        "",
                        head(),
                        findings(),
                        when(!checks.allJudged(), notJudged()),
                        overview,
                        each(rest(tables), SheetPage::table),
                        when(figures.size() > 1, figures(rest(figures))),
                        section("cautions", "Cautions", "", sentences(sheet.cautions())),
                        when(!sheet.checks().isEmpty(), checks()),
                        smallPrint(),
                        request()));
    }

    /** What it was computed from, so that it can be again. Paper has the fingerprint only: the whole is a page more. */
    private Markup request() {
        return section(
                "request",
                "Request",
                "in this page as saved; Trestle " + sheet.version()
                        + " gives these numbers again for it. SHA-256 of it: " + Fingerprint.of(sheet.request()),
                element("pre", "", sheet.request()));
    }

    private Markup head() {
        Grade verdict = sheet.verdict();
        return element(
                "header",
                "",
                element("p", "kind", "Build review"),
                element("h1", "", name),
                element(
                        "p",
                        "verdict " + verdict.cssClass(),
                        element("strong", "", verdict.word()),
                        element("span", "", verdict.meaning() + " " + checks.counted() + ".")),
                aid());
    }

    private Markup findings() {
        return section(
                "findings",
                "Findings",
                sheet.findings().isEmpty() ? "Nothing stands out." : counted(),
                element("ul", "", each(sheet.findings(), SheetPage::finding)));
    }

    private String counted() {
        Map<Grade, Long> counts =
                sheet.findings().stream().collect(Collectors.groupingBy(Judged::grade, Collectors.counting()));
        return List.of(Grade.STOP, Grade.ATTENTION, Grade.NOTE).stream()
                .filter(counts::containsKey)
                .map(grade -> grade.counted(counts.get(grade)))
                .collect(Collectors.joining(", "));
    }

    private static Markup aid() {
        return element("p", "aid", Caution.AID);
    }

    private Markup notJudged() {
        return section("unjudged", "Not judged", "for want of what is named", checks.notJudged());
    }

    private Markup checks() {
        return section(
                "checks",
                "Checks",
                checks.counted() + LIMITS,
                element("div", "", checks.table(), checks.passedWithoutNumbers(), checks.marks()));
    }

    private static Markup finding(Judged finding) {
        return element(
                "li",
                finding.grade().cssClass(),
                element("strong", "", finding.grade().word()),
                Markup.SPACE,
                element("span", "", finding.sentence()),
                Markup.SPACE,
                element("code", "", finding.where().isEmpty() ? WHOLE : finding.where()));
    }

    private Markup keyNumbers() {
        return section(
                "key",
                "Key figures",
                "",
                element(
                        "dl",
                        "",
                        each(
                                sheet.keyNumbers(),
                                number -> element(
                                        "div",
                                        "",
                                        element("dt", "", number.label()),
                                        element(
                                                "dd",
                                                "",
                                                text(number.value()),
                                                Markup.SPACE,
                                                element("span", "", number.unit())),
                                        when(!number.band().isEmpty(), element("dd", "band", number.band()))))));
    }

    private static Markup table(Table table) {
        return section(
                "table",
                table.title(),
                table.summary(),
                element(
                        "div",
                        "scroll",
                        element(
                                "table",
                                "",
                                element(
                                        "thead",
                                        "",
                                        element("tr", "", each(table.columns(), c -> element("th", "", c)))),
                                element("tbody", "", each(table.rows(), SheetPage::row)))));
    }

    private static Markup row(List<String> cells) {
        return element(
                "tr",
                "",
                element("th", "", cells.get(0)),
                each(cells.subList(1, cells.size()), cell -> element("td", "", cell)));
    }

    private Markup figures(List<String> figures) {
        return section("figures", "Figures", name, element("div", "", each(figures, SheetPage::figure)));
    }

    private static Markup figure(String svg) {
        return element("figure", "", Markup.svg(svg));
    }

    private Markup smallPrint() {
        return element(
                "div",
                "small",
                assumptions(),
                section("models", "Computed by", "Trestle " + sheet.version(), sentences(sheet.models())));
    }

    /** What was assumed for the same reason at several places is written once. */
    private Markup assumptions() {
        Map<String, List<Assumed>> alike = sheet.assumptions().stream()
                .collect(Collectors.groupingBy(
                        a -> a.assumed() + '\n' + a.because(), LinkedHashMap::new, Collectors.toList()));
        return section(
                "assumptions",
                "Assumptions",
                sheet.assumptions().size() + ", reasons in the answer",
                element("ul", "", each(List.copyOf(alike.values()), SheetPage::assumption)));
    }

    private static Markup assumption(List<Assumed> alike) {
        Assumed first = alike.get(0);
        return element(
                "li",
                first.assumed().length() > LONGEST_BARE ? "said" : "",
                text(first.assumed()),
                Markup.SPACE,
                element("span", "why", "(" + first.because() + ")"),
                each(
                        alike.stream()
                                .map(Assumed::where)
                                .filter(w -> !w.isEmpty())
                                .distinct()
                                .toList(),
                        where -> new Markup(
                                Markup.SPACE.html() + element("code", "", where).html())));
    }

    private static Markup sentences(List<String> sentences) {
        return element("ul", "", each(sentences, sentence -> element("li", "", sentence)));
    }

    /** On paper only. */
    private static Markup signature() {
        return element(
                "footer",
                "",
                aid(),
                element("p", "", "Compared with the aircraft as built:"),
                each(List.of("Date", "Place", "Signature"), label -> element("p", "line", label)));
    }

    private static <T> List<T> first(List<T> things) {
        return things.stream().limit(1).toList();
    }

    private static <T> List<T> rest(List<T> things) {
        return things.stream().skip(1).toList();
    }

    private static Markup section(String cssClass, String title, String aside, Markup content) {
        Markup heading =
                element("h2", "", text(title), when(!aside.isEmpty(), Markup.SPACE, element("span", "", aside)));
        return element("section", cssClass, heading, content);
    }

    /** Ours, and without a character that XML minds. */
    private static Markup css() {
        try (InputStream css = SheetPage.class.getResourceAsStream("/trestle/sheet/sheet.css")) {
            return new Markup(new String(css.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
