package trestle.endpoint.launch;

import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiLaunchOutcome;
import trestle.api.model.ApiLaunchResult;
import trestle.api.model.ApiLaunchStallAnswer;
import trestle.api.model.ApiSteadyClimb;
import trestle.api.model.ApiSteadyGlide;
import trestle.endpoint.Writing;
import trestle.launch.Climb;
import trestle.launch.Glide;
import trestle.launch.LaunchFlight;
import trestle.launch.LaunchStallResult;
import trestle.units.Angle;
import trestle.units.Share;

/** Writes stall, launch and what follows into their answer. */
public final class LaunchWriting {
    private LaunchWriting() {}

    public static ApiLaunchStallAnswer write(LaunchStallResult result, ApiJudgement judgement) {
        return ApiLaunchStallAnswer.builder()
                .judgement(judgement)
                .stallSpeedMPerS(result.stallSpeedMPerS())
                .stallSpeedBankedMPerS(result.stallSpeedTurningMPerS())
                .safeClimbSpeedMPerS(result.safeClimbSpeedMPerS())
                .launch(launch(result.launch()))
                .climb(climb(result.climb()))
                .glide(glide(result.glide()))
                .turnAirspeedMPerS(result.turnAirspeedMPerS())
                .turnRadiusM(Writing.boxed(result.turnRadiusM()))
                .kineticEnergyJ(result.kineticEnergyJ())
                .airDensityKgPerM3(result.densityKgPerM3())
                .densityAltitudeM(result.densityAltitudeM())
                .build();
    }

    private static ApiLaunchResult launch(LaunchFlight launch) {
        boolean run = launch.groundRunM().isPresent();
        return ApiLaunchResult.builder()
                .outcome(ApiLaunchOutcome.valueOf(launch.outcome().name()))
                .releaseAirspeedMPerS(launch.releaseAirspeedMPerS())
                .marginPercent(Share.percentFromFraction(launch.marginFraction()))
                .heightLostM(launch.heightLostM())
                .timeToSafeSpeedS(Writing.boxed(launch.timeToSafeSpeedS()))
                .groundRunM(Writing.boxed(launch.groundRunM()))
                .runTimeS(run ? launch.runTimeS() : null)
                .meanAccelerationMPerS2(Writing.boxed(launch.meanAccelerationMPerS2()))
                .build();
    }

    private static ApiSteadyClimb climb(Climb climb) {
        return new ApiSteadyClimb(climb.airspeedMPerS(), climb.rateMPerS(), Angle.degFromRad(climb.angleRad()));
    }

    private static ApiSteadyGlide glide(Glide glide) {
        return new ApiSteadyGlide(
                glide.bestRatio(),
                glide.bestRatioAirspeedMPerS(),
                glide.leastSinkMPerS(),
                glide.leastSinkAirspeedMPerS());
    }
}
