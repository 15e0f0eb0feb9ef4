package trestle.endpoint;

import trestle.api.model.Judgement;
import trestle.api.model.LaunchOutcome;
import trestle.api.model.LaunchResult;
import trestle.api.model.LaunchStallAnswer;
import trestle.api.model.SteadyClimb;
import trestle.api.model.SteadyGlide;
import trestle.launch.Climb;
import trestle.launch.Glide;
import trestle.launch.LaunchFlight;
import trestle.launch.LaunchStallResult;
import trestle.units.Angle;
import trestle.units.Share;

/** Writes stall, launch and what follows into their answer. */
final class LaunchWriting {
    private LaunchWriting() {}

    static LaunchStallAnswer write(LaunchStallResult result, Judgement judgement) {
        return LaunchStallAnswer.builder()
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

    private static LaunchResult launch(LaunchFlight launch) {
        boolean run = launch.groundRunM().isPresent();
        return LaunchResult.builder()
                .outcome(LaunchOutcome.valueOf(launch.outcome().name()))
                .releaseAirspeedMPerS(launch.releaseAirspeedMPerS())
                .marginPercent(Share.percentFromFraction(launch.marginFraction()))
                .heightLostM(launch.heightLostM())
                .timeToSafeSpeedS(Writing.boxed(launch.timeToSafeSpeedS()))
                .groundRunM(Writing.boxed(launch.groundRunM()))
                .runTimeS(run ? launch.runTimeS() : null)
                .meanAccelerationMPerS2(Writing.boxed(launch.meanAccelerationMPerS2()))
                .build();
    }

    private static SteadyClimb climb(Climb climb) {
        return new SteadyClimb(climb.airspeedMPerS(), climb.rateMPerS(), Angle.degFromRad(climb.angleRad()));
    }

    private static SteadyGlide glide(Glide glide) {
        return new SteadyGlide(
                glide.bestRatio(),
                glide.bestRatioAirspeedMPerS(),
                glide.leastSinkMPerS(),
                glide.leastSinkAirspeedMPerS());
    }
}
