package trestle.endpoint;

import static trestle.api.model.LaunchKind.BUNGEE;
import static trestle.api.model.LaunchKind.CATAPULT;
import static trestle.api.model.LaunchKind.DOLLY;
import static trestle.api.model.LaunchKind.HAND;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import trestle.api.model.Launch;
import trestle.api.model.LaunchKind;

/** Which fields a launch needs and which it takes, by its kind; height is for all of them. */
final class LaunchFields {
    private static final List<Field> FIELDS = List.of(
            needed("release_speed_m_per_s", Launch::releaseSpeedMPerS, HAND, CATAPULT),
            usual("angle_deg", Launch::angleDeg, Launch.DEFAULT_ANGLE_DEG, HAND, BUNGEE, CATAPULT),
            usual("motor_delay_s", Launch::motorDelayS, Launch.DEFAULT_MOTOR_DELAY_S, HAND, BUNGEE, CATAPULT),
            taken("lift_off_airspeed_m_per_s", Launch::liftOffAirspeedMPerS, DOLLY),
            usual("rolling_resistance", Launch::rollingResistance, Launch.DEFAULT_ROLLING_RESISTANCE, DOLLY),
            usual("roll_lift_coefficient", Launch::rollLiftCoefficient, Launch.DEFAULT_ROLL_LIFT_COEFFICIENT, DOLLY),
            usual("dolly_mass_g", Launch::dollyMassG, Launch.DEFAULT_DOLLY_MASS_G, DOLLY),
            needed("stiffness_n_per_m", Launch::stiffnessNPerM, BUNGEE),
            needed("stretch_m", Launch::stretchM, BUNGEE),
            usual("cord_mass_g", Launch::cordMassG, Launch.DEFAULT_CORD_MASS_G, BUNGEE),
            usual("energy_return_percent", Launch::energyReturnPercent, Launch.DEFAULT_ENERGY_RETURN_PERCENT, BUNGEE),
            usual("sliding_friction", Launch::slidingFriction, Launch.DEFAULT_SLIDING_FRICTION, BUNGEE),
            needed("rail_length_m", Launch::railLengthM, CATAPULT));

    private LaunchFields() {}

    private record Field(
            String name,
            Function<Launch, Object> value,
            Optional<Object> usual,
            Set<LaunchKind> kinds,
            boolean needed) {
        /** Whether it was given; generated clients send every default, which asks for nothing. */
        private boolean given(Object sent) {
            return sent != null && !usual.equals(Optional.of(sent));
        }
    }

    private static Field needed(String name, Function<Launch, Object> value, LaunchKind... kinds) {
        return new Field(name, value, Optional.empty(), Set.of(kinds), true);
    }

    private static Field taken(String name, Function<Launch, Object> value, LaunchKind... kinds) {
        return new Field(name, value, Optional.empty(), Set.of(kinds), false);
    }

    private static Field usual(String name, Function<Launch, Object> value, Object usual, LaunchKind... kinds) {
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
    static boolean fit(Launch launch, String at, Reading reading) {
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
