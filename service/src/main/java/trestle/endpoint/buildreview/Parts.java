package trestle.endpoint.buildreview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import trestle.battery.PackWorkings;
import trestle.endpoint.Premises;
import trestle.endpoint.compassclearance.CompassClearanceEndpoint;
import trestle.endpoint.endurance.EnduranceEndpoint;
import trestle.endpoint.launch.LaunchAndClimbEndpoint;
import trestle.endpoint.massbalance.MassBalanceEndpoint;
import trestle.endpoint.packenergy.PackEnergyEndpoint;
import trestle.endpoint.propulsionmatch.PropulsionMatchEndpoint;
import trestle.endpoint.railbudget.RailBudgetEndpoint;
import trestle.endpoint.wiresizing.WireSizingEndpoint;
import trestle.figure.BalanceFigure;
import trestle.figure.CompassFigure;
import trestle.figure.EnduranceFigure;
import trestle.figure.PackFigure;
import trestle.figure.PropulsionFigure;
import trestle.figure.RailFigure;
import trestle.figure.WireFigure;
import trestle.finding.Working;
import trestle.flight.EnduranceWorkings;
import trestle.launch.LaunchAndClimbTask;
import trestle.launch.LaunchWorkings;
import trestle.magnetics.CompassWorkings;
import trestle.massbalance.Balance;
import trestle.massbalance.MassBalanceWorkings;
import trestle.propulsion.PropulsionWorkings;
import trestle.rails.RailTask;
import trestle.rails.RailWorkings;
import trestle.review.Compass;
import trestle.review.DriveMatch;
import trestle.review.Review;
import trestle.review.RunReview;
import trestle.wiring.WireWorkings;

/** The calculations that a review is made of, in the order of its answer. A new one is one line here. */
final class Parts {
    /** Places that may have a part, whether or not one answer has it. */
    private static final Pattern PLACES = Pattern.compile("/mass_balance|/pack_energy|/wire_sizing/(0|[1-9][0-9]{0,8})"
            + "|/endurance|/propulsion_match|/rail_budget|/launch_and_climb|/compass_clearance");

    /** A review sizes each wire and its plugs for itself, and asks no drive for airspeeds beside those of the flight. */
    private static final Set<String> NOT_ASKED_OF_DRIVE =
            Set.of("wire-current", "connector-current", "curve-airspeeds");

    private final Review review;
    private final ReviewPlaces places;

    private Parts(Review review, ReviewPlaces places) {
        this.review = review;
        this.places = places;
    }

    /** Whether an answer may have a part at a place. */
    static boolean mayStandAt(String pointer) {
        return PLACES.matcher(pointer).matches();
    }

    static List<Part> of(Review review, ReviewPlaces places) {
        Parts of = new Parts(review, places);
        List<Part> parts = new ArrayList<>();
        review.balance().map(of::balance).ifPresent(parts::add);
        parts.add(of.pack());
        for (int i = 0; i < review.runs().size(); i++) {
            parts.add(of.run(i, review.runs().get(i)));
        }
        parts.add(of.endurance());
        review.propulsion().map(of::drive).ifPresent(parts::add);
        review.tasks().rails().map(of::rails).ifPresent(parts::add);
        review.tasks().launch().map(of::launch).ifPresent(parts::add);
        review.compass().map(of::compass).ifPresent(parts::add);
        return parts;
    }

    /** The part that stands at a place; empty where this answer lacks it. */
    static Optional<Part> at(String pointer, List<Part> parts) {
        return parts.stream().filter(part -> part.at().equals(pointer)).findFirst();
    }

    /** How all numbers were reached, part by part, each line with the name of its part. */
    static List<Working> workings(List<Part> parts) {
        return parts.stream()
                .sorted(Comparator.comparingInt(Part::step))
                .flatMap(part -> part.workings().get().stream().map(line -> line.about(part.calculation())))
                .toList();
    }

    private Part balance(Balance balance) {
        var task = review.tasks().balance().orElseThrow();
        return new Part(
                "mass-balance",
                "/mass_balance",
                2,
                () -> MassBalanceEndpoint.judgement(balance, places::ofBalance, Premises.NONE),
                theme -> BalanceFigure.of(task, balance, theme),
                () -> MassBalanceWorkings.of(task, balance));
    }

    private Part pack() {
        var task = review.tasks().pack();
        return new Part(
                "pack-energy",
                "/pack_energy",
                6,
                () -> PackEnergyEndpoint.judgement(task, review.pack(), places::ofPack, Premises.NONE),
                theme -> PackFigure.of(task, review.pack(), theme),
                () -> PackWorkings.of(task, review.pack()));
    }

    private Part run(int index, RunReview run) {
        return new Part(
                "wire-sizing, " + run.task().run().name(),
                "/wire_sizing/" + index,
                5,
                () -> WireSizingEndpoint.judgement(run.task(), run.sizing(), places.ofRun(index), Premises.NONE),
                theme -> WireFigure.of(run.task(), run.sizing(), theme),
                () -> WireWorkings.of(run.task(), run.sizing()));
    }

    private Part endurance() {
        var task = review.tasks().endurance();
        return new Part(
                "endurance",
                "/endurance",
                4,
                () -> EnduranceEndpoint.judgement(review.endurance(), places::ofFlight, Premises.NONE),
                theme -> EnduranceFigure.of(task, review.endurance(), theme),
                () -> EnduranceWorkings.of(task, review.endurance()));
    }

    private Part drive(DriveMatch drive) {
        return new Part(
                "propulsion-match",
                "/propulsion_match",
                3,
                () -> PropulsionMatchEndpoint.judgement(
                        drive.match().judgement().withoutChecks(NOT_ASKED_OF_DRIVE), places::ofDrive, Premises.NONE),
                theme -> PropulsionFigure.of(drive.task(), drive.match(), theme),
                () -> PropulsionWorkings.of(drive.task(), drive.match()));
    }

    private Part rails(RailTask task) {
        var budget = review.rails().orElseThrow();
        return new Part(
                "rail-budget",
                "/rail_budget",
                1,
                () -> RailBudgetEndpoint.judgement(budget, places::ofRails, Premises.NONE),
                theme -> RailFigure.of(task, budget, theme),
                () -> RailWorkings.of(task, budget));
    }

    private Part launch(LaunchAndClimbTask task) {
        var result = review.launch().orElseThrow();
        return new Part(
                "launch-and-climb",
                "/launch_and_climb",
                7,
                () -> LaunchAndClimbEndpoint.judgement(task, result, places::ofLaunch, Premises.NONE),
                theme -> LaunchAndClimbEndpoint.figure(task, result, theme),
                () -> LaunchWorkings.of(task, result));
    }

    private Part compass(Compass compass) {
        return new Part(
                "compass-clearance",
                "/compass_clearance",
                8,
                () -> CompassClearanceEndpoint.judgement(compass.clearance(), places::ofCompass, Premises.NONE),
                theme -> CompassFigure.of(compass.task(), compass.clearance(), theme),
                () -> CompassWorkings.of(compass.task(), compass.clearance()));
    }
}
