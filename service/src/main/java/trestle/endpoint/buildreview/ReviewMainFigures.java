package trestle.endpoint.buildreview;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import trestle.endpoint.MainFigure;
import trestle.endpoint.endurance.EnduranceWriting;
import trestle.endpoint.massbalance.BalanceWriting;
import trestle.finding.Judgement;
import trestle.propulsion.OperatingPoint;
import trestle.review.Review;
import trestle.units.Energy;
import trestle.units.Share;

/** What of a review carries a band, and what of it forbids the flight. */
final class ReviewMainFigures {
    private ReviewMainFigures() {}

    static void of(Review review, Map<MainFigure, Double> figures) {
        EnduranceWriting.figures(review.endurance(), figures);
        review.balance().ifPresent(balance -> BalanceWriting.figures(balance, figures));
        review.propulsion()
                .flatMap(drive -> drive.match().performance().atRest())
                .map(OperatingPoint::thrustN)
                .ifPresent(thrustN -> figures.put(MainFigure.STATIC_THRUST, thrustN));
        figures.put(
                MainFigure.USABLE_ENERGY, Energy.whFromJ(review.pack().budget().usableEnergyJ()));
        review.launch().ifPresent(launch -> {
            figures.put(MainFigure.CLIMB_RATE, launch.climb().rateMPerS());
            figures.put(
                    MainFigure.LAUNCH_MARGIN,
                    Share.percentFromFraction(launch.launch().marginFraction()));
        });
    }

    static Set<String> stops(Review review) {
        List<Judgement> judgements = new ArrayList<>();
        judgements.add(review.judgement());
        judgements.add(review.endurance().judgement());
        judgements.add(review.pack().judgement());
        review.balance().ifPresent(balance -> judgements.add(balance.judgement()));
        review.propulsion().ifPresent(drive -> judgements.add(drive.match().judgement()));
        review.rails().ifPresent(rails -> judgements.add(rails.judgement()));
        review.launch().ifPresent(launch -> judgements.add(launch.judgement()));
        review.compass().ifPresent(compass -> judgements.add(compass.clearance().judgement()));
        review.runs().forEach(run -> judgements.add(run.sizing().judgement()));
        return judgements.stream().flatMap(j -> j.stops().stream()).collect(Collectors.toSet());
    }
}
