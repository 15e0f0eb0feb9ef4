package trestle.endpoint.buildreview;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trestle.endpoint.launch.LaunchStallEndpoint;
import trestle.figure.BalanceFigure;
import trestle.figure.CompassFigure;
import trestle.figure.EnduranceFigure;
import trestle.figure.PackFigure;
import trestle.figure.PropulsionFigure;
import trestle.figure.RailFigure;
import trestle.figure.Theme;
import trestle.figure.WireFigure;
import trestle.review.Review;
import trestle.review.ReviewTasks;

/** The pictures of a reviewed aircraft, each by the place of its part in the answer. */
public final class ReviewParts {
    private static final Set<String> NAMES = Set.of(
            "/mass_balance",
            "/pack_energy",
            "/propulsion_match",
            "/endurance",
            "/rail_budget",
            "/launch_stall",
            "/compass_clearance");

    /** One run of wire. */
    private static final Pattern RUN = Pattern.compile("/wire_sizing/(0|[1-9][0-9]{0,8})");

    private ReviewParts() {}

    static boolean has(String pointer) {
        return NAMES.contains(pointer) || RUN.matcher(pointer).matches();
    }

    static Optional<String> figure(Review review, String pointer, Theme theme) {
        Matcher run = RUN.matcher(pointer);
        return run.matches()
                ? review.runs().stream()
                        .skip(Integer.parseInt(run.group(1)))
                        .findFirst()
                        .map(r -> WireFigure.of(r.task(), r.sizing(), theme))
                : named(review, pointer, theme);
    }

    private static Optional<String> named(Review review, String pointer, Theme theme) {
        ReviewTasks tasks = review.tasks();
        return switch (pointer) {
            case "/mass_balance" -> Optional.of(BalanceFigure.of(tasks.balance(), review.balance(), theme));
            case "/pack_energy" -> Optional.of(PackFigure.of(tasks.pack(), review.pack(), theme));
            case "/endurance" -> Optional.of(EnduranceFigure.of(tasks.endurance(), review.endurance(), theme));
            case "/propulsion_match" ->
                review.propulsion().map(drive -> PropulsionFigure.of(drive.task(), drive.match(), theme));
            case "/rail_budget" ->
                tasks.rails().flatMap(task -> review.rails().map(r -> RailFigure.of(task, r, theme)));
            case "/launch_stall" ->
                tasks.launch().flatMap(task -> review.launch().map(r -> LaunchStallEndpoint.figure(task, r, theme)));
            case "/compass_clearance" -> review.compass().map(c -> CompassFigure.of(c.task(), c.clearance(), theme));
            default -> Optional.empty();
        };
    }
}
