package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import trestle.flight.CurvePoint;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceTask;
import trestle.flight.SpeedPoint;
import trestle.units.Length;

/** Power, endurance and range over airspeed. */
public final class EnduranceFigure {
    private static final String TITLE = "Endurance and range over airspeed";

    /** The axis begins this share of the stall speed, so that the stall is seen. */
    private static final double BELOW_STALL = 0.85;

    private static final int TICKS_UP = 4;
    private static final int TICKS_ALONG = 7;

    private final EnduranceTask task;
    private final EnduranceResult result;
    private final Clock clock;

    private EnduranceFigure(EnduranceTask task, EnduranceResult result) {
        this.task = task;
        this.result = result;
        this.clock = Clock.forTimesUpTo(result.curve().stream()
                .mapToDouble(CurvePoint::enduranceS)
                .max()
                .orElse(0));
    }

    /**
     * Draws what a flight takes and gives.
     *
     * @param task the question
     * @param result its answer
     * @param theme colours
     * @return an SVG document
     */
    public static String of(EnduranceTask task, EnduranceResult result, Theme theme) {
        return new EnduranceFigure(task, result).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), result.judgement().findings());
        Axis x = airspeeds();
        Panels.draw(page, x, "Airspeed, m/s", flags(), panels());
        return page.finished(theme, TITLE + ". " + summary());
    }

    private Axis airspeeds() {
        double from = BELOW_STALL * result.stallSpeedMPerS();
        double to = 1.3 * result.leastRecommendedAirspeedMPerS();
        for (CurvePoint point : result.curve()) {
            to = Math.max(to, point.airspeedMPerS());
        }
        return Axis.between(from, to, TICKS_ALONG);
    }

    private List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        flags.add(new Flag(result.stallSpeedMPerS(), Style.LIMIT_TEXT, "stall " + speed(result.stallSpeedMPerS())));
        result.bestEndurance().ifPresent(p -> flags.add(flag(p, "longest", Style.SECOND_FILL)));
        result.bestRange().ifPresent(p -> flags.add(flag(p, "furthest", Style.THIRD_FILL)));
        result.atAirspeed().ifPresent(p -> flags.add(flag(p, "asked", Style.INK)));
        return flags;
    }

    private static Flag flag(SpeedPoint point, String what, Style style) {
        return new Flag(point.airspeedMPerS(), style, what + " " + speed(point.airspeedMPerS()));
    }

    private List<Panel> panels() {
        return List.of(
                panel(
                        "Pack power, W",
                        List.of(
                                KeyEntry.band(Style.LIMIT_BAND, "stalled"),
                                KeyEntry.band(Style.ATTENTION_BAND, "under 1.2 of the stall")),
                        CurvePoint::powerW,
                        SpeedPoint::powerW),
                panel(
                        "Endurance, " + clock.unit(),
                        List.of(),
                        point -> clock.count(point.enduranceS()),
                        point -> clock.count(point.enduranceS())),
                panel(
                        "Range over the ground, km",
                        List.of(),
                        point -> Length.kmFromM(point.groundRangeM()),
                        point -> Length.kmFromM(point.groundRangeM())));
    }

    private Panel panel(
            String heading,
            List<KeyEntry> keys,
            ToDoubleFunction<CurvePoint> value,
            ToDoubleFunction<SpeedPoint> markValue) {
        double greatest = result.curve().stream().mapToDouble(value).max().orElse(0);
        return new Panel(heading, keys, Panel.TALL, Axis.fromZero(greatest, TICKS_UP), plot -> {
            double stall = result.stallSpeedMPerS();
            plot.bandUp(Style.LIMIT_BAND, 0, stall);
            plot.bandUp(Style.ATTENTION_BAND, stall, result.leastRecommendedAirspeedMPerS());
            if (result.curve().isEmpty()) {
                plot.message("no airspeed can be flown");
                return;
            }
            plot.curve(
                    Style.FIRST_LINE,
                    result.curve().stream()
                            .map(p -> new Point(p.airspeedMPerS(), value.applyAsDouble(p)))
                            .toList());
            mark(plot, result.atAirspeed(), Style.INK, markValue);
            mark(plot, result.bestEndurance(), Style.SECOND_FILL, markValue);
            mark(plot, result.bestRange(), Style.THIRD_FILL, markValue);
        });
    }

    private static void mark(Plot plot, Optional<SpeedPoint> point, Style style, ToDoubleFunction<SpeedPoint> value) {
        point.ifPresent(p -> plot.dot(style, p.airspeedMPerS(), value.applyAsDouble(p)));
    }

    private String summary() {
        StringBuilder summary = new StringBuilder();
        result.bestEndurance()
                .ifPresent(p -> summary.append("Longest ")
                        .append(Words.time(p.enduranceS()))
                        .append(" at ")
                        .append(speed(p.airspeedMPerS()))
                        .append(" m/s. "));
        result.bestRange()
                .ifPresent(p -> summary.append("Furthest ")
                        .append(Numbers.significant(kmOf(p), 3))
                        .append(" km at ")
                        .append(speed(p.airspeedMPerS()))
                        .append(" m/s. "));
        if (task.headwindMPerS() != 0) {
            summary.append(task.headwindMPerS() > 0 ? "Headwind " : "Tailwind ")
                    .append(Numbers.significant(Math.abs(task.headwindMPerS()), 2))
                    .append(" m/s. ");
        }
        return summary.append("Reserve ")
                .append(Numbers.significant(100 * task.reserveFraction(), 2))
                .append(" % kept.")
                .toString();
    }

    private static double kmOf(SpeedPoint point) {
        return Length.kmFromM(point.groundRangeM());
    }

    private static String speed(double airspeedMPerS) {
        return Numbers.fixed(airspeedMPerS, 1);
    }
}
