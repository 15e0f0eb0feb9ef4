package trestle.figure;

import java.util.ArrayList;
import java.util.List;

/** The area of a panel: draws by values, on two axes. */
final class Plot {
    private static final double MARK = 4;

    private final Svg svg;
    private final Box area;
    private final Axis x;
    private final Axis y;

    Plot(Svg svg, Box area, Axis x, Axis y) {
        this.svg = svg;
        this.area = area;
        this.x = x;
        this.y = y;
    }

    Svg svg() {
        return svg;
    }

    Box area() {
        return area;
    }

    double x(double value) {
        return area.left() + area.width() * x.fraction(value);
    }

    double y(double value) {
        return area.bottom() - area.height() * y.fraction(value);
    }

    void grid() {
        for (Tick tick : x.ticks()) {
            svg.line(Style.GRID, x(tick.at()), area.top(), x(tick.at()), area.bottom());
        }
        for (Tick tick : y.ticks()) {
            svg.line(Style.GRID, area.left(), y(tick.at()), area.right(), y(tick.at()));
        }
        svg.line(Style.AXIS, area.left(), area.bottom(), area.right(), area.bottom());
    }

    /** Shades what lies between two values of the upright axis. */
    void bandAcross(Style style, double from, double to) {
        double top = y(Math.max(from, to));
        double bottom = y(Math.min(from, to));
        if (bottom > top) {
            svg.rect(style, new Box(area.left(), top, area.width(), bottom - top));
        }
    }

    /** Shades what lies between two values of the level axis. */
    void bandUp(Style style, double from, double to) {
        double left = x(Math.min(from, to));
        double right = x(Math.max(from, to));
        if (right > left) {
            svg.rect(style, new Box(left, area.top(), right - left, area.height()));
        }
    }

    /** A level line right across, where the axis has its value. */
    void across(Style style, double value) {
        if (y.holds(value)) {
            svg.line(style, area.left(), y(value), area.right(), y(value));
        }
    }

    /** A curve through pairs of values, cut off at the ends of the upright axis. */
    void curve(Style style, List<Point> values) {
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            Point here = values.get(i);
            if (i > 0 && y.holds(values.get(i - 1).y()) != y.holds(here.y())) {
                places.add(crossing(values.get(i - 1), here));
            }
            if (y.holds(here.y())) {
                places.add(new Point(x(here.x()), y(here.y())));
            } else {
                stroke(style, places);
                places.clear();
            }
        }
        stroke(style, places);
    }

    /** Where a curve leaves the area or comes in, between one value inside and one outside. */
    private Point crossing(Point from, Point to) {
        double fromShare = y.share(from.y());
        double toShare = y.share(to.y());
        double edge = Math.max(fromShare, toShare) > 1 ? 1 : 0;
        double way = (edge - fromShare) / (toShare - fromShare);
        double atX = x(from.x()) + way * (x(to.x()) - x(from.x()));
        return new Point(atX, area.bottom() - edge * area.height());
    }

    private void stroke(Style style, List<Point> places) {
        if (places.size() > 1) {
            svg.polyline(style, places);
        }
    }

    /** A filled mark, set off from the curve under it. */
    void dot(Style style, double xValue, double yValue) {
        if (x.holds(xValue) && y.holds(yValue)) {
            svg.circle(Style.PAPER, x(xValue), y(yValue), MARK + 1.5);
            svg.circle(style, x(xValue), y(yValue), MARK);
        }
    }

    /** A mark for what does not do, known from others without its colour. */
    void cross(Style style, double xValue, double yValue) {
        if (x.holds(xValue) && y.holds(yValue)) {
            cross(svg, style, x(xValue), y(yValue));
        }
    }

    /** The same at a place of the page. */
    static void cross(Svg svg, Style style, double atX, double atY) {
        double arm = 0.9 * MARK;
        svg.line(style, atX - arm, atY - arm, atX + arm, atY + arm);
        svg.line(style, atX - arm, atY + arm, atX + arm, atY - arm);
    }

    /** A hollow mark. */
    void ring(Style style, double xValue, double yValue) {
        if (x.holds(xValue) && y.holds(yValue)) {
            svg.circle(style, x(xValue), y(yValue), MARK);
            svg.circle(Style.PAPER, x(xValue), y(yValue), MARK - 1.8);
        }
    }

    /** Whether a value has a place on the upright axis. */
    boolean holds(double yValue) {
        return y.holds(yValue);
    }

    /** A mark for a value above the axis: an arrow head at its end. */
    void offScale(Style style, double xValue) {
        double tip = area.top() + 2;
        svg.polygon(
                style,
                List.of(
                        new Point(x(xValue), tip),
                        new Point(x(xValue) + MARK, tip + 2 * MARK),
                        new Point(x(xValue) - MARK, tip + 2 * MARK)));
    }

    /** A sentence in place of curves. */
    void message(String text) {
        String shortened = TextFit.shortened(text, Font.TEXT, area.width() - 2 * MARK);
        svg.text(new Label(
                area.left() + area.width() / 2,
                area.middle() + Font.TEXT.size() / 3,
                Anchor.MIDDLE,
                Font.TEXT,
                Style.MUTED,
                shortened));
    }
}
