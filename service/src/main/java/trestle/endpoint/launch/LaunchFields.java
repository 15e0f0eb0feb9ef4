package trestle.endpoint.launch;

import static trestle.api.model.ApiLaunchKind.BUNGEE;
import static trestle.api.model.ApiLaunchKind.CATAPULT;
import static trestle.api.model.ApiLaunchKind.DOLLY;
import static trestle.api.model.ApiLaunchKind.HAND;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import trestle.api.Field;
import trestle.api.model.ApiLaunch;
import trestle.api.model.ApiLaunchKind;
import trestle.endpoint.Reading;

/** Which fields a launch needs and which it takes, by its kind; height, wind and load factor are for all of them. */
public final class LaunchFields {
    private static final List<Use<?>> USES = List.of(
            needed(ApiLaunch.RELEASE_SPEED_M_PER_S, ApiLaunch::releaseSpeedMPerS, HAND, CATAPULT),
            taken(ApiLaunch.ANGLE_DEG, ApiLaunch::angleDeg, HAND, BUNGEE, CATAPULT),
            taken(ApiLaunch.MOTOR_DELAY_S, ApiLaunch::motorDelayS, HAND, BUNGEE, CATAPULT),
            taken(ApiLaunch.LIFT_OFF_AIRSPEED_M_PER_S, ApiLaunch::liftOffAirspeedMPerS, DOLLY),
            taken(ApiLaunch.ROLLING_RESISTANCE, ApiLaunch::rollingResistance, DOLLY),
            taken(ApiLaunch.ROLL_LIFT_COEFFICIENT, ApiLaunch::rollLiftCoefficient, DOLLY),
            taken(ApiLaunch.DOLLY_MASS_G, ApiLaunch::dollyMassG, DOLLY),
            needed(ApiLaunch.STIFFNESS_N_PER_M, ApiLaunch::stiffnessNPerM, BUNGEE),
            needed(ApiLaunch.STRETCH_M, ApiLaunch::stretchM, BUNGEE),
            taken(ApiLaunch.CORD_MASS_G, ApiLaunch::cordMassG, BUNGEE),
            taken(ApiLaunch.ENERGY_RETURN_PERCENT, ApiLaunch::energyReturnPercent, BUNGEE),
            taken(ApiLaunch.SLIDING_FRICTION, ApiLaunch::slidingFriction, BUNGEE),
            needed(ApiLaunch.RAIL_LENGTH_M, ApiLaunch::railLengthM, CATAPULT),
            taken(ApiLaunch.MAX_HOOK_FORCE_N, ApiLaunch::maxHookForceN, BUNGEE, CATAPULT));

    private LaunchFields() {}

    private record Use<T>(Field<T> field, Function<ApiLaunch, T> value, Set<ApiLaunchKind> kinds, boolean needed) {
        private boolean fits(ApiLaunch launch, String at, Reading reading) {
            String what = "a " + launch.kind() + " launch";
            T sent = value.apply(launch);
            if (!kinds.contains(launch.kind())) {
                return reading.takesNo(what, at, field, sent);
            }
            return !needed || reading.needs(what, at, field.name(), sent);
        }
    }

    private static <T> Use<T> needed(Field<T> field, Function<ApiLaunch, T> value, ApiLaunchKind... kinds) {
        return new Use<>(field, value, Set.of(kinds), true);
    }

    private static <T> Use<T> taken(Field<T> field, Function<ApiLaunch, T> value, ApiLaunchKind... kinds) {
        return new Use<>(field, value, Set.of(kinds), false);
    }

    /**
     * Notes what is missing and what the kind of launch has no use for.
     *
     * @param launch of the request
     * @param at JSON Pointer of the launch
     * @param reading notes contradictions
     * @return whether the fields fit the kind
     */
    static boolean fit(ApiLaunch launch, String at, Reading reading) {
        boolean fit = true;
        for (Use<?> use : USES) {
            fit &= use.fits(launch, at, reading);
        }
        return fit;
    }
}
