package trestle.endpoint.flightreview;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiCalibration;
import trestle.api.model.ApiCalibrationFit;
import trestle.api.model.ApiContradiction;
import trestle.api.model.ApiFlightPhase;
import trestle.api.model.ApiFlightPhaseKind;
import trestle.api.model.ApiFlightReviewAnswer;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiPackSeen;
import trestle.api.model.ApiSteadyPower;
import trestle.api.model.ApiWindSeen;
import trestle.endpoint.Writing;
import trestle.telemetry.FlightLog;
import trestle.telemetry.FlightReview;
import trestle.telemetry.FlightSums;
import trestle.telemetry.PackResistance;
import trestle.telemetry.Phase;
import trestle.telemetry.PowerFit;
import trestle.telemetry.Reconciliation;
import trestle.telemetry.ReviewTask;
import trestle.telemetry.Wind;
import trestle.telemetry.WindFit;
import trestle.units.Angle;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Resistance;
import trestle.units.Share;

/** Writes a review into its answer. */
final class FlightReviewWriting {
    private FlightReviewWriting() {}

    static ApiFlightReviewAnswer write(ReviewTask task, FlightReview review, ApiJudgement judgement) {
        FlightSums sums = review.sums();
        return ApiFlightReviewAnswer.builder()
                .judgement(judgement)
                .durationS(sums.durationS())
                .coveredS(sums.coveredS())
                .distanceKm(Writing.in(sums.groundDistanceM(), Length::kmFromM))
                .airDistanceKm(Writing.in(sums.airDistanceM(), Length::kmFromM))
                .chargeUsedAh(Writing.in(sums.chargeC(), Charge::ahFromC))
                .energyUsedWh(Writing.in(sums.energyJ(), Energy::whFromJ))
                .meanPowerW(Writing.boxed(sums.meanPowerW()))
                .energyWhPerKm(Writing.in(sums.energyPerGroundMJ(), perM -> Energy.whFromJ(perM * Length.mFromKm(1))))
                .meanGroundSpeedMPerS(Writing.boxed(sums.meanGroundSpeedMPerS()))
                .phases(review.log().map(FlightLog::phases).orElse(List.of()).stream()
                        .map(FlightReviewWriting::phase)
                        .toList())
                .wind(review.log()
                        .flatMap(FlightLog::wind)
                        .flatMap(FlightReviewWriting::wind)
                        .orElse(null))
                .pack(pack(task, review))
                .steadyPower(review.steadyPower()
                        .map(p -> new ApiSteadyPower(p.airspeedMPerS(), p.powerW(), p.deviationW()))
                        .orElse(null))
                .calibration(review.calibration()
                        .map(FlightReviewWriting::calibration)
                        .orElse(null))
                .contradiction(review.contradiction()
                        .filter(Reconciliation::apart)
                        .map(FlightReviewWriting::contradiction)
                        .orElse(null))
                .build();
    }

    private static ApiFlightPhase phase(Phase phase) {
        return new ApiFlightPhase(
                ApiFlightPhaseKind.valueOf(phase.kind().name().toUpperCase(Locale.ROOT)),
                phase.startS(),
                phase.endS(),
                Energy.whFromJ(phase.energyJ()));
    }

    private static Optional<ApiWindSeen> wind(WindFit fit) {
        return fit.wind().map(wind -> wind(wind, fit));
    }

    private static ApiWindSeen wind(Wind wind, WindFit fit) {
        return new ApiWindSeen(
                wind.speedMPerS(),
                Angle.degFromRad(wind.fromRad()),
                wind.speedDeviationMPerS(),
                Angle.degFromRad(fit.coverageRad()));
    }

    private static ApiPackSeen pack(ReviewTask task, FlightReview review) {
        Optional<PackResistance> resistance = review.log().flatMap(FlightLog::resistance);
        OptionalDouble cell = review.lowestCellV(task.pack());
        return ApiPackSeen.builder()
                .resistanceMilliohm(resistance
                        .map(r -> Resistance.milliohmFromOhm(r.resistanceOhm()))
                        .orElse(null))
                .resistanceDeviationMilliohm(resistance
                        .map(r -> Resistance.milliohmFromOhm(r.deviationOhm()))
                        .orElse(null))
                .loadStepCount(resistance.map(PackResistance::stepCount).orElse(null))
                .lowestVoltageV(Writing.boxed(review.sums().lowestVoltageV()))
                .lowestCellVoltageV(Writing.boxed(cell))
                .capacityEstimateAh(review.capacity()
                        .map(c -> Charge.ahFromC(c.capacityC()))
                        .orElse(null))
                .capacityDeviationAh(review.capacity()
                        .map(c -> Charge.ahFromC(c.deviationC()))
                        .orElse(null))
                .build();
    }

    private static ApiCalibration calibration(PowerFit fit) {
        boolean fitted = fit.sampleCount() > 0;
        return ApiCalibration.builder()
                .systemsPowerW(fit.systemsPowerW())
                .parasitePowerCoefficient(fit.parasiteAreaM2())
                .inducedPowerCoefficient(fit.inducedFactorPerS4())
                .massG(Mass.gFromKg(fit.massKg()))
                .fit(ApiCalibrationFit.builder()
                        .parasiteDeviationPercent(Share.percentFromFraction(fit.parasiteDeviation()))
                        .inducedDeviationPercent(Share.percentFromFraction(fit.inducedDeviation()))
                        .deviationCorrelationCoefficient(fit.correlation())
                        .rSquared(fitted ? fit.rSquared() : null)
                        .rmsW(fitted ? fit.rmsW() : null)
                        .sampleCount(fit.sampleCount())
                        .leastAirspeedMPerS(fit.leastMPerS())
                        .greatestAirspeedMPerS(fit.greatestMPerS())
                        .build())
                .build();
    }

    private static ApiContradiction contradiction(Reconciliation r) {
        return ApiContradiction.builder()
                .chargeUsedAh(Charge.ahFromC(r.chargeSaidC()))
                .chargeShownAh(Charge.ahFromC(r.chargeShownC()))
                .trueOverCountedChargeRatio(r.chargeFactor())
                .trueOverDescribedCapacityRatio(r.chargeShownC() > 0 ? r.capacityFactor() : null)
                .trueOverReadVoltageRatio(r.voltageFactor())
                .restVoltageDueV(r.restVoltageDueV())
                .build();
    }
}
