package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trestle.finding.Finding;

/** What studies found: a figure over a number, bars of effects, a spread. */
public final class StudyFigure {
    private static final double HEIGHT = 190;
    private static final int TICKS = 6;
    private static final double BAR = 13;
    private static final double ROW = 2 * BAR + 22;
    private static final int MOST_BARS = 16;
    private static final double NUMBERS_WIDTH = 110;

    /** Lines that can be told apart. */
    private static final List<Style> LINES = List.of(
            Style.FIRST_LINE,
            Style.SECOND_LINE,
            Style.THIRD_LINE,
            Style.FIRST_DASHED,
            Style.SECOND_DASHED,
            Style.THIRD_DASHED);

    private static final double WIDEST_KEY = 150;

    /** A line of a figure. */
    public record Line(String name, List<double[]> points) {}

    /** A figure over the same number as the others: its name, and one or more lines. */
    public record Curves(String heading, List<Line> lines) {}

    /** What one number does to a figure, in per cent of the figure per per cent of the number. */
    public record Effect(String name, double percent) {}

    private StudyFigure() {}

    /**
     * Figures over a number.
     *
     * @param title what was studied
     * @param summary what came of it, in a sentence
     * @param findings what is to be said of it
     * @param across the number, with its unit
     * @param logarithmic whether equal ratios of the number take equal lengths
     * @param curves one panel each
     * @param marks places of the number that are named
     * @param theme colours
     * @return an SVG document
     */
    public static String curves(
            String title,
            String summary,
            List<Finding> findings,
            String across,
            boolean logarithmic,
            List<Curves> curves,
            Map<Double, String> marks,
            Theme theme) {
        Page page = new Page(title, summary, findings);
        Reach reach = new Reach();
        curves.forEach(panel -> panel.lines().forEach(line -> line.points().forEach(p -> reach.to(p[0]))));
        marks.keySet().forEach(reach::to);
        if (curves.stream().allMatch(panel -> panel.lines().isEmpty())) {
            page.note(Style.MUTED, "There is nothing to draw over one number; the table has it.");
            return page.finished(theme, title + ". " + summary);
        }
        Axis x = logarithmic && reach.least() > 0
                ? Axis.logarithmic(reach.least(), reach.greatest())
                : Axis.between(reach.least(), reach.greatest(), TICKS);
        List<Flag> flags = marks.entrySet().stream()
                .map(mark -> new Flag(mark.getKey(), Style.LIMIT_FILL, mark.getValue()))
                .toList();
        Panels.draw(
                page, x, across, flags, curves.stream().map(StudyFigure::panel).toList());
        return page.finished(theme, title + ". " + summary);
    }

    private static Panel panel(Curves curves) {
        Reach reach = new Reach();
        curves.lines().forEach(line -> line.points().forEach(p -> reach.to(p[1])));
        Axis y = Axis.around(reach.least(), reach.greatest(), TICKS);
        List<KeyEntry> keys = new ArrayList<>();
        for (int i = 0; i < curves.lines().size() && curves.lines().size() > 1; i++) {
            keys.add(KeyEntry.line(
                    LINES.get(i % LINES.size()),
                    Words.name(curves.lines().get(i).name(), WIDEST_KEY)));
        }
        return new Panel(curves.heading(), keys, HEIGHT, y, plot -> {
            for (int i = 0; i < curves.lines().size(); i++) {
                List<Point> points = curves.lines().get(i).points().stream()
                        .map(p -> new Point(p[0], p[1]))
                        .toList();
                plot.curve(LINES.get(i % LINES.size()), points);
                if (points.size() == 1) {
                    plot.dot(Style.FIRST_FILL, points.get(0).x(), points.get(0).y());
                }
            }
        });
    }

    /**
     * Effects as bars, longest first.
     *
     * @param title what was studied
     * @param summary what came of it, in a sentence
     * @param findings what is to be said of it
     * @param effects greatest first
     * @param theme colours
     * @return an SVG document
     */
    public static String bars(String title, String summary, List<Finding> findings, List<Effect> effects, Theme theme) {
        Page page = new Page(title, summary, findings);
        List<Effect> shown = effects.stream().limit(MOST_BARS).toList();
        if (shown.isEmpty()) {
            page.note(Style.MUTED, "No number moves the figure.");
            return page.finished(theme, title + ". " + summary);
        }
        Heading heading = new Heading("Change of the figure, %, for 1 % more", List.of());
        heading.draw(page.svg(), page.y());
        page.advance(heading.height() + 6);
        Reach reach = new Reach().to(0);
        shown.forEach(effect -> reach.to(effect.percent()));
        Axis x = Axis.around(reach.least(), reach.greatest(), TICKS);
        Box area = new Box(Page.MARGIN + 8, page.y(), Page.INNER_WIDTH - NUMBERS_WIDTH + 36, shown.size() * ROW);
        Plot plot = new Plot(page.svg(), area, x, new Axis(0, shown.size(), List.of(), false));
        plot.grid();
        for (int i = 0; i < shown.size(); i++) {
            bar(plot, shown.get(i), area.top() + i * ROW);
        }
        page.advance(area.height());
        Panels.level(page, x.ticks(), plot::x, Style.MUTED);
        if (effects.size() > shown.size()) {
            page.advance(4);
            page.note(Style.MUTED, "and " + (effects.size() - shown.size()) + " less, not drawn.");
        }
        return page.finished(theme, title + ". " + summary);
    }

    private static void bar(Plot plot, Effect effect, double top) {
        Box area = plot.area();
        String name = TextFit.shortened(PlainText.clean(effect.name()), Font.TEXT, area.width() - 8);
        plot.svg().text(new Label(area.left() + 4, top + 15, Anchor.START, Font.TEXT, Style.INK, name));
        double left = Math.min(plot.x(0), plot.x(effect.percent()));
        double right = Math.max(plot.x(0), plot.x(effect.percent()));
        Style style = effect.percent() < 0 ? Style.SECOND_FILL : Style.FIRST_FILL;
        plot.svg().rect(style, new Box(left, top + 22, right - left, BAR));
        plot.svg()
                .text(new Label(
                        area.right() + 8,
                        top + 33,
                        Anchor.START,
                        Font.TEXT,
                        Style.MUTED,
                        Numbers.significant(effect.percent(), 3) + " %"));
    }
}
