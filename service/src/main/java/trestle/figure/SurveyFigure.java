package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import trestle.survey.Line;
import trestle.survey.SurveyCoverage;
import trestle.survey.SurveyTask;
import trestle.units.Length;

/** The block from above with its lines, the wind, and how the flights share them. North is up. */
public final class SurveyFigure {
    private static final String TITLE = "Survey of the block";
    private static final double TALLEST = 380;
    private static final double ROOM = 0.06;
    private static final double ARROW = 46;
    private static final int TICKS = 5;

    private final SurveyTask task;
    private final SurveyCoverage found;

    private SurveyFigure(SurveyTask task, SurveyCoverage found) {
        this.task = task;
        this.found = found;
    }

    /**
     * Draws a survey.
     *
     * @param task the question
     * @param found the answer
     * @param theme colours
     * @return an SVG document
     */
    public static String of(SurveyTask task, SurveyCoverage found, Theme theme) {
        return new SurveyFigure(task, found).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), found.judgement().findings());
        Heading heading = new Heading(
                "North up, m from the middle",
                List.of(
                        KeyEntry.band(Style.PALE, "block"),
                        new KeyEntry(KeyEntry.Sign.LINE, Style.FIRST_LINE, "lines"),
                        new KeyEntry(KeyEntry.Sign.LINE, Style.GUIDE, "between")));
        heading.draw(page.svg(), page.y());
        page.advance(heading.height() + 6);
        Reach east = new Reach();
        Reach north = new Reach();
        task.block()
                .outline()
                .forEach(ring -> ring.forEach(corner -> {
                    east.to(corner[0]);
                    north.to(corner[1]);
                }));
        found.lines()
                .forEach(line -> List.of(line.fromM(), line.toM()).forEach(end -> {
                    east.to(end.get(0));
                    north.to(end.get(1));
                }));
        double wide = Math.max(1, (east.greatest() - east.least()) * (1 + 2 * ROOM));
        double tall = Math.max(1, (north.greatest() - north.least()) * (1 + 2 * ROOM));
        double scale = Math.min(Page.INNER_WIDTH / wide, TALLEST / tall);
        double middleX = (east.least() + east.greatest()) / 2;
        double middleY = (north.least() + north.greatest()) / 2;
        double height = tall * scale;
        Box area = new Box(Page.MARGIN, page.y(), Page.INNER_WIDTH, height);
        Map map = new Map(area, scale, middleX, middleY);
        List<List<double[]>> rings = task.block().outline();
        for (int i = 0; i < rings.size(); i++) {
            page.svg()
                    .polygon(
                            i == 0 ? Style.PALE : Style.PAPER,
                            rings.get(i).stream()
                                    .map(corner -> map.at(corner[0], corner[1]))
                                    .toList());
        }
        lines(page.svg(), map);
        wind(page.svg(), area);
        page.advance(height);
        Axis x = Axis.between(map.west(), map.east(), TICKS);
        Panels.level(
                page, x.ticks().stream().filter(tick -> map.holds(tick.at())).toList(), map::x, Style.MUTED);
        return page.finished(theme, TITLE + ". " + summary());
    }

    private void lines(Svg svg, Map map) {
        List<Line> lines = found.lines();
        List<Point> between = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Point from =
                    map.at(lines.get(i).fromM().get(0), lines.get(i).fromM().get(1));
            Point to = map.at(lines.get(i).toM().get(0), lines.get(i).toM().get(1));
            if (!between.isEmpty()) {
                svg.polyline(Style.GUIDE, List.of(between.get(0), from));
            }
            svg.polyline(Style.FIRST_LINE, List.of(from, to));
            between = List.of(to);
        }
    }

    /** An arrow that goes with the wind, in a corner. */
    private void wind(Svg svg, Box area) {
        double speed = task.wind().speedMPerS();
        if (speed == 0) {
            return;
        }
        double towards = task.wind().fromRad() + Math.PI;
        double x = area.right() - ARROW / 2 - 4;
        double y = area.top() + ARROW / 2 + 4;
        double dx = Math.sin(towards) * ARROW / 2;
        double dy = -Math.cos(towards) * ARROW / 2;
        svg.polyline(Style.INK_LINE, List.of(new Point(x - dx, y - dy), new Point(x + dx, y + dy)));
        svg.polygon(
                Style.INK,
                List.of(
                        new Point(x + dx, y + dy),
                        new Point(x + 0.55 * dx - 0.16 * dy, y + 0.55 * dy + 0.16 * dx),
                        new Point(x + 0.55 * dx + 0.16 * dy, y + 0.55 * dy - 0.16 * dx)));
    }

    /** Metres to places of the drawing. */
    private record Map(Box area, double scale, double middleX, double middleY) {
        double x(double east) {
            return area.left() + area.width() / 2 + (east - middleX) * scale;
        }

        Point at(double east, double north) {
            return new Point(x(east), area.top() + area.height() / 2 - (north - middleY) * scale);
        }

        double west() {
            return middleX - area.width() / 2 / scale;
        }

        double east() {
            return middleX + area.width() / 2 / scale;
        }

        boolean holds(double east) {
            return east > west() && east < east();
        }
    }

    private String summary() {
        String lines = found.lines().size() + " lines, " + found.photos() + " photos, "
                + Numbers.significant(Length.kmFromM(found.lengthM()), 3) + " km";
        String wind = task.wind().speedMPerS() > 0
                ? "; wind " + Numbers.significant(task.wind().speedMPerS(), 2) + " m/s from "
                        + Numbers.whole(Math.toDegrees(task.wind().fromRad())) + "°"
                : "";
        if (!found.flyable()) {
            return lines + wind + ": it cannot be flown.";
        }
        String flights = found.flights().isPresent()
                ? " in " + found.flights().get().size() + (found.flights().get().size() == 1 ? " flight" : " flights")
                : "";
        return lines + ", " + Words.time(found.lineS() + found.turnS()) + flights + wind + ".";
    }
}
