package trestle.figure;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * Names above a plot, each beside a staff that stands on its place and goes on through the plot.
 */
final class Flags {
    private final List<Pole> poles;
    private final int leftOut;

    /**
     * Finds a place for each, or for the first ones where there is no room for all.
     *
     * @param flags the flags, the most important first
     * @param place from a value to x on the page
     * @param mostRows rows at most
     */
    Flags(List<Flag> flags, DoubleUnaryOperator place, int mostRows) {
        poles = FlagRows.arranged(flags, place, mostRows);
        leftOut = flags.size() - poles.size();
    }

    int leftOut() {
        return leftOut;
    }

    double height() {
        return poles.isEmpty() ? 0 : Pole.ROW * (1 + FlagRows.highest(poles)) + Pole.ABOVE_PLOT;
    }

    /** Draws names and staffs above a plot. */
    void draw(Svg svg, double bottom) {
        for (Pole pole : poles) {
            svg.line(Style.GUIDE, pole.x(), bottom + pole.staff().top(), pole.x(), bottom);
        }
        for (Pole pole : poles) {
            svg.text(pole.label(bottom));
        }
    }

    /** Carries the staffs on through a plot. */
    void guides(Plot plot) {
        guides(plot, flag -> plot.area().bottom());
    }

    /** Carries the staffs on into a plot, down to a height each. */
    void guides(Plot plot, ToDoubleFunction<Flag> foot) {
        for (Pole pole : poles) {
            double y = foot.applyAsDouble(pole.flag());
            plot.svg().line(Style.GUIDE, pole.x(), plot.area().top(), pole.x(), y);
        }
    }
}
