package trestle.figure;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Lays panels out under each other over one level axis. */
final class Panels {
    /** Left of the plots: room for the numbers of the upright axes. */
    static final double LEFT = 58;

    /** Right of them: room for half of the last number of the level axis. */
    static final double RIGHT = Page.WIDTH - 22;

    static final double WIDTH = RIGHT - LEFT;

    /** Room for a number left of a plot; one cut short would be another number. */
    static final double NUMBER_WIDTH = LEFT - 7;

    private static final int MOST_FLAG_ROWS = 6;
    private static final double BELOW_HEADING = 8;
    private static final double BETWEEN = 14;
    private static final double NUMBERS = 21;
    private static final double LEAST_BETWEEN_NUMBERS = 6;

    /** Places that lie evenly but for rounding; on a logarithmic axis they are further off. */
    private static final double UNEVEN = 0.5;

    private Panels() {}

    /**
     * Draws panels at the page's present height and moves that below them.
     *
     * @param page the page
     * @param x level axis
     * @param title its quantity and unit
     * @param flags names of its places
     * @param panels the panels, downwards
     */
    static void draw(Page page, Axis x, String title, List<Flag> flags, List<Panel> panels) {
        Flags names = new Flags(flags, value -> LEFT + WIDTH * x.fraction(value), MOST_FLAG_ROWS);
        boolean first = true;
        for (Panel panel : panels) {
            Heading heading = new Heading(panel.heading(), panel.keys());
            heading.draw(page.svg(), page.y());
            page.advance(heading.height() + BELOW_HEADING);
            if (first) {
                page.advance(names.height());
                names.draw(page.svg(), page.y());
            }
            first = false;
            Box area = new Box(LEFT, page.y(), WIDTH, panel.height());
            Plot plot = new Plot(page.svg(), area, x, panel.y());
            plot.grid();
            names.guides(plot);
            panel.drawing().accept(plot);
            upright(page.svg(), plot, panel.y());
            page.advance(panel.height() + BETWEEN);
        }
        page.advance(-BETWEEN);
        level(page, x.ticks(), value -> LEFT + WIDTH * x.fraction(value), Style.MUTED);
        title(page, title);
    }

    private static void upright(Svg svg, Plot plot, Axis y) {
        double limit = Double.POSITIVE_INFINITY;
        for (Tick tick : y.ticks()) {
            String text = TextFit.shortened(tick.label(), Font.TEXT, NUMBER_WIDTH);
            Label label = new Label(LEFT - 6, plot.y(tick.at()) + 4.5, Anchor.END, Font.TEXT, Style.MUTED, text);
            if (label.box().bottom() <= limit) {
                svg.text(label);
                limit = label.box().top() - 1;
            }
        }
    }

    /**
     * A row of numbers under a plot. Where not all have room, evenly spaced ones are thinned out
     * evenly; of others, those that would touch the one before are left out.
     */
    static void level(Page page, List<Tick> ticks, DoubleUnaryOperator place, Style style) {
        List<Label> labels = ticks.stream()
                .map(tick -> number(page, tick, place.applyAsDouble(tick.at()), style))
                .toList();
        int stride = evenlySpaced(ticks, place) ? stride(labels) : 1;
        double free = 0;
        for (int i = 0; i < labels.size(); i += stride) {
            Box box = labels.get(i).box();
            if (box.left() >= free) {
                page.svg().text(labels.get(i));
                free = box.right() + LEAST_BETWEEN_NUMBERS;
            }
        }
        page.advance(NUMBERS);
    }

    private static Label number(Page page, Tick tick, double x, Style style) {
        return new Label(x, page.y() + 19, Anchor.MIDDLE, Font.TEXT, style, tick.label()).within(2, Page.WIDTH - 2);
    }

    private static boolean evenlySpaced(List<Tick> ticks, DoubleUnaryOperator place) {
        double[] places = ticks.stream().mapToDouble(Tick::at).map(place).toArray();
        for (int i = 2; i < places.length; i++) {
            double change = places[i] - 2 * places[i - 1] + places[i - 2];
            if (Math.abs(change) > UNEVEN) {
                return false;
            }
        }
        return true;
    }

    /** The least stride at which no number touches the next. */
    private static int stride(List<Label> labels) {
        int stride = 1;
        while (!clear(labels, stride)) {
            stride++;
        }
        return stride;
    }

    private static boolean clear(List<Label> labels, int stride) {
        for (int i = stride; i < labels.size(); i += stride) {
            double right = labels.get(i - stride).box().right();
            if (labels.get(i).box().left() < right + LEAST_BETWEEN_NUMBERS) {
                return false;
            }
        }
        return true;
    }

    /** The title of a level axis, under its numbers. */
    static void title(Page page, String text) {
        page.svg()
                .text(new Label(
                        LEFT + WIDTH / 2,
                        page.y() + 13,
                        Anchor.MIDDLE,
                        Font.TEXT,
                        Style.INK,
                        TextFit.shortened(text, Font.TEXT, WIDTH)));
        page.advance(Heading.ROW + 4);
    }
}
