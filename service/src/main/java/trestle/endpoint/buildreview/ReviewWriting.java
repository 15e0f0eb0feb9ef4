package trestle.endpoint.buildreview;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiCheck;
import trestle.api.model.ApiCompassClearanceAnswer;
import trestle.api.model.ApiEnduranceAnswer;
import trestle.api.model.ApiFinding;
import trestle.api.model.ApiInstalledPack;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiKeyFigures;
import trestle.api.model.ApiLaunchStallAnswer;
import trestle.api.model.ApiMassBalanceAnswer;
import trestle.api.model.ApiPackEnergyAnswer;
import trestle.api.model.ApiPropulsionMatchAnswer;
import trestle.api.model.ApiRailBudgetAnswer;
import trestle.api.model.ApiRunReview;
import trestle.api.model.ApiWireSizingAnswer;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Writing;
import trestle.endpoint.compassclearance.CompassClearanceEndpoint;
import trestle.endpoint.compassclearance.CompassWriting;
import trestle.endpoint.endurance.EnduranceEndpoint;
import trestle.endpoint.endurance.EnduranceWriting;
import trestle.endpoint.launch.LaunchStallEndpoint;
import trestle.endpoint.launch.LaunchWriting;
import trestle.endpoint.massbalance.BalanceWriting;
import trestle.endpoint.massbalance.MassBalanceEndpoint;
import trestle.endpoint.packenergy.PackEnergyEndpoint;
import trestle.endpoint.packenergy.PackWriting;
import trestle.endpoint.propulsionmatch.PropulsionMatchEndpoint;
import trestle.endpoint.propulsionmatch.PropulsionWriting;
import trestle.endpoint.railbudget.RailBudgetEndpoint;
import trestle.endpoint.railbudget.RailWriting;
import trestle.endpoint.wiresizing.WireSizingEndpoint;
import trestle.endpoint.wiresizing.WireWriting;
import trestle.finding.Subject;
import trestle.flight.SpeedPoint;
import trestle.launch.LaunchStallResult;
import trestle.propulsion.OperatingPoint;
import trestle.rails.RailBudget;
import trestle.review.Aircraft;
import trestle.review.Compass;
import trestle.review.DriveMatch;
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
    private final ReviewPlaces places;
    private final List<ApiCheck> checks = new ArrayList<>();
    private final List<ApiFinding> findings = new ArrayList<>();
    private final List<ApiAssumption> assumptions = new ArrayList<>();
    private final Set<String> cautions = new LinkedHashSet<>();
    private final Set<String> models = new LinkedHashSet<>();

    ReviewWriting(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        this.done = done;
        this.review = done.work();
        this.places = new ReviewPlaces(done.read());
    }

    ApiBuildReviewAnswer answer() {
        ApiJudgement own = JudgementWriting.of(
                review.findings(), review.assumptions(), places::ofReview, done.assumed(), List.of(), List.of());
        merge(own);
        ApiMassBalanceAnswer balance = BalanceWriting.write(
                review.balance(),
                merged(MassBalanceEndpoint.judgement(review.balance(), places::ofBalance, List.of())));
        ApiPackEnergyAnswer pack = PackWriting.write(
                review.pack(),
                done.request().packs().stream().map(ApiInstalledPack::name).toList(),
                merged(PackEnergyEndpoint.judgement(review.tasks().pack(), review.pack(), places::ofPack, List.of())));
        List<ApiRunReview> runs =
                IntStream.range(0, review.runs().size()).mapToObj(this::run).toList();
        ApiEnduranceAnswer endurance = EnduranceWriting.write(
                review.endurance(),
                merged(EnduranceEndpoint.judgement(review.endurance(), places::ofFlight, List.of())));
        ApiBuildReviewAnswer.Builder answer = ApiBuildReviewAnswer.builder()
                .propulsionMatch(review.propulsion().map(this::drive).orElse(null))
                .railBudget(review.rails().map(this::rails).orElse(null))
                .launchStall(review.launch().map(this::launch).orElse(null))
                .compassClearance(review.compass().map(this::compass).orElse(null));
        return answer.judgement(
                        JudgementWriting.of(checks, findings, assumptions, List.copyOf(cautions), List.copyOf(models)))
                .keyFigures(keyFigures())
                .massBalance(balance)
                .packEnergy(pack)
                .wireSizing(runs)
                .endurance(endurance)
                .build();
    }

    private ApiRunReview run(int index) {
        RunReview run = review.runs().get(index);
        Function<Subject, String> place = places.ofRun(index);
        ApiWireSizingAnswer answer =
                WireWriting.write(run.sizing(), merged(WireSizingEndpoint.judgement(run.sizing(), place, List.of())));
        return ApiRunReview.builder()
                .name(run.task().run().name())
                .currentA(run.task().run().currentA())
                .peakCurrentA(run.task().run().peak().map(p -> p.currentA()).orElse(null))
                .gaugeFitted(run.fitted()
                        .map(GaugeAnswer::gauge)
                        .map(g -> g.designation())
                        .orElse(""))
                .answer(answer)
                .build();
    }

    private ApiPropulsionMatchAnswer drive(DriveMatch drive) {
        return PropulsionWriting.write(
                drive.task(),
                drive.match(),
                merged(PropulsionMatchEndpoint.judgement(drive.match(), places::ofDrive, List.of())));
    }

    private ApiRailBudgetAnswer rails(RailBudget rails) {
        return RailWriting.write(rails, merged(RailBudgetEndpoint.judgement(rails, places::ofRails, List.of())));
    }

    private ApiLaunchStallAnswer launch(LaunchStallResult launch) {
        return LaunchWriting.write(launch, merged(LaunchStallEndpoint.judgement(launch, places::ofLaunch, List.of())));
    }

    private ApiCompassClearanceAnswer compass(Compass compass) {
        return CompassWriting.write(
                compass.task().runs(),
                compass.clearance(),
                merged(CompassClearanceEndpoint.judgement(compass.clearance(), places::ofCompass, List.of())));
    }

    private ApiKeyFigures keyFigures() {
        return ApiKeyFigures.builder()
                .totalMassG(Mass.gFromKg(review.balance().centre().massKg()))
                .cgArmMm(Length.mmFromM(review.balance().centre().armM()))
                .staticMarginPercent(Writing.in(review.balance().staticMarginFraction(), Share::percentFromFraction))
                .wingLoadingGPerDm2(
                        Writing.in(review.balance().wingLoadingKgPerM2(), BalanceWriting::gPerDm2FromKgPerM2))
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
                .totalEfficiency(inCruise().map(p -> p.efficiency().total()).orElse(null))
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

    private ApiJudgement merged(ApiJudgement part) {
        merge(part);
        return part;
    }

    private void merge(ApiJudgement part) {
        checks.addAll(part.checks());
        findings.addAll(part.findings());
        assumptions.addAll(part.assumptions());
        cautions.addAll(part.cautions());
        models.addAll(part.computedBy().models());
    }
}
