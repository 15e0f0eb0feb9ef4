package trestle.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trestle.rails.RailBudget;
import trestle.rails.RailLoad;
import trestle.rails.RailTask;
import trestle.rails.Regulator;
import trestle.units.Share;

/** The load of each rail against its regulator's ratings, typical and at its peak. */
public final class RailFigure {
    private static final String TITLE = "Load of the rails";
    private static final double BAR = 13;
    private static final double ROW = 3 * BAR + 24;
    private static final double FULL = 100;

    /** Loads beyond this share of the rating end in an arrow. */
    private static final double MOST_PERCENT = 200;

    private static final double LEAST_PERCENT = 120;
    private static final int MOST_RAILS = 24;
    private static final int TICKS = 6;

    /** Beside the bars: what they carry of what they may. */
    private static final double NUMBERS_WIDTH = 118;

    private RailFigure() {}

    /**
     * Draws a budget.
     *
     * @param task the rails
     * @param budget what they carry
     * @param theme colours
     * @return an SVG document
     */
    public static String of(RailTask task, RailBudget budget, Theme theme) {
        Page page = new Page(TITLE, summary(budget), budget.judgement().findings());
        if (budget.rails().isEmpty()) {
            page.note(Style.MUTED, "There is no rail to draw.");
            return page.finished(theme, TITLE + ". " + summary(budget));
        }
        Heading heading = new Heading(
                "Load, % of rating",
                List.of(
                        KeyEntry.band(Style.FIRST_FILL, "typical"),
                        KeyEntry.band(Style.PALE, "peak"),
                        KeyEntry.band(Style.LIMIT_BAND, "over")));
        heading.draw(page.svg(), page.y());
        page.advance(heading.height() + 6);
        List<Integer> order = order(budget);
        int shown = order.size();
        Axis x = Axis.between(
                0, greatestPercent(order.stream().map(budget.rails()::get).toList()), TICKS);
        Box area = new Box(Page.MARGIN + 4, page.y(), Page.INNER_WIDTH - NUMBERS_WIDTH, shown * ROW);
        Plot plot = new Plot(page.svg(), area, x, new Axis(0, shown, List.of(), false));
        plot.grid();
        plot.bandUp(Style.LIMIT_BAND, FULL, x.to());
        for (int i = 0; i < shown; i++) {
            double top = area.top() + i * ROW;
            int rail = order.get(i);
            rail(plot, budget.rails().get(rail), task.rails().get(rail).regulator(), top);
        }
        page.advance(area.height());
        Panels.level(page, x.ticks(), plot::x, Style.MUTED);
        if (shown < budget.rails().size()) {
            page.advance(4);
            page.note(Style.MUTED, "and " + (budget.rails().size() - shown) + " more, not drawn.");
        }
        return page.finished(theme, TITLE + ". " + summary(budget));
    }

    /** All of them in their order; where there are too many, those that fail come first. */
    private static List<Integer> order(RailBudget budget) {
        Stream<Integer> all = IntStream.range(0, budget.rails().size()).boxed();
        return budget.rails().size() <= MOST_RAILS
                ? all.toList()
                : all.sorted(Comparator.comparingInt((Integer rail) -> -gravity(rail, budget)))
                        .limit(MOST_RAILS)
                        .toList();
    }

    /** Of the gravest finding on a rail; 0 without one. */
    private static int gravity(int rail, RailBudget budget) {
        return budget.judgement().findings().stream()
                .filter(finding -> finding.subject().indices().indexOf(rail) == 0)
                .mapToInt(finding -> finding.severity().ordinal() + 1)
                .max()
                .orElse(0);
    }

    private static double greatestPercent(List<RailLoad> rails) {
        double greatest = rails.stream()
                .mapToDouble(r -> Math.max(r.loadFraction(), r.peakLoadFraction()))
                .max()
                .orElse(0);
        return Math.max(LEAST_PERCENT, Math.min(MOST_PERCENT, 1.05 * Share.percentFromFraction(greatest)));
    }

    private static void rail(Plot plot, RailLoad load, Regulator regulator, double top) {
        Box area = plot.area();
        String name = TextFit.shortened(PlainText.clean(load.name()), Font.HEADING, area.width() - 8);
        plot.svg().text(new Label(area.left() + 4, top + 17, Anchor.START, Font.HEADING, Style.INK, name));
        bar(plot, Style.FIRST_FILL, top + 25, load.loadFraction(), of(load.typicalA(), regulator.maxCurrentA()));
        bar(plot, Style.PALE, top + 27 + BAR, load.peakLoadFraction(), of(load.peakA(), regulator.peakRatingA()));
    }

    private static String of(double carriedA, double ratingA) {
        return Numbers.significant(carriedA, 3) + " of " + Numbers.significant(ratingA, 3) + " A";
    }

    private static void bar(Plot plot, Style style, double top, double fraction, String numbers) {
        double percent = Share.percentFromFraction(fraction);
        double left = plot.area().left();
        double right = plot.x(percent);
        plot.svg().rect(style, new Box(left, top, Math.max(0, right - left), BAR));
        if (percent > MOST_PERCENT) {
            double middle = top + BAR / 2;
            plot.svg()
                    .polygon(
                            Style.LIMIT_FILL,
                            List.of(
                                    new Point(right - 1, middle),
                                    new Point(right - 9, middle - 5),
                                    new Point(right - 9, middle + 5)));
        }
        plot.svg()
                .text(new Label(
                        plot.area().right() + 8,
                        top + 11,
                        Anchor.START,
                        Font.TEXT,
                        fraction > 1 ? Style.LIMIT_TEXT : Style.MUTED,
                        TextFit.shortened(numbers, Font.TEXT, NUMBERS_WIDTH - 12)));
    }

    private static String summary(RailBudget budget) {
        List<String> parts = new ArrayList<>();
        parts.add("From the pack " + watt(budget.systemsPowerW()) + " on average");
        parts.add(watt(budget.peakPowerW()) + " with all peaks together");
        return String.join(", ", parts) + ".";
    }

    private static String watt(double powerW) {
        return Numbers.significant(powerW, 3) + " W";
    }

    private static String ampere(double currentA) {
        return Numbers.significant(currentA, 3);
    }
}
