package trestle.endpoint.airframeloads;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiAirframeLoadsRequest;
import trestle.api.model.ApiLoadsLaunch;
import trestle.api.model.ApiLoadsLaunchKind;
import trestle.atmosphere.StandardAtmosphere;
import trestle.endpoint.Reading;
import trestle.structure.Flight;
import trestle.structure.LaunchPull;
import trestle.units.Angle;

/** Reads what a launch pulls. */
final class PullReading {
    /** What an aircraft is good for along the launch; common practice, no source. */
    private static final double USUAL_LOAD_FACTOR = 5;

    private static final String NOT_GIVEN = "the request gives none; common practice, no source";
    private static final String AT = ApiAirframeLoadsRequest.LAUNCH.at("");

    private PullReading() {}

    static Optional<LaunchPull> launch(ApiLoadsLaunch launch, double massKg, Reading reading) {
        if (launch == null || !fields(launch, reading)) {
            return Optional.empty();
        }
        double weightN = massKg * StandardAtmosphere.GRAVITY_M_PER_S2;
        double slope = Math.sin(
                Angle.radFromDeg(reading.orDefault(launch.angleDeg(), ApiLoadsLaunch.ANGLE_DEG, AT, NOT_GIVEN)));
        return Optional.of(
                switch (launch.kind()) {
                    case HAND -> {
                        double way =
                                reading.orDefault(launch.handTravelM(), ApiLoadsLaunch.HAND_TRAVEL_M, AT, NOT_GIVEN);
                        double pull = Flight.pull(launch.releaseSpeedMPerS(), way);
                        yield pull(launch, pull, pull + slope, OptionalDouble.empty());
                    }
                    case CATAPULT -> {
                        double mean = Flight.pull(launch.releaseSpeedMPerS(), launch.railLengthM());
                        double peak = slope
                                + mean
                                        * reading.orDefault(
                                                launch.peakFactor(), ApiLoadsLaunch.PEAK_FACTOR, AT, NOT_GIVEN);
                        yield pull(launch, mean, peak, OptionalDouble.of(weightN * peak));
                    }
                    case BUNGEE -> {
                        double force = launch.stiffnessNPerM() * launch.stretchM();
                        yield pull(launch, force / weightN / 2, force / weightN, OptionalDouble.of(force));
                    }
                });
    }

    private static LaunchPull pull(ApiLoadsLaunch launch, double mean, double peak, OptionalDouble hookN) {
        return new LaunchPull(
                launch.kind().toString(),
                mean,
                peak,
                hookN,
                Reading.or(launch.maxLoadFactor(), USUAL_LOAD_FACTOR),
                launch.maxLoadFactor() != null,
                Reading.optional(launch.maxHookForceN()));
    }

    private static boolean fields(ApiLoadsLaunch launch, Reading reading) {
        String what = "a " + launch.kind() + " launch";
        boolean bungee = launch.kind() == ApiLoadsLaunchKind.BUNGEE;
        boolean sound = bungee
                ? reading.needs(what, AT, ApiLoadsLaunch.STIFFNESS_N_PER_M.name(), launch.stiffnessNPerM())
                        & reading.needs(what, AT, ApiLoadsLaunch.STRETCH_M.name(), launch.stretchM())
                        & reading.takesNo(what, AT, ApiLoadsLaunch.RELEASE_SPEED_M_PER_S, launch.releaseSpeedMPerS())
                : reading.needs(what, AT, ApiLoadsLaunch.RELEASE_SPEED_M_PER_S.name(), launch.releaseSpeedMPerS())
                        & reading.takesNo(what, AT, ApiLoadsLaunch.STIFFNESS_N_PER_M, launch.stiffnessNPerM())
                        & reading.takesNo(what, AT, ApiLoadsLaunch.STRETCH_M, launch.stretchM());
        boolean rail = launch.kind() == ApiLoadsLaunchKind.CATAPULT
                ? reading.needs(what, AT, ApiLoadsLaunch.RAIL_LENGTH_M.name(), launch.railLengthM())
                : reading.takesNo(what, AT, ApiLoadsLaunch.RAIL_LENGTH_M, launch.railLengthM());
        return sound && rail;
    }
}
