package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trestle.telemetry.Channel;
import trestle.telemetry.FlightLog;
import trestle.telemetry.FlightReview;
import trestle.telemetry.Phase;
import trestle.telemetry.PhaseKind;
import trestle.telemetry.PowerFit;
import trestle.telemetry.ReviewTask;
import trestle.telemetry.SteadyStretch;
import trestle.telemetry.Telemetry;
import trestle.units.Energy;
import trestle.units.Time;

/** A flight over time with its phases, and the power that it took over airspeed, with the fit and its deviation. */
public final class FlightReviewFigure {
    private static final String TITLE = "What the flight took";
    private static final int CURVE_POINTS = 40;

    /** Points of a curve over time: more than a figure of this width can show. */
    private static final int MOST_POINTS = 300;

    private static final int TICKS_UP = 4;
    private static final int TICKS_ALONG = 6;

    /** How far beyond the airspeeds flown the fit is drawn. */
    private static final double BEYOND = 0.2;

    private final ReviewTask task;
    private final FlightReview review;

    private FlightReviewFigure(ReviewTask task, FlightReview review) {
        this.task = task;
        this.review = review;
    }

    /**
     * Draws a review.
     *
     * @param task what was asked
     * @param review what came of it
     * @param theme colours
     * @return an SVG document
     */
    public static String of(ReviewTask task, FlightReview review, Theme theme) {
        return new FlightReviewFigure(task, review).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), review.judgement().findings());
        review.log().ifPresent(log -> overTime(page, log));
        overAirspeed(page);
        return page.finished(theme, TITLE + ". " + summary());
    }

    private void overTime(Page page, FlightLog log) {
        Telemetry rows = log.screened().rows();
        double from = rows.timeS(0);
        Clock clock = Clock.forTimesUpTo(log.screened().durationS());
        Axis x = Axis.between(0, clock.count(log.screened().durationS()), TICKS_ALONG);
        List<Panel> panels = new ArrayList<>();
        panels.add(time("Pack voltage, V", keys(), Channel.VOLTAGE, log, clock, from));
        panels.add(time("Pack current, A", List.of(), Channel.CURRENT, log, clock, from));
        if (rows.has(Channel.ALTITUDE)) {
            panels.add(time("Height, m", List.of(), Channel.ALTITUDE, log, clock, from));
        }
        Panels.draw(page, x, "Time since the first row, " + clock.unit(), List.of(), panels);
    }

    private static List<KeyEntry> keys() {
        return List.of(KeyEntry.band(Style.GOOD_BAND, "climb"), KeyEntry.band(Style.ATTENTION_BAND, "turn"));
    }

    private static Panel time(
            String heading, List<KeyEntry> keys, Channel channel, FlightLog log, Clock clock, double from) {
        Telemetry rows = log.screened().rows();
        int stride = 1 + rows.count() / MOST_POINTS;
        List<Point> points = IntStream.range(0, rows.count())
                .filter(i -> i % stride == 0)
                .mapToObj(i -> new Point(clock.count(rows.timeS(i) - from), rows.at(channel, i)))
                .toList();
        double least = points.stream().mapToDouble(Point::y).min().orElse(0);
        double greatest = points.stream().mapToDouble(Point::y).max().orElse(1);
        return new Panel(heading, keys, Panel.LOW, Axis.around(least, greatest, TICKS_UP), plot -> {
            for (Phase phase : log.phases()) {
                band(phase.kind())
                        .ifPresent(style -> plot.bandUp(
                                style, clock.count(phase.startS() - from), clock.count(phase.endS() - from)));
            }
            plot.curve(Style.FIRST_LINE, points);
        });
    }

    private static Optional<Style> band(PhaseKind kind) {
        return switch (kind) {
            case CLIMB -> Optional.of(Style.GOOD_BAND);
            case TURN -> Optional.of(Style.ATTENTION_BAND);
            default -> Optional.empty();
        };
    }

    private void overAirspeed(Page page) {
        List<SteadyStretch> stretches = review.log().map(FlightLog::stretches).orElse(List.of());
        Reach speeds = new Reach();
        stretches.forEach(s -> speeds.to(s.airspeedMPerS()));
        review.steadyPower().ifPresent(p -> speeds.to(p.airspeedMPerS()));
        if (stretches.isEmpty() && review.steadyPower().isEmpty()) {
            speeds.to(1);
        }
        Axis x = Axis.between((1 - BEYOND) * speeds.least(), (1 + BEYOND) * speeds.greatest(), TICKS_ALONG);
        double greatest =
                stretches.stream().mapToDouble(SteadyStretch::powerW).max().orElse(0);
        greatest = Math.max(
                greatest,
                review.steadyPower().map(p -> p.powerW() + p.deviationW()).orElse(0.0));
        List<Point> middle = curve(x, 0);
        List<Point> above = curve(x, 1);
        greatest =
                Math.max(greatest, middle.stream().mapToDouble(Point::y).max().orElse(0));
        Panel panel = new Panel(
                "Pack power in steady flight, W",
                powerKeys(stretches),
                Panel.TALL,
                Axis.fromZero(greatest, TICKS_UP),
                plot -> {
                    if (stretches.isEmpty() && review.steadyPower().isEmpty()) {
                        plot.message("the flight shows no steady power");
                    }
                    for (int i = 0; i < stretches.size(); i += 1 + stretches.size() / MOST_POINTS) {
                        plot.dot(
                                Style.PALE,
                                stretches.get(i).airspeedMPerS(),
                                stretches.get(i).powerW());
                    }
                    plot.curve(Style.SECOND_DASHED, above);
                    plot.curve(Style.SECOND_DASHED, curve(x, -1));
                    plot.curve(Style.FIRST_LINE, middle);
                    review.steadyPower().ifPresent(p -> plot.dot(Style.THIRD_FILL, p.airspeedMPerS(), p.powerW()));
                });
        Panels.draw(page, x, "Airspeed, m/s", List.of(), List.of(panel));
    }

    private List<KeyEntry> powerKeys(List<SteadyStretch> stretches) {
        List<KeyEntry> keys = new ArrayList<>();
        if (!stretches.isEmpty()) {
            keys.add(KeyEntry.dot(Style.PALE, "five seconds"));
        }
        if (review.steadyPower().isPresent()) {
            keys.add(KeyEntry.dot(Style.THIRD_FILL, "mean"));
        }
        if (review.calibration().isPresent()) {
            keys.add(KeyEntry.line(Style.FIRST_LINE, "fit"));
            keys.add(KeyEntry.line(Style.SECOND_DASHED, "its deviation"));
        }
        return keys;
    }

    private List<Point> curve(Axis x, double deviations) {
        if (review.calibration().isEmpty()) {
            return List.of();
        }
        PowerFit fit = review.calibration().get();
        double density = task.flown().densityKgPerM3();
        return IntStream.rangeClosed(0, CURVE_POINTS)
                .mapToDouble(i -> x.from() + (x.to() - x.from()) * i / CURVE_POINTS)
                .mapToObj(v ->
                        new Point(v, Math.max(0, fit.powerW(v, density) + deviations * fit.deviationW(v, density))))
                .toList();
    }

    private String summary() {
        StringBuilder text = new StringBuilder(Time.said(review.sums().durationS()));
        review.sums()
                .energyJ()
                .ifPresent(e -> text.append(", ")
                        .append(Numbers.significant(Energy.whFromJ(e), 3))
                        .append(" Wh"));
        review.sums()
                .meanPowerW()
                .ifPresent(
                        p -> text.append(", ").append(Numbers.significant(p, 3)).append(" W in the mean"));
        return text.append(".").toString();
    }
}
