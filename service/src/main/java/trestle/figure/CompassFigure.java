package trestle.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import trestle.magnetics.Clearance;
import trestle.magnetics.CompassTask;
import trestle.magnetics.Disturbance;
import trestle.magnetics.LeadRun;
import trestle.units.FluxDensity;
import trestle.units.Length;

/** The field of each run over its distance from the compass, against the field allowed. */
public final class CompassFigure {
    private static final String TITLE = "Field of the leads at the compass";
    private static final double HEIGHT = 210;
    private static final int CURVE_POINTS = 48;

    /** Signs that can be told apart. */
    private static final List<Style> LINES = List.of(
            Style.FIRST_LINE,
            Style.SECOND_LINE,
            Style.THIRD_LINE,
            Style.FIRST_DASHED,
            Style.SECOND_DASHED,
            Style.THIRD_DASHED);

    private static final List<Style> DOTS = List.of(Style.FIRST_FILL, Style.SECOND_FILL, Style.THIRD_FILL);

    private static final double WIDEST_NAME = 170;
    private static final double WIDEST_FLAG = 100;
    private static final double BESIDE = 2.5;
    private static final double NEAREST_IN_SEPARATIONS = 0.6;

    private final CompassTask task;
    private final Clearance result;

    /** Runs that are drawn, the strongest at the compass first. */
    private final List<LeadRun> runs;

    private CompassFigure(CompassTask task, Clearance result) {
        this.task = task;
        this.result = result;
        this.runs = task.runs().stream()
                .filter(run -> run.currentA() > 0)
                .sorted(Comparator.comparingDouble(run -> -run.fieldT()))
                .limit(LINES.size())
                .toList();
    }

    /**
     * Draws what leads do to the compass.
     *
     * @param task the leads
     * @param result their fields
     * @param theme colours
     * @return an SVG document
     */
    public static String of(CompassTask task, Clearance result, Theme theme) {
        return new CompassFigure(task, result).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), result.judgement().findings());
        Axis x = distances();
        Panel panel = new Panel("Flux density, µT", keys(), HEIGHT, fields(x), plot -> draw(plot, x));
        Panels.draw(page, x, "Distance from the leads, mm", flags(), List.of(panel));
        if (task.runs().size() > runs.size()) {
            page.note(Style.MUTED, "Not drawn: " + (task.runs().size() - runs.size()) + " weaker or without current.");
        }
        return page.finished(theme, TITLE + ". " + summary());
    }

    private Axis distances() {
        Reach reach = new Reach();
        for (LeadRun run : runs) {
            reach.to(Length.mmFromM(run.distanceM()));
        }
        result.cruise().runs().stream()
                .filter(run -> run.leastDistanceM() > 0)
                .forEach(run -> reach.to(Length.mmFromM(run.leastDistanceM())));
        if (runs.isEmpty()) {
            reach.to(10).to(1000);
        }
        return Axis.logarithmic(reach.least() / BESIDE, reach.greatest() * BESIDE);
    }

    private Axis fields(Axis x) {
        double allowed = FluxDensity.utFromT(task.allowedFieldT());
        Reach reach = new Reach().to(allowed);
        for (LeadRun run : runs) {
            reach.to(FluxDensity.utFromT(run.fieldT()));
            reach.to(FluxDensity.utFromT(run.atFullThrottle().fieldT()));
            reach.to(fieldUt(run, x.to()));
        }
        return Axis.logarithmic(Math.max(reach.least() / BESIDE, allowed / 1000), reach.greatest() * 4);
    }

    private void draw(Plot plot, Axis x) {
        double allowed = FluxDensity.utFromT(task.allowedFieldT());
        plot.bandAcross(Style.LIMIT_BAND, allowed, Double.MAX_VALUE);
        plot.across(Style.LIMIT_LINE, allowed);
        if (runs.isEmpty()) {
            plot.message("no run carries a current");
        }
        for (int i = 0; i < runs.size(); i++) {
            plot.curve(LINES.get(i), curve(runs.get(i), x));
        }
        for (int i = 0; i < runs.size(); i++) {
            LeadRun run = runs.get(i);
            if (run.peakCurrentA().isPresent()) {
                double peakUt = FluxDensity.utFromT(run.atFullThrottle().fieldT());
                plot.ring(DOTS.get(i % DOTS.size()), Length.mmFromM(run.distanceM()), peakUt);
            }
            plot.dot(DOTS.get(i % DOTS.size()), Length.mmFromM(run.distanceM()), FluxDensity.utFromT(run.fieldT()));
        }
    }

    private static List<Point> curve(LeadRun run, Axis x) {
        double nearestMm = Length.mmFromM(NEAREST_IN_SEPARATIONS * run.effectiveSeparationM());
        double ratio = x.to() / x.from();
        return IntStream.rangeClosed(0, CURVE_POINTS)
                .mapToDouble(i -> x.from() * Math.pow(ratio, (double) i / CURVE_POINTS))
                .map(mm -> Math.min(x.to(), mm))
                .filter(mm -> mm > nearestMm)
                .mapToObj(mm -> new Point(mm, fieldUt(run, mm)))
                .toList();
    }

    private static double fieldUt(LeadRun run, double distanceMm) {
        double distanceM = Math.max(Length.mFromMm(distanceMm), NEAREST_IN_SEPARATIONS * run.effectiveSeparationM());
        return FluxDensity.utFromT(run.fieldT(distanceM));
    }

    private List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            double mm = Length.mmFromM(runs.get(i).distanceM());
            String name = Words.name(runs.get(i).name(), WIDEST_FLAG);
            flags.add(new Flag(mm, DOTS.get(i % DOTS.size()), name + " " + Numbers.whole(mm)));
        }
        return flags;
    }

    private List<KeyEntry> keys() {
        List<KeyEntry> keys = new ArrayList<>();
        keys.add(KeyEntry.band(
                Style.LIMIT_BAND,
                "over the allowed " + Numbers.significant(FluxDensity.utFromT(task.allowedFieldT()), 2)));
        if (task.knowsFullThrottle()) {
            keys.add(new KeyEntry(KeyEntry.Sign.RING, Style.FIRST_FILL, "at full throttle"));
        }
        for (int i = 0; i < runs.size(); i++) {
            String twisted = runs.get(i).twisted() ? ", twisted" : "";
            keys.add(KeyEntry.line(LINES.get(i), Words.name(runs.get(i).name(), WIDEST_NAME) + twisted));
        }
        return keys;
    }

    private String summary() {
        return "Heading error in cruise "
                + degrees(result.cruise().worst())
                + " at worst, "
                + degrees(result.cruise().likely())
                + " likely"
                + result.fullThrottle()
                        .map(full -> ", at full throttle " + degrees(full.worst()) + " and " + degrees(full.likely()))
                        .orElse("")
                + "; "
                + degrees(task.allowedHeadingErrorRad())
                + "° allowed.";
    }

    private static String degrees(Disturbance disturbance) {
        return disturbance.headingErrorRad().isPresent()
                ? degrees(disturbance.headingErrorRad().getAsDouble()) + "°"
                : "no heading";
    }

    private static String degrees(double angleRad) {
        return Numbers.significant(Math.toDegrees(angleRad), 2);
    }
}
