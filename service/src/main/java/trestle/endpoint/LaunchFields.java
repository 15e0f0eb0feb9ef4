package trestle.endpoint;

import static trestle.api.model.LaunchKind.BUNGEE;
import static trestle.api.model.LaunchKind.CATAPULT;
import static trestle.api.model.LaunchKind.DOLLY;
import static trestle.api.model.LaunchKind.HAND;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import trestle.api.model.Launch;
import trestle.api.model.LaunchKind;

/** Which fields a launch needs and which it takes, by its kind; height is for all of them. */
final class LaunchFields {
    private static final List<Field> FIELDS =
            List.of(
                    needed("release_speed_m_per_s", Launch::releaseSpeedMPerS, HAND, CATAPULT),
                    taken("angle_deg", Launch::angleDeg, HAND, BUNGEE, CATAPULT),
                    taken("motor_delay_s", Launch::motorDelayS, HAND, BUNGEE, CATAPULT),
                    taken("lift_off_airspeed_m_per_s", Launch::liftOffAirspeedMPerS, DOLLY),
                    taken("rolling_resistance", Launch::rollingResistance, DOLLY),
                    taken("roll_lift_coefficient", Launch::rollLiftCoefficient, DOLLY),
                    taken("dolly_mass_g", Launch::dollyMassG, DOLLY),
                    needed("stiffness_n_per_m", Launch::stiffnessNPerM, BUNGEE),
                    needed("stretch_m", Launch::stretchM, BUNGEE),
                    taken("cord_mass_g", Launch::cordMassG, BUNGEE),
                    taken("energy_return_percent", Launch::energyReturnPercent, BUNGEE),
                    taken("sliding_friction", Launch::slidingFriction, BUNGEE),
                    needed("rail_length_m", Launch::railLengthM, CATAPULT));

    private LaunchFields() {}

    private record Field(
            String name, Function<Launch, Object> value, Set<LaunchKind> kinds, boolean needed) {}

    private static Field needed(String name, Function<Launch, Object> value, LaunchKind... kinds) {
        return new Field(name, value, Set.of(kinds), true);
    }

    private static Field taken(String name, Function<Launch, Object> value, LaunchKind... kinds) {
        return new Field(name, value, Set.of(kinds), false);
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
                fit &= reading.takesNo(what, at, field.name(), value);
            } else if (field.needed()) {
                fit &= reading.needs(what, at, field.name(), value);
            }
        }
        return fit;
    }
}
