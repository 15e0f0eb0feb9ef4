package trestle.endpoint.launch;

import java.util.Map;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiLaunchAndClimbAnswer;
import trestle.api.model.ApiLaunchOutcome;
import trestle.api.model.ApiLaunchResult;
import trestle.api.model.ApiNeededLaunch;
import trestle.api.model.ApiSteadyClimb;
import trestle.api.model.ApiSteadyGlide;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Writing;
import trestle.launch.Climb;
import trestle.launch.Glide;
import trestle.launch.LaunchAndClimbResult;
import trestle.launch.LaunchFlight;
import trestle.launch.Needed;
import trestle.units.Angle;
import trestle.units.Share;

/** Writes stall, launch and what follows into their answer. */
public final class LaunchWriting {
    private LaunchWriting() {}

    /**
     * The numbers that carry a band.
     *
     * @param result the launch
     * @param figures takes each under its name
     */
    public static void figures(LaunchAndClimbResult result, Map<MainFigure, Double> figures) {
        figures.put(MainFigure.STALL_SPEED, result.stallSpeedMPerS());
        figures.put(MainFigure.CLIMB_RATE, result.climb().rateMPerS());
        figures.put(
                MainFigure.LAUNCH_MARGIN,
                Share.percentFromFraction(result.launch().marginFraction()));
    }

    public static ApiLaunchAndClimbAnswer write(LaunchAndClimbResult result, ApiJudgement judgement) {
        return ApiLaunchAndClimbAnswer.builder()
                .judgement(judgement)
                .stallSpeedMPerS(result.stallSpeedMPerS())
                .stallSpeedBankedMPerS(result.stallSpeedTurningMPerS())
                .climbSpeedMPerS(result.climbSpeedMPerS())
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
                .releaseAirspeedInLullMPerS(launch.releaseAirspeedInLullMPerS())
                .launchWindMPerS(launch.meanWindMPerS())
                .launchLullMPerS(launch.lullMPerS())
                .marginPercent(Share.percentFromFraction(launch.marginFraction()))
                .heightLostM(launch.heightLostM())
                .timeToClimbSpeedS(Writing.boxed(launch.timeToClimbSpeedS()))
                .groundRunM(Writing.boxed(launch.groundRunM()))
                .runTimeS(run ? launch.runTimeS() : null)
                .meanAccelerationMPerS2(Writing.boxed(launch.meanAccelerationMPerS2()))
                .meanLoadFactor(launch.loads().meanLoadFactor())
                .peakLoadFactor(launch.loads().peakLoadFactor())
                .hookForceN(Writing.boxed(launch.loads().hookForceN()))
                .cordEnergyJ(Writing.boxed(launch.loads().cordEnergyJ()))
                .needed(needed(launch.needed()))
                .build();
    }

    private static ApiNeededLaunch needed(Needed needed) {
        return ApiNeededLaunch.builder()
                .releaseSpeedMPerS(Writing.boxed(needed.releaseSpeedMPerS()))
                .stretchM(Writing.boxed(needed.stretchM()))
                .windMPerS(Writing.boxed(needed.windMPerS()))
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
