package trestle.sheet;

import java.util.List;

/**
 * What stands on the sheet of an aircraft. Text is plain and may come from a user.
 *
 * @param name what the aircraft is called; empty where it has no name
 * @param verdict the judgement in one word
 * @param findings worst first
 * @param checks all that was judged or could have been, in the order of the answer
 * @param keyNumbers what a builder looks at first
 * @param tables the first stands beside the key numbers, so a narrow one
 * @param figures SVG documents of {@code trestle.figure}, of the light theme; the first stands
 *     beside the key numbers
 * @param assumptions defaults and model choices
 * @param cautions safety sentences
 * @param version of the service
 * @param models the models behind the numbers, with their sources
 * @param request what was asked, as JSON on one line, so that the sheet can be computed again
 */
public record Sheet(
        String name,
        Grade verdict,
        List<Judged> findings,
        List<Checked> checks,
        List<KeyNumber> keyNumbers,
        List<Table> tables,
        List<String> figures,
        List<Assumed> assumptions,
        List<String> cautions,
        String version,
        List<String> models,
        String request) {
    /** Copies the lists. */
    public Sheet {
        findings = List.copyOf(findings);
        checks = List.copyOf(checks);
        keyNumbers = List.copyOf(keyNumbers);
        tables = List.copyOf(tables);
        figures = List.copyOf(figures);
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
        models = List.copyOf(models);
    }

    /**
     * The sheet as a page.
     *
     * @return an HTML document that is well-formed XML too
     */
    public String html() {
        return new SheetPage(this).html();
    }
}
