package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import trestle.structure.JointLoad;
import trestle.structure.LoadsResult;
import trestle.structure.StationLoad;
import trestle.structure.Stress;

/** Bending along the span at the design load, and how much of what the spar may bear it takes. */
public final class LoadsFigure {
    private static final String TITLE = "Loads along the wing";
    private static final int TICKS_UP = 4;
    private static final int TICKS_ALONG = 7;
    private static final int MOST_FLAGS = 6;

    /** Beyond this share a spar is lost anyhow. */
    private static final double MOST_PERCENT = 300;

    private LoadsFigure() {}

    /**
     * Draws loads.
     *
     * @param result the loads
     * @param theme colours
     * @return an SVG document
     */
    public static String of(LoadsResult result, Theme theme) {
        Page page = new Page(TITLE, summary(result), result.judgement().findings());
        List<StationLoad> stations = result.stations();
        double half = stations.get(stations.size() - 1).lateralM();
        List<Flag> flags = new ArrayList<>();
        for (JointLoad joint :
                result.joints().subList(0, Math.min(MOST_FLAGS, result.joints().size()))) {
            flags.add(new Flag(1000 * joint.lateralM(), Style.INK, PlainText.clean(joint.name())));
        }
        Panels.draw(
                page,
                Axis.between(0, 1000 * half, TICKS_ALONG),
                "Distance from the middle, mm",
                flags,
                List.of(
                        panel("Bending at the design load, N m", stations, StationLoad::bendingNm, Style.FIRST_LINE),
                        taken(stations)));
        return page.finished(theme, TITLE + ". " + summary(result));
    }

    private static Panel panel(
            String heading, List<StationLoad> stations, ToDoubleFunction<StationLoad> value, Style style) {
        double most = stations.stream().mapToDouble(value).max().orElse(1);
        double least = Math.min(0, stations.stream().mapToDouble(value).min().orElse(0));
        return new Panel(
                heading,
                List.of(),
                Panel.TALL,
                Axis.between(least, Math.max(1e-3, most), TICKS_UP),
                plot -> plot.curve(
                        style,
                        stations.stream()
                                .map(s -> new Point(1000 * s.lateralM(), value.applyAsDouble(s)))
                                .toList()));
    }

    private static Panel taken(List<StationLoad> stations) {
        List<Point> points = stations.stream()
                .filter(s -> s.stress().isPresent())
                .map(s -> new Point(1000 * s.lateralM(), percent(s.stress().get())))
                .toList();
        double most = points.stream().mapToDouble(Point::y).max().orElse(0);
        Axis up = Axis.fromZero(Math.max(120, 1.05 * most), TICKS_UP);
        return new Panel(
                "Of what the spar may bear, %",
                List.of(KeyEntry.band(Style.LIMIT_BAND, "over")), Panel.TALL, up, plot -> {
                    plot.bandAcross(Style.LIMIT_BAND, 100, up.to());
                    if (points.size() > 1) {
                        plot.curve(Style.SECOND_LINE, points);
                    }
                });
    }

    private static double percent(Stress stress) {
        return Math.min(MOST_PERCENT, 100 / stress.reserve());
    }

    private static String summary(LoadsResult result) {
        String weakest = result.weakest()
                .map(w -> "Weakest: " + PlainText.clean(w.part()) + ", reserve "
                        + Numbers.fixed(Math.min(99, w.reserve()), 2) + ". ")
                .orElse("A spar is missing. ");
        return weakest + "A full pull passes the limit above " + Numbers.fixed(result.manoeuvreMPerS(), 1) + " m/s.";
    }
}
