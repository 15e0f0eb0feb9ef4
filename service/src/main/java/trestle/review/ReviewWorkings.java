package trestle.review;

import java.util.ArrayList;
import java.util.List;
import trestle.battery.PackWorkings;
import trestle.finding.Working;
import trestle.flight.EnduranceWorkings;
import trestle.launch.LaunchWorkings;
import trestle.magnetics.CompassWorkings;
import trestle.massbalance.MassBalanceWorkings;
import trestle.propulsion.PropulsionWorkings;
import trestle.rails.RailWorkings;
import trestle.wiring.WireWorkings;

/** How the numbers of a review were reached, part by part, each with the name of its part. */
public final class ReviewWorkings {
    private final List<Working> lines = new ArrayList<>();

    private ReviewWorkings() {}

    /**
     * The workings of a review.
     *
     * @param review what came of it
     * @return lines in order of computation; symbols are each part's own
     */
    public static List<Working> of(Review review) {
        ReviewWorkings all = new ReviewWorkings();
        ReviewTasks tasks = review.tasks();
        tasks.rails()
                .ifPresent(t ->
                        all.add("rail-budget", RailWorkings.of(t, review.rails().get())));
        all.add("mass-balance", MassBalanceWorkings.of(tasks.balance(), review.balance()));
        review.propulsion().ifPresent(d -> all.add("propulsion-match", PropulsionWorkings.of(d.task(), d.match())));
        all.add("endurance", EnduranceWorkings.of(tasks.endurance(), review.endurance()));
        for (RunReview run : review.runs()) {
            String part = "wire-sizing, " + run.task().run().name();
            all.add(part, WireWorkings.of(run.task(), run.sizing()));
        }
        all.add("pack-energy", PackWorkings.of(tasks.pack(), review.pack()));
        tasks.launch()
                .ifPresent(t -> all.add(
                        "launch-stall", LaunchWorkings.of(t, review.launch().get())));
        review.compass().ifPresent(c -> all.add("compass-clearance", CompassWorkings.of(c.task(), c.clearance())));
        return List.copyOf(all.lines);
    }

    private void add(String part, List<Working> workings) {
        workings.forEach(line -> lines.add(line.about(part)));
    }
}
