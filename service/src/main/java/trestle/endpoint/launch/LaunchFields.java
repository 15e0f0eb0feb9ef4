package trestle.endpoint.launch;

import static trestle.api.model.ApiLaunchKind.BUNGEE;
import static trestle.api.model.ApiLaunchKind.CATAPULT;
import static trestle.api.model.ApiLaunchKind.DOLLY;
import static trestle.api.model.ApiLaunchKind.HAND;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import trestle.api.model.ApiLaunch;
import trestle.api.model.ApiLaunchKind;
import trestle.endpoint.Reading;

/** Which fields a launch needs and which it takes, by its kind; height is for all of them. */
public final class LaunchFields {
    private static final List<Field> FIELDS = List.of(
            needed("release_speed_m_per_s", ApiLaunch::releaseSpeedMPerS, HAND, CATAPULT),
            usual("angle_deg", ApiLaunch::angleDeg, ApiLaunch.ANGLE_DEG.fallback(), HAND, BUNGEE, CATAPULT),
            usual("motor_delay_s", ApiLaunch::motorDelayS, ApiLaunch.MOTOR_DELAY_S.fallback(), HAND, BUNGEE, CATAPULT),
            taken("lift_off_airspeed_m_per_s", ApiLaunch::liftOffAirspeedMPerS, DOLLY),
            usual("rolling_resistance", ApiLaunch::rollingResistance, ApiLaunch.ROLLING_RESISTANCE.fallback(), DOLLY),
            usual(
                    "roll_lift_coefficient",
                    ApiLaunch::rollLiftCoefficient,
                    ApiLaunch.ROLL_LIFT_COEFFICIENT.fallback(),
                    DOLLY),
            usual("dolly_mass_g", ApiLaunch::dollyMassG, ApiLaunch.DOLLY_MASS_G.fallback(), DOLLY),
            needed("stiffness_n_per_m", ApiLaunch::stiffnessNPerM, BUNGEE),
            needed("stretch_m", ApiLaunch::stretchM, BUNGEE),
            usual("cord_mass_g", ApiLaunch::cordMassG, ApiLaunch.CORD_MASS_G.fallback(), BUNGEE),
            usual(
                    "energy_return_percent",
                    ApiLaunch::energyReturnPercent,
                    ApiLaunch.ENERGY_RETURN_PERCENT.fallback(),
                    BUNGEE),
            usual("sliding_friction", ApiLaunch::slidingFriction, ApiLaunch.SLIDING_FRICTION.fallback(), BUNGEE),
            needed("rail_length_m", ApiLaunch::railLengthM, CATAPULT));

    private LaunchFields() {}

    private record Field(
            String name,
            Function<ApiLaunch, Object> value,
            Optional<Object> usual,
            Set<ApiLaunchKind> kinds,
            boolean needed) {
        /** Whether it was given; generated clients send every default, which asks for nothing. */
        private boolean given(Object sent) {
            return sent != null && !usual.equals(Optional.of(sent));
        }
    }

    private static Field needed(String name, Function<ApiLaunch, Object> value, ApiLaunchKind... kinds) {
        return new Field(name, value, Optional.empty(), Set.of(kinds), true);
    }

    private static Field taken(String name, Function<ApiLaunch, Object> value, ApiLaunchKind... kinds) {
        return new Field(name, value, Optional.empty(), Set.of(kinds), false);
    }

    private static Field usual(String name, Function<ApiLaunch, Object> value, Object usual, ApiLaunchKind... kinds) {
        return new Field(name, value, Optional.of(usual), Set.of(kinds), false);
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
        String what = "a " + launch.kind() + " launch";
        boolean fit = true;
        for (Field field : FIELDS) {
            Object value = field.value().apply(launch);
            if (!field.kinds().contains(launch.kind())) {
                fit &= reading.takesNo(what, at, field.name(), field.given(value) ? value : null);
            } else if (field.needed()) {
                fit &= reading.needs(what, at, field.name(), value);
            }
        }
        return fit;
    }
}
