package trestle.endpoint.buildreview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiCompassClearanceAnswer;
import trestle.api.model.ApiEnduranceAnswer;
import trestle.api.model.ApiGoAroundEnd;
import trestle.api.model.ApiGoAroundResult;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiKeyFigures;
import trestle.api.model.ApiLaunchAndClimbAnswer;
import trestle.api.model.ApiMassBalanceAnswer;
import trestle.api.model.ApiMotorOutResult;
import trestle.api.model.ApiPackChargeAnswer;
import trestle.api.model.ApiPackEnergyAnswer;
import trestle.api.model.ApiPropulsionMatchAnswer;
import trestle.api.model.ApiRailBudgetAnswer;
import trestle.api.model.ApiRunReview;
import trestle.api.model.ApiSurveyCoverageAnswer;
import trestle.api.model.ApiWireSizingAnswer;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Premises;
import trestle.endpoint.Writing;
import trestle.endpoint.massbalance.BalanceWriting;
import trestle.flight.SpeedPoint;
import trestle.joint.GoAround;
import trestle.massbalance.Planform;
import trestle.motorout.MotorOut;
import trestle.propulsion.OperatingPoint;
import trestle.rails.RailBudget;
import trestle.review.Aircraft;
import trestle.review.FullThrottle;
import trestle.review.MotorOutOfAircraft;
import trestle.review.Review;
import trestle.review.RunReview;
import trestle.units.Angle;
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
    private final Map<String, Object> answers = new HashMap<>();

    ReviewWriting(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        this.done = done;
        this.review = done.work();
    }

    ApiBuildReviewAnswer answer() {
        ReviewPlaces places = new ReviewPlaces(done.read());
        List<ApiJudgement> judgements = new ArrayList<>();
        judgements.add(JudgementWriting.of(
                review.judgement(),
                places::ofReview,
                done.assumed(),
                ReviewMargins.cautions(review),
                ReviewMargins.models(review)));
        Parts.of(review).forEach(part -> judgements.add(written(part)));
        return ApiBuildReviewAnswer.builder()
                .judgement(JudgementWriting.merged(judgements))
                .keyFigures(keyFigures())
                .goAround(review.goAround().map(this::goAround).orElse(null))
                .oneMotorOut(review.motorOut().map(ReviewWriting::motorOut).orElse(null))
                .massBalance(answer("/mass_balance", ApiMassBalanceAnswer.class))
                .packEnergy(answer("/pack_energy", ApiPackEnergyAnswer.class))
                .wireSizing(IntStream.range(0, review.runs().size())
                        .mapToObj(this::run)
                        .toList())
                .endurance(answer("/endurance", ApiEnduranceAnswer.class))
                .propulsionMatch(answer("/propulsion_match", ApiPropulsionMatchAnswer.class))
                .railBudget(answer("/rail_budget", ApiRailBudgetAnswer.class))
                .launchAndClimb(answer("/launch_and_climb", ApiLaunchAndClimbAnswer.class))
                .compassClearance(answer("/compass_clearance", ApiCompassClearanceAnswer.class))
                .packCharge(answer("/pack_charge", ApiPackChargeAnswer.class))
                .surveyCoverage(answer("/survey_coverage", ApiSurveyCoverageAnswer.class))
                .build();
    }

    /** What is estimated for the whole is said once, of the whole. */
    private <A> ApiJudgement written(Part<A> part) {
        ApiJudgement judgement = part.judgement().apply(Premises.NONE);
        answers.put(part.at(), part.answer().apply(judgement));
        return judgement;
    }

    /** The answer of a part; null where this aircraft lacks it. */
    private <A> A answer(String at, Class<A> type) {
        return type.cast(answers.get(at));
    }

    private static ApiMotorOutResult motorOut(MotorOutOfAircraft it) {
        MotorOut out = it.out();
        return ApiMotorOutResult.builder()
                .climbAirspeedMPerS(out.airspeedMPerS())
                .thrustN(out.thrustN())
                .deadDragN(out.deadDragN())
                .yawMomentNM(out.yawNm())
                .yawControlNM(out.controlNm())
                .rudderNeededDeg(Writing.in(out.rudderNeededRad(), Angle::degFromRad))
                .minimumControlAirspeedMPerS(Writing.boxed(out.minimumControlMPerS()))
                .largestThrustN(out.largestThrustN())
                .throttlePercent(Writing.in(it.throttleFraction(), Share::percentFromFraction))
                .bankNeededDeg(Angle.degFromRad(out.bankNeededRad()))
                .trimDragN(out.trimDragN())
                .climbRateMPerS(out.climbRateMPerS())
                .levelPossible(out.climbRateMPerS() >= 0)
                .build();
    }

    private ApiGoAroundResult goAround(GoAround go) {
        return ApiGoAroundResult.builder()
                .stateOfChargePercent(Share.percentFromFraction(go.chargeFraction()))
                .powerW(go.powerW())
                .voltageBeforeV(go.voltageBeforeV())
                .voltageAfter10SV(Writing.boxed(go.voltageAfter10sV()))
                .lowestVoltageV(go.lowestVoltageV())
                .lowestRailMarginV(Writing.boxed(review.goAroundRailMarginV()))
                .timeToCutoffS(Writing.boxed(go.timeToCutoffS()))
                .endReason(ApiGoAroundEnd.valueOf(go.end().name()))
                .energyAboveCutoffWh(Writing.in(go.energyToCutoffJ(), Energy::whFromJ))
                .climbAirspeedMPerS(go.climbAirspeedMPerS())
                .climbRateMPerS(go.climbRateMPerS())
                .heightGainedM(go.heightM())
                .powerAllowedW(go.powerAllowedW())
                .leastStateOfChargePercent(Writing.in(go.leastChargeFraction(), Share::percentFromFraction))
                .cutoffThatLastsV(Writing.boxed(go.cutoffThatLastsV()))
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
                .answer(answer("/wire_sizing/" + index, ApiWireSizingAnswer.class))
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
