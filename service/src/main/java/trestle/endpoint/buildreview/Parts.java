package trestle.endpoint.buildreview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import trestle.api.model.ApiCompassClearanceAnswer;
import trestle.api.model.ApiEnduranceAnswer;
import trestle.api.model.ApiLaunchAndClimbAnswer;
import trestle.api.model.ApiMassBalanceAnswer;
import trestle.api.model.ApiPackChargeAnswer;
import trestle.api.model.ApiPackEnergyAnswer;
import trestle.api.model.ApiPropulsionMatchAnswer;
import trestle.api.model.ApiRailBudgetAnswer;
import trestle.api.model.ApiSurveyCoverageAnswer;
import trestle.api.model.ApiWireSizingAnswer;
import trestle.battery.PackWorkings;
import trestle.charging.ChargeTask;
import trestle.charging.ChargeWorkings;
import trestle.charging.PackCharge;
import trestle.endpoint.compassclearance.CompassClearanceEndpoint;
import trestle.endpoint.compassclearance.CompassWriting;
import trestle.endpoint.endurance.EnduranceEndpoint;
import trestle.endpoint.endurance.EnduranceWriting;
import trestle.endpoint.launch.LaunchAndClimbEndpoint;
import trestle.endpoint.launch.LaunchWriting;
import trestle.endpoint.massbalance.BalanceWriting;
import trestle.endpoint.massbalance.MassBalanceEndpoint;
import trestle.endpoint.packcharge.ChargeWriting;
import trestle.endpoint.packcharge.PackChargeEndpoint;
import trestle.endpoint.packenergy.PackEnergyEndpoint;
import trestle.endpoint.packenergy.PackWriting;
import trestle.endpoint.propulsionmatch.PropulsionMatchEndpoint;
import trestle.endpoint.propulsionmatch.PropulsionWriting;
import trestle.endpoint.railbudget.RailBudgetEndpoint;
import trestle.endpoint.railbudget.RailWriting;
import trestle.endpoint.surveycoverage.SurveyCoverageEndpoint;
import trestle.endpoint.surveycoverage.SurveyWriting;
import trestle.endpoint.wiresizing.WireSizingEndpoint;
import trestle.endpoint.wiresizing.WireWriting;
import trestle.figure.BalanceFigure;
import trestle.figure.ChargeFigure;
import trestle.figure.CompassFigure;
import trestle.figure.EnduranceFigure;
import trestle.figure.PackFigure;
import trestle.figure.PropulsionFigure;
import trestle.figure.RailFigure;
import trestle.figure.SurveyFigure;
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
import trestle.survey.SurveyCoverage;
import trestle.survey.SurveyTask;
import trestle.survey.SurveyWorkings;
import trestle.wiring.WireWorkings;

/** The calculations that a review is made of, in the order of its answer. A new one is one line here. */
final class Parts {
    /** Places that may have a part, whether or not one answer has it. */
    private static final Pattern PLACES = Pattern.compile(
            "/mass_balance|/pack_energy|/wire_sizing/(0|[1-9][0-9]{0,8})"
                    + "|/endurance|/propulsion_match|/rail_budget|/launch_and_climb|/compass_clearance|/pack_charge|/survey_coverage");

    /** A review sizes each wire and its plugs for itself, and asks no drive for airspeeds beside those of the flight. */
    private static final Set<String> NOT_ASKED_OF_DRIVE =
            Set.of("wire-current", "connector-current", "curve-airspeeds");

    private final Review review;
    private final ReviewPlaces places;

    private Parts(Review review) {
        this.review = review;
        this.places = new ReviewPlaces(review.aircraft());
    }

    /** Whether an answer may have a part at a place. */
    static boolean mayStandAt(String pointer) {
        return PLACES.matcher(pointer).matches();
    }

    static List<Part<?>> of(Review review) {
        Parts of = new Parts(review);
        List<Part<?>> parts = new ArrayList<>();
        review.balance().map(of::balance).ifPresent(parts::add);
        parts.add(of.pack());
        for (int i = 0; i < review.runs().size(); i++) {
            parts.add(of.run(i, review.runs().get(i)));
        }
        parts.add(of.endurance());
        review.propulsion().map(of::drive).ifPresent(parts::add);
        review.railTask().map(of::rails).ifPresent(parts::add);
        review.launchTask().map(of::launch).ifPresent(parts::add);
        review.compass().map(of::compass).ifPresent(parts::add);
        review.chargeTask().map(of::charge).ifPresent(parts::add);
        review.surveyTask().map(of::survey).ifPresent(parts::add);
        return parts;
    }

    /** What each part answers with, by its name. */
    static final Map<String, Class<?>> ANSWERS = answers();

    private static Map<String, Class<?>> answers() {
        Map<String, Class<?>> answers = new LinkedHashMap<>();
        answers.put("mass-balance", ApiMassBalanceAnswer.class);
        answers.put("pack-energy", ApiPackEnergyAnswer.class);
        answers.put("wire-sizing", ApiWireSizingAnswer.class);
        answers.put("endurance", ApiEnduranceAnswer.class);
        answers.put("propulsion-match", ApiPropulsionMatchAnswer.class);
        answers.put("rail-budget", ApiRailBudgetAnswer.class);
        answers.put("launch-and-climb", ApiLaunchAndClimbAnswer.class);
        answers.put("compass-clearance", ApiCompassClearanceAnswer.class);
        answers.put("pack-charge", ApiPackChargeAnswer.class);
        answers.put("survey-coverage", ApiSurveyCoverageAnswer.class);
        return answers;
    }

    /**
     * One part alone: no other is worked out, but for what it needs.
     *
     * @param calculation one of {@link #ANSWERS}
     * @param run index of the run of wire, for {@code wire-sizing}
     * @return the part; empty where this aircraft lacks it
     */
    static Optional<? extends Part<?>> named(String calculation, int run, Review review) {
        Parts of = new Parts(review);
        return switch (calculation) {
            case "mass-balance" -> review.balance().map(of::balance);
            case "pack-energy" -> Optional.of(of.pack());
            case "wire-sizing" -> Optional.of(of.run(run, review.runs().get(run)));
            case "endurance" -> Optional.of(of.endurance());
            case "propulsion-match" -> review.propulsion().map(of::drive);
            case "rail-budget" -> review.railTask().map(of::rails);
            case "launch-and-climb" -> review.launchTask().map(of::launch);
            case "compass-clearance" -> review.compass().map(of::compass);
            case "pack-charge" -> review.chargeTask().map(of::charge);
            case "survey-coverage" -> review.surveyTask().map(of::survey);
            default -> Optional.empty();
        };
    }

    /** The part that stands at a place; empty where this answer lacks it. */
    static Optional<Part<?>> at(String pointer, List<Part<?>> parts) {
        return parts.stream().filter(part -> part.at().equals(pointer)).findFirst();
    }

    /** How all numbers were reached, part by part, each line with the name of its part. */
    static List<Working> workings(List<Part<?>> parts) {
        return parts.stream()
                .sorted(Comparator.<Part<?>>comparingInt(Part::step))
                .flatMap(part -> part.workings().get().stream().map(line -> line.about(part.named())))
                .toList();
    }

    private Part<ApiMassBalanceAnswer> balance(Balance balance) {
        var task = review.balanceTask().orElseThrow();
        return new Part<>(
                "mass-balance",
                "",
                "/mass_balance",
                2,
                premises -> MassBalanceEndpoint.judgement(balance, places::ofBalance, premises),
                judgement -> BalanceWriting.write(balance, judgement),
                theme -> BalanceFigure.of(task, balance, theme),
                () -> MassBalanceWorkings.of(task, balance),
                figures -> BalanceWriting.figures(balance, figures),
                balance::judgement);
    }

    private Part<ApiPackEnergyAnswer> pack() {
        return new Part<>(
                "pack-energy",
                "",
                "/pack_energy",
                6,
                premises -> PackEnergyEndpoint.judgement(review.packTask(), review.pack(), places::ofPack, premises),
                judgement -> PackWriting.write(review.pack(), places.packNames(), judgement),
                theme -> PackFigure.of(review.packTask(), review.pack(), theme),
                () -> PackWorkings.of(review.packTask(), review.pack()),
                figures -> PackWriting.figures(review.pack(), figures),
                () -> review.pack().judgement());
    }

    private Part<ApiWireSizingAnswer> run(int index, RunReview run) {
        return new Part<>(
                "wire-sizing",
                run.task().run().name(),
                "/wire_sizing/" + index,
                5,
                premises -> WireSizingEndpoint.judgement(run.task(), run.sizing(), places.ofRun(index), premises),
                judgement -> WireWriting.write(run.task(), run.sizing(), judgement),
                theme -> WireFigure.of(run.task(), run.sizing(), theme),
                () -> WireWorkings.of(run.task(), run.sizing()),
                figures -> {},
                () -> run.sizing().judgement());
    }

    private Part<ApiEnduranceAnswer> endurance() {
        return new Part<>(
                "endurance",
                "",
                "/endurance",
                4,
                premises -> EnduranceEndpoint.judgement(review.endurance(), places::ofFlight, premises),
                judgement -> EnduranceWriting.write(review.endurance(), judgement),
                theme -> EnduranceFigure.of(review.enduranceTask(), review.endurance(), theme),
                () -> EnduranceWorkings.of(review.enduranceTask(), review.endurance()),
                figures -> EnduranceWriting.figures(review.endurance(), figures),
                () -> review.endurance().judgement());
    }

    private Part<ApiPropulsionMatchAnswer> drive(DriveMatch drive) {
        var judged = drive.match().judgement().withoutChecks(NOT_ASKED_OF_DRIVE);
        return new Part<>(
                "propulsion-match",
                "",
                "/propulsion_match",
                3,
                premises -> PropulsionMatchEndpoint.judgement(judged, places::ofDrive, premises),
                judgement -> PropulsionWriting.write(drive.task(), drive.match(), judgement),
                theme -> PropulsionFigure.of(drive.task(), drive.match(), theme),
                () -> PropulsionWorkings.of(drive.task(), drive.match()),
                figures -> PropulsionWriting.figures(drive.match(), figures),
                () -> judged);
    }

    private Part<ApiRailBudgetAnswer> rails(RailTask task) {
        var budget = review.rails().orElseThrow();
        return new Part<>(
                "rail-budget",
                "",
                "/rail_budget",
                1,
                premises -> RailBudgetEndpoint.judgement(budget, places::ofRails, premises),
                judgement -> RailWriting.write(budget, judgement),
                theme -> RailFigure.of(task, budget, theme),
                () -> RailWorkings.of(task, budget),
                figures -> {},
                budget::judgement);
    }

    private Part<ApiLaunchAndClimbAnswer> launch(LaunchAndClimbTask task) {
        var result = review.launch().orElseThrow();
        return new Part<>(
                "launch-and-climb",
                "",
                "/launch_and_climb",
                7,
                premises -> LaunchAndClimbEndpoint.judgement(task, result, places::ofLaunch, premises),
                judgement -> LaunchWriting.write(result, judgement),
                theme -> LaunchAndClimbEndpoint.figure(task, result, theme),
                () -> LaunchWorkings.of(task, result),
                figures -> LaunchWriting.figures(result, figures),
                result::judgement);
    }

    private Part<ApiSurveyCoverageAnswer> survey(SurveyTask task) {
        Supplier<SurveyCoverage> found = () -> review.survey().orElseThrow();
        return new Part<>(
                "survey-coverage",
                "",
                "/survey_coverage",
                10,
                premises -> SurveyCoverageEndpoint.judgement(found.get(), places::ofSurvey, premises),
                judgement -> SurveyWriting.write(task, found.get(), judgement),
                theme -> SurveyFigure.of(task, found.get(), theme),
                () -> SurveyWorkings.of(task, found.get()),
                figures -> {},
                () -> found.get().judgement());
    }

    private Part<ApiPackChargeAnswer> charge(ChargeTask task) {
        Supplier<PackCharge> charge = () -> review.charge().orElseThrow();
        return new Part<>(
                "pack-charge",
                "",
                "/pack_charge",
                9,
                premises -> PackChargeEndpoint.judgement(task, charge.get(), places::ofCharge, premises),
                judgement -> ChargeWriting.write(task, charge.get(), judgement),
                theme -> ChargeFigure.of(task, charge.get(), theme),
                () -> ChargeWorkings.of(task, charge.get()),
                figures -> {},
                () -> charge.get().judgement());
    }

    private Part<ApiCompassClearanceAnswer> compass(Compass compass) {
        return new Part<>(
                "compass-clearance",
                "",
                "/compass_clearance",
                8,
                premises -> CompassClearanceEndpoint.judgement(compass.clearance(), places::ofCompass, premises),
                judgement -> CompassWriting.write(compass.task().runs(), compass.clearance(), judgement),
                theme -> CompassFigure.of(compass.task(), compass.clearance(), theme),
                () -> CompassWorkings.of(compass.task(), compass.clearance()),
                figures -> {},
                () -> compass.clearance().judgement());
    }
}
