package trestle.figure;

import java.util.Comparator;
import java.util.List;
import trestle.finding.Caution;
import trestle.finding.Finding;
import trestle.finding.Severity;

/** A figure in the making: its title on top, the rest put under it piece by piece. */
final class Page {
    static final double WIDTH = 400;
    static final double MARGIN = 12;
    static final double INNER_WIDTH = WIDTH - 2 * MARGIN;

    /** Shown at this many pixels a unit where nobody asks for a size. */
    private static final double USUAL_SCALE = 1.3;

    private static final double ROW = 17;
    private static final int MOST_LINES = 3;

    /** A judgement is not cut short as long as a page can hold it. */
    private static final int MOST_LINES_OF_JUDGEMENT = 6;

    private static final double BELOW_TITLE = 10;

    private final Svg svg = new Svg();
    private final String title;
    private double y = MARGIN;

    /**
     * Begins a page.
     *
     * @param title what the figure shows
     * @param summary its main numbers, in a sentence
     * @param findings judgements of the calculation; the gravest is shown
     */
    Page(String title, String summary, List<Finding> findings) {
        this.title = title;
        line(Font.TITLE, Style.INK, title, Font.TITLE.size() + 5);
        for (String line : TextFit.wrapped(summary, Font.TEXT, INNER_WIDTH, MOST_LINES)) {
            line(Font.TEXT, Style.MUTED, line, ROW);
        }
        findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .max(Comparator.comparing(Finding::severity))
                .ifPresent(this::judgement);
        y += BELOW_TITLE;
    }

    Svg svg() {
        return svg;
    }

    /** Height that is used so far. */
    double y() {
        return y;
    }

    void advance(double height) {
        y += height;
    }

    /** A remark of one line or more. */
    void note(Style style, String text) {
        note(style, text, MOST_LINES);
    }

    private void note(Style style, String text, int mostLines) {
        for (String line : TextFit.wrapped(PlainText.clean(text), Font.TEXT, INNER_WIDTH, mostLines)) {
            line(Font.TEXT, style, line, ROW);
        }
    }

    /**
     * The finished document, with what the numbers are not at its foot.
     *
     * @param theme its colours
     * @param description what a reader would tell one who cannot see it
     */
    String finished(Theme theme, String description) {
        y += BELOW_TITLE;
        note(Style.MUTED, Caution.AID);
        String body = svg.toString();
        String id = "trestle-" + Integer.toHexString(body.hashCode());
        double height = Math.ceil(y + MARGIN / 2);
        StringBuilder out = new StringBuilder(body.length() + 6000);
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
        Numbers.coordinate(WIDTH, out);
        out.append(' ');
        Numbers.coordinate(height, out);
        out.append("\" width=\"");
        Numbers.coordinate(USUAL_SCALE * WIDTH, out);
        out.append("\" height=\"");
        Numbers.coordinate(USUAL_SCALE * height, out);
        out.append("\" class=\"").append(theme.rootClass());
        out.append("\" style=\"max-width:100%;height:auto\" role=\"img\" aria-labelledby=\"");
        out.append(id).append("-title ").append(id).append("-desc\" xml:lang=\"en\"");
        out.append(" direction=\"ltr\" font-family=\"system-ui, sans-serif\">\n<title id=\"");
        out.append(id).append("-title\">");
        PlainText.escape(title, out);
        out.append("</title>\n<desc id=\"").append(id).append("-desc\">");
        PlainText.escape(PlainText.clean(description), out);
        out.append("</desc>\n<style>").append(theme.css()).append("</style>\n<rect class=\"");
        out.append(Style.PAPER.cssClass()).append("\" width=\"100%\" height=\"100%\"/>");
        return out.append(body).append("\n</svg>\n").toString();
    }

    private void judgement(Finding finding) {
        boolean stop = finding.severity() == Severity.STOP;
        note(
                stop ? Style.LIMIT_TEXT : Style.ATTENTION_TEXT,
                (stop ? "Stop: " : "Attention: ") + finding.message(),
                MOST_LINES_OF_JUDGEMENT);
    }

    private void line(Font font, Style style, String text, double height) {
        svg.text(new Label(
                MARGIN, y + font.size() - 1, Anchor.START, font, style, TextFit.shortened(text, font, INNER_WIDTH)));
        y += height;
    }
}
