package trestle.endpoint.propulsionmatch;

import java.util.Map;
import trestle.api.model.ApiHeadroom;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiKeptRating;
import trestle.api.model.ApiLimitPlace;
import trestle.api.model.ApiOperatingPoint;
import trestle.api.model.ApiPropulsionMatchAnswer;
import trestle.api.model.ApiThrottleLimit;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Writing;
import trestle.propulsion.DrivePerformance;
import trestle.propulsion.Headroom;
import trestle.propulsion.KeptRating;
import trestle.propulsion.OperatingPoint;
import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionTask;
import trestle.propulsion.ThrottleLimit;
import trestle.units.Rotation;
import trestle.units.Share;

/** Writes what a drive does into its answer. */
public final class PropulsionWriting {
    private PropulsionWriting() {}

    /**
     * The numbers that carry a band.
     *
     * @param match the drive
     * @param figures takes each under its name
     */
    public static void figures(PropulsionMatch match, Map<MainFigure, Double> figures) {
        match.performance().cruise().ifPresent(point -> figures.put(MainFigure.CRUISE_POWER, point.electricalPowerW()));
        match.performance().atRest().ifPresent(point -> figures.put(MainFigure.STATIC_THRUST, point.thrustN()));
    }

    public static ApiPropulsionMatchAnswer write(PropulsionTask task, PropulsionMatch match, ApiJudgement judgement) {
        DrivePerformance drive = match.performance();
        return ApiPropulsionMatchAnswer.builder()
                .judgement(judgement)
                .airDensityKgPerM3(task.air().densityKgPerM3())
                .supplyAtRestV(task.system().supply().restVoltageV())
                ._static(drive.atRest().map(PropulsionWriting::point).orElse(null))
                .thrustToWeight(Writing.boxed(drive.thrustToWeightRatio()))
                .cruise(drive.cruise().map(PropulsionWriting::point).orElse(null))
                .fullThrottleInCruise(drive.fullThrottleInCruise()
                        .map(PropulsionWriting::point)
                        .orElse(null))
                .topSpeedMPerS(Writing.boxed(drive.topSpeedMPerS()))
                .zeroThrustSpeedMPerS(Writing.boxed(drive.zeroThrustSpeedMPerS()))
                .pitchSpeedMPerS(Writing.boxed(drive.pitchSpeedMPerS()))
                .tipMach(Writing.boxed(drive.tipMachRatio()))
                .curve(drive.curve().stream().map(PropulsionWriting::point).toList())
                .headroom(headroom(match.headroom()))
                .throttleLimit(
                        match.throttleLimit().map(PropulsionWriting::least).orElse(null))
                .limits(match.limits().stream().map(PropulsionWriting::limit).toList())
                .build();
    }

    private static ApiOperatingPoint point(OperatingPoint point) {
        return ApiOperatingPoint.builder()
                .airspeedMPerS(point.airspeedMPerS())
                .throttlePercent(Share.percentFromFraction(point.throttleFraction()))
                .rpm(Rotation.rpmFromRadPerS(point.rotationRadPerS()))
                .advanceRatio(point.advanceRatio())
                .thrustN(point.thrustN())
                .torqueNM(point.torqueNm())
                .shaftPowerW(point.shaftPowerW())
                .electricalPowerW(point.electricalPowerW())
                .currentA(point.supplyCurrentA())
                .supplyVoltageV(point.supplyVoltageV())
                .motorCurrentA(point.motorCurrentA())
                .motorVoltageV(point.motorVoltageV())
                .tipMach(point.tipMachRatio())
                .propellerEfficiency(point.efficiency().propeller())
                .motorEfficiency(point.efficiency().motor())
                .controllerEfficiency(point.efficiency().controller())
                .driveEfficiency(point.efficiency().total())
                .idealPropellerEfficiency(point.idealPropellerEfficiency())
                .build();
    }

    /** At full throttle nothing binds. */
    private static ApiThrottleLimit least(ThrottleLimit limit) {
        return limit(limit, limit.limits() ? limit.rating() : null);
    }

    private static ApiThrottleLimit limit(ThrottleLimit limit) {
        return limit(limit, limit.rating());
    }

    private static ApiThrottleLimit limit(ThrottleLimit limit, KeptRating binding) {
        return ApiThrottleLimit.builder()
                .throttlePercent(Share.percentFromFraction(limit.throttleFraction()))
                .binding(binding == null ? null : ApiKeptRating.valueOf(binding.name()))
                .where(limit.where().map(it -> ApiLimitPlace.valueOf(it.name())).orElse(null))
                .thrustN(Writing.boxed(limit.thrustN()))
                .staticCurrentA(Writing.boxed(limit.staticCurrentA()))
                .topSpeedMPerS(Writing.boxed(limit.topSpeedMPerS()))
                .climbRateMPerS(Writing.boxed(limit.climbRateMPerS()))
                .thrustToWeight(Writing.boxed(limit.thrustToWeightRatio()))
                .build();
    }

    private static ApiHeadroom headroom(Headroom left) {
        return ApiHeadroom.builder()
                .motorCurrentPercent(Writing.in(left.motorCurrentFraction(), Share::percentFromFraction))
                .motorPowerPercent(Writing.in(left.motorPowerFraction(), Share::percentFromFraction))
                .controllerCurrentPercent(Writing.in(left.controllerCurrentFraction(), Share::percentFromFraction))
                .controllerVoltagePercent(Writing.in(left.controllerVoltageFraction(), Share::percentFromFraction))
                .packCurrentPercent(Writing.in(left.packCurrentFraction(), Share::percentFromFraction))
                .propellerRpmPercent(Writing.in(left.propellerRotationFraction(), Share::percentFromFraction))
                .build();
    }
}
