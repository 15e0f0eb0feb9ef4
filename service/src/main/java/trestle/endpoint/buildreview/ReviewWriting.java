package trestle.endpoint.buildreview;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiInstalledPack;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiKeyFigures;
import trestle.api.model.ApiRunReview;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Writing;
import trestle.endpoint.compassclearance.CompassWriting;
import trestle.endpoint.endurance.EnduranceWriting;
import trestle.endpoint.launch.LaunchWriting;
import trestle.endpoint.massbalance.BalanceWriting;
import trestle.endpoint.packenergy.PackWriting;
import trestle.endpoint.propulsionmatch.PropulsionWriting;
import trestle.endpoint.railbudget.RailWriting;
import trestle.endpoint.wiresizing.WireWriting;
import trestle.flight.SpeedPoint;
import trestle.massbalance.Planform;
import trestle.propulsion.OperatingPoint;
import trestle.rails.RailBudget;
import trestle.review.Aircraft;
import trestle.review.FullThrottle;
import trestle.review.Review;
import trestle.review.RunReview;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Share;
import trestle.units.Time;
import trestle.wiring.GaugeAnswer;

/** Writes a review: each part under its own name, and what all parts say together. */
public final class ReviewWriting {
    private final Review review;
    private final Done<ApiBuildReviewRequest, Aircraft, Review> done;
    private final Map<String, ApiJudgement> judgements = new LinkedHashMap<>();

    ReviewWriting(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        this.done = done;
        this.review = done.work();
    }

    ApiBuildReviewAnswer answer() {
        ReviewPlaces places = new ReviewPlaces(done.read());
        judgements.put(
                "", JudgementWriting.of(review.judgement(), places::ofReview, done.assumed(), List.of(), List.of()));
        Parts.of(review, places)
                .forEach(part -> judgements.put(part.at(), part.judgement().get()));
        return ApiBuildReviewAnswer.builder()
                .judgement(JudgementWriting.merged(List.copyOf(judgements.values())))
                .keyFigures(keyFigures())
                .massBalance(review.balance()
                        .map(balance -> BalanceWriting.write(balance, judgements.get("/mass_balance")))
                        .orElse(null))
                .packEnergy(PackWriting.write(
                        review.pack(),
                        done.request().packs().stream()
                                .map(ApiInstalledPack::name)
                                .toList(),
                        judgements.get("/pack_energy")))
                .wireSizing(IntStream.range(0, review.runs().size())
                        .mapToObj(this::run)
                        .toList())
                .endurance(EnduranceWriting.write(review.endurance(), judgements.get("/endurance")))
                .propulsionMatch(review.propulsion()
                        .map(drive -> PropulsionWriting.write(
                                drive.task(), drive.match(), judgements.get("/propulsion_match")))
                        .orElse(null))
                .railBudget(review.rails()
                        .map(rails -> RailWriting.write(rails, judgements.get("/rail_budget")))
                        .orElse(null))
                .launchAndClimb(review.launch()
                        .map(launch -> LaunchWriting.write(launch, judgements.get("/launch_and_climb")))
                        .orElse(null))
                .compassClearance(review.compass()
                        .map(compass -> CompassWriting.write(
                                compass.task().runs(), compass.clearance(), judgements.get("/compass_clearance")))
                        .orElse(null))
                .build();
    }

    private ApiRunReview run(int index) {
        RunReview run = review.runs().get(index);
        return ApiRunReview.builder()
                .name(run.task().run().name())
                .currentA(run.task().run().currentA())
                .peakCurrentA(run.task().run().peak().map(p -> p.currentA()).orElse(null))
                .gaugeFitted(run.fitted()
                        .map(GaugeAnswer::gauge)
                        .map(g -> g.designation())
                        .orElse(""))
                .answer(WireWriting.write(run.sizing(), judgements.get("/wire_sizing/" + index)))
                .build();
    }

    private ApiKeyFigures keyFigures() {
        return ApiKeyFigures.builder()
                .totalMassG(Mass.gFromKg(review.massKg()))
                .cgArmMm(review.balance()
                        .map(b -> Length.mmFromM(b.centre().armM()))
                        .orElse(null))
                .staticMarginPercent(review.balance()
                        .map(b -> Writing.in(b.staticMarginFraction(), Share::percentFromFraction))
                        .orElse(null))
                .wingLoadingGPerDm2(BalanceWriting.gPerDm2FromKgPerM2(
                        review.massKg() / Planform.of(done.read().wing()).areaM2()))
                .usableEnergyWh(Energy.whFromJ(review.pack().budget().usableEnergyJ()))
                .stallSpeedMPerS(review.endurance().stallSpeedMPerS())
                .cruiseAirspeedMPerS(
                        review.cruise().map(SpeedPoint::airspeedMPerS).orElse(null))
                .cruisePowerW(review.cruise().map(SpeedPoint::powerW).orElse(null))
                .cruiseCurrentA(
                        review.cruise().map(c -> Writing.boxed(c.currentA())).orElse(null))
                .cruiseThrottlePercent(inCruise()
                        .map(p -> Share.percentFromFraction(p.throttleFraction()))
                        .orElse(null))
                .driveEfficiency(inCruise().map(p -> p.efficiency().total()).orElse(null))
                .systemsPowerW(done.read().systemsPowerW()
                        + review.rails().map(RailBudget::systemsPowerW).orElse(0.0))
                .staticThrustN(review.propulsion()
                        .flatMap(d -> d.match().performance().atRest())
                        .map(OperatingPoint::thrustN)
                        .orElse(null))
                .launchMarginPercent(review.launch()
                        .map(l -> Share.percentFromFraction(l.launch().marginFraction()))
                        .orElse(null))
                .fullThrottleCurrentA(
                        review.fullThrottle().map(FullThrottle::currentA).orElse(null))
                .bestEnduranceH(review.endurance()
                        .bestEndurance()
                        .map(p -> Time.hFromS(p.enduranceS()))
                        .orElse(null))
                .bestGroundRangeKm(review.endurance()
                        .bestRange()
                        .map(p -> Length.kmFromM(p.groundRangeM()))
                        .orElse(null))
                .radiusOfActionKm(Writing.in(review.endurance().radiusOfActionM(), Length::kmFromM))
                .build();
    }

    private Optional<OperatingPoint> inCruise() {
        return review.propulsion().flatMap(drive -> drive.match().performance().cruise());
    }
}
