package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import trestle.launch.LaunchAndClimbResult;
import trestle.launch.LaunchAndClimbTask;
import trestle.launch.LaunchFlight;
import trestle.launch.LaunchOutcome;

/** Height and airspeed of a launch over time, against the stall and the climb speed. */
public final class LaunchFigure {
    private static final String TITLE = "Launch";
    private static final int TICKS_UP = 4;
    private static final int TICKS_ALONG = 7;
    private static final double SHORTEST_S = 1;

    private final LaunchAndClimbTask task;
    private final LaunchAndClimbResult result;
    private final List<LaunchMoment> path;

    private LaunchFigure(LaunchAndClimbTask task, LaunchAndClimbResult result, List<LaunchMoment> path) {
        this.task = task;
        this.result = result;
        this.path = path;
    }

    /**
     * Draws a launch.
     *
     * @param task the question
     * @param result its answer
     * @param path the aircraft from release on, in order of time; with fewer than two moments, the
     *     speeds that the answer itself tells are drawn
     * @param theme colours
     * @return an SVG document
     */
    public static String of(
            LaunchAndClimbTask task, LaunchAndClimbResult result, List<LaunchMoment> path, Theme theme) {
        return new LaunchFigure(task, result, List.copyOf(path)).drawn(theme);
    }

    private String drawn(Theme theme) {
        Page page = new Page(TITLE, summary(), result.judgement().findings());
        if (path.size() > 1) {
            Axis x = Axis.between(0, Math.max(SHORTEST_S, lastS()), TICKS_ALONG);
            Panels.draw(page, x, "Time from release, s", flags(), List.of(height(), airspeed()));
        } else {
            speeds(page);
        }
        return page.finished(theme, TITLE + ". " + summary());
    }

    private double lastS() {
        return path.get(path.size() - 1).timeS();
    }

    private List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        result.launch()
                .timeToClimbSpeedS()
                .ifPresent(at -> flags.add(new Flag(at, Style.THIRD_FILL, "climbs " + seconds(at))));
        if (task.motorDelayS() > 0 && task.motorDelayS() <= lastS()) {
            flags.add(new Flag(task.motorDelayS(), Style.INK, "motor " + seconds(task.motorDelayS())));
        }
        return flags;
    }

    private Panel height() {
        double releaseM = task.launch().releaseHeightM();
        return new Panel(
                "Height above the ground, m",
                List.of(),
                Panel.TALL,
                Axis.fromZero(Math.max(releaseM, most(LaunchMoment::heightM)), TICKS_UP),
                plot -> {
                    curve(plot, Style.FIRST_LINE, LaunchMoment::heightM);
                    plot.dot(Style.FIRST_FILL, 0, releaseM);
                });
    }

    private Panel airspeed() {
        double stall = result.stallSpeedMPerS();
        double climbing = result.climbSpeedMPerS();
        double release = result.launch().releaseAirspeedInLullMPerS();
        double greatest = Math.max(climbing, most(LaunchMoment::airspeedMPerS));
        return new Panel(
                "Airspeed, m/s", keys(), Panel.TALL, Axis.fromZero(Math.max(release, greatest), TICKS_UP), plot -> {
                    plot.bandAcross(Style.LIMIT_BAND, 0, stall);
                    plot.bandAcross(Style.ATTENTION_BAND, stall, climbing);
                    plot.across(Style.LIMIT_LINE, stall);
                    curve(plot, Style.SECOND_LINE, LaunchMoment::airspeedMPerS);
                    plot.dot(Style.SECOND_FILL, 0, release);
                });
    }

    private static List<KeyEntry> keys() {
        return List.of(
                KeyEntry.band(Style.LIMIT_BAND, "stalled"), KeyEntry.band(Style.ATTENTION_BAND, "under climb speed"));
    }

    /** The speeds alone, where there is no path to draw. */
    private void speeds(Page page) {
        double stall = result.stallSpeedMPerS();
        double climbing = result.climbSpeedMPerS();
        double reached = result.launch().releaseAirspeedInLullMPerS();
        boolean left = result.launch().outcome() != LaunchOutcome.NEVER_RELEASED;
        List<Flag> flags = List.of(
                new Flag(reached, Style.SECOND_FILL, (left ? "at release " : "fastest ") + speed(reached)),
                new Flag(stall, Style.LIMIT_TEXT, "stall " + speed(stall)),
                new Flag(climbing, Style.THIRD_FILL, "climb " + speed(climbing)));
        Panel panel = new Panel("Airspeed, m/s", keys(), Panel.LOW / 2, new Axis(0, 1, List.of(), false), plot -> {
            plot.bandUp(Style.LIMIT_BAND, 0, stall);
            plot.bandUp(Style.ATTENTION_BAND, stall, climbing);
            plot.dot(Style.SECOND_FILL, reached, 0.5);
        });
        Axis x = Axis.fromZero(1.1 * Math.max(climbing, reached), TICKS_ALONG);
        Panels.draw(page, x, "Airspeed, m/s", flags, List.of(panel));
    }

    private void curve(Plot plot, Style style, ToDoubleFunction<LaunchMoment> value) {
        plot.curve(
                style,
                path.stream()
                        .map(m -> new Point(m.timeS(), value.applyAsDouble(m)))
                        .toList());
    }

    private double most(ToDoubleFunction<LaunchMoment> value) {
        return path.stream().mapToDouble(value).max().orElse(0);
    }

    private String summary() {
        LaunchFlight launch = result.launch();
        String lost = Numbers.fixed(launch.heightLostM(), 1) + " m lost. ";
        String release = "Released at "
                + speed(launch.releaseAirspeedInLullMPerS())
                + " m/s, "
                + Numbers.whole(100 * Math.abs(launch.marginFraction()))
                + (launch.marginFraction() < 0 ? " % under" : " % over")
                + " the stall. ";
        String speeds =
                " Stall " + speed(result.stallSpeedMPerS()) + ", climb " + speed(result.climbSpeedMPerS()) + " m/s.";
        return outcome(launch, release, lost) + speeds;
    }

    private static String outcome(LaunchFlight launch, String release, String lost) {
        return switch (launch.outcome()) {
            case CLIMB_SPEED_REACHED ->
                release
                        + lost
                        + (launch.timeToClimbSpeedS().orElse(0) > 0
                                ? "Climb speed after "
                                        + seconds(launch.timeToClimbSpeedS().orElse(0))
                                : "At climb speed at once")
                        + ".";
            case GROUND -> release + "It ends on the ground.";
            case TOO_SLOW -> release + lost + "Too slow to climb.";
            case NEVER_RELEASED ->
                "It never leaves: " + speed(launch.releaseAirspeedInLullMPerS()) + " m/s is the fastest it gets.";
        };
    }

    private static String seconds(double timeS) {
        return Numbers.fixed(timeS, 1) + " s";
    }

    private static String speed(double airspeedMPerS) {
        return Numbers.fixed(airspeedMPerS, 1);
    }
}
