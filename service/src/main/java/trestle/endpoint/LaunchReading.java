package trestle.endpoint;

import static trestle.api.model.LaunchKind.BUNGEE;
import static trestle.api.model.LaunchKind.CATAPULT;
import static trestle.api.model.LaunchKind.DOLLY;
import static trestle.api.model.LaunchKind.HAND;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import trestle.api.model.LaunchKind;
import trestle.launch.Launch;
import trestle.units.Angle;
import trestle.units.Mass;
import trestle.units.Share;

/**
 * Reads how an aircraft gets away: which fields a launch takes depends on its kind.
 *
 * @param launch of the request
 * @param at JSON Pointer of the launch
 * @param reading notes defaults and contradictions
 */
record LaunchReading(trestle.api.model.Launch launch, String at, Reading reading) {
    private static final String NOT_GIVEN = "the request gives none";
    private static final String USUAL = "the request gives none; common practice, no source";

    /** Where an aircraft leaves its dolly when nothing is said: common practice, no source. */
    private static final double LIFT_OFF_IN_STALL_SPEEDS = 1.2;

    private static final List<Field> FIELDS =
            List.of(
                    new Field(
                            "release_speed_m_per_s",
                            trestle.api.model.Launch::releaseSpeedMPerS,
                            Set.of(HAND, CATAPULT),
                            true),
                    new Field(
                            "angle_deg",
                            trestle.api.model.Launch::angleDeg,
                            Set.of(HAND, BUNGEE, CATAPULT),
                            false),
                    new Field(
                            "motor_delay_s",
                            trestle.api.model.Launch::motorDelayS,
                            Set.of(HAND, BUNGEE, CATAPULT),
                            false),
                    new Field(
                            "lift_off_airspeed_m_per_s",
                            trestle.api.model.Launch::liftOffAirspeedMPerS,
                            Set.of(DOLLY),
                            false),
                    new Field(
                            "rolling_resistance",
                            trestle.api.model.Launch::rollingResistance,
                            Set.of(DOLLY),
                            false),
                    new Field(
                            "roll_lift_coefficient",
                            trestle.api.model.Launch::rollLiftCoefficient,
                            Set.of(DOLLY),
                            false),
                    new Field(
                            "dolly_mass_g",
                            trestle.api.model.Launch::dollyMassG,
                            Set.of(DOLLY),
                            false),
                    new Field(
                            "stiffness_n_per_m",
                            trestle.api.model.Launch::stiffnessNPerM,
                            Set.of(BUNGEE),
                            true),
                    new Field(
                            "stretch_m", trestle.api.model.Launch::stretchM, Set.of(BUNGEE), true),
                    new Field(
                            "cord_mass_g",
                            trestle.api.model.Launch::cordMassG,
                            Set.of(BUNGEE),
                            false),
                    new Field(
                            "energy_return_percent",
                            trestle.api.model.Launch::energyReturnPercent,
                            Set.of(BUNGEE),
                            false),
                    new Field(
                            "sliding_friction",
                            trestle.api.model.Launch::slidingFriction,
                            Set.of(BUNGEE),
                            false),
                    new Field(
                            "rail_length_m",
                            trestle.api.model.Launch::railLengthM,
                            Set.of(CATAPULT),
                            true));

    /** A field, the kinds of launch that take it, and whether they need it. */
    private record Field(
            String name,
            Function<trestle.api.model.Launch, Object> value,
            Set<LaunchKind> kinds,
            boolean needed) {}

    /**
     * The launch.
     *
     * @param stallSpeedMPerS stall speed in level flight, m/s
     * @return the launch; empty where a contradiction was noted
     */
    Optional<Launch> launch(double stallSpeedMPerS) {
        if (!fieldsFit()) {
            return Optional.empty();
        }
        return Optional.of(
                switch (launch.kind()) {
                    case HAND ->
                            new Launch.Hand(
                                    launch.releaseSpeedMPerS(), angleRad(), releaseHeightM(1.8));
                    case DOLLY -> dolly(stallSpeedMPerS);
                    case BUNGEE -> bungee();
                    case CATAPULT ->
                            new Launch.Catapult(
                                    launch.releaseSpeedMPerS(),
                                    launch.railLengthM(),
                                    angleRad(),
                                    releaseHeightM(1));
                });
    }

    /**
     * Time from release until the motor pulls; a dolly has it on from the start.
     *
     * @return time, s
     */
    double motorDelayS() {
        return launch.kind() == DOLLY
                ? 0
                : reading.orDefault(
                        launch.motorDelayS(),
                        trestle.api.model.Launch.DEFAULT_MOTOR_DELAY_S,
                        at + "/motor_delay_s",
                        USUAL);
    }

    private boolean fieldsFit() {
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

    private Launch dolly(double stallSpeedMPerS) {
        return new Launch.Dolly(
                liftOffAirspeedMPerS(stallSpeedMPerS),
                reading.orDefault(
                        launch.rollingResistance(),
                        trestle.api.model.Launch.DEFAULT_ROLLING_RESISTANCE,
                        at + "/rolling_resistance",
                        USUAL),
                reading.orDefault(
                        launch.rollLiftCoefficient(),
                        trestle.api.model.Launch.DEFAULT_ROLL_LIFT_COEFFICIENT,
                        at + "/roll_lift_coefficient",
                        USUAL),
                Mass.kgFromG(
                        reading.orDefault(
                                launch.dollyMassG(),
                                trestle.api.model.Launch.DEFAULT_DOLLY_MASS_G,
                                at + "/dolly_mass_g",
                                NOT_GIVEN)),
                releaseHeightM(0.3));
    }

    private double liftOffAirspeedMPerS(double stallSpeedMPerS) {
        Double given = launch.liftOffAirspeedMPerS();
        if (given != null) {
            return given;
        }
        double usual = LIFT_OFF_IN_STALL_SPEEDS * stallSpeedMPerS;
        reading.assume(
                at + "/lift_off_airspeed_m_per_s",
                String.format(java.util.Locale.ROOT, "%.1f m/s, 1.2 stall speeds", usual),
                USUAL);
        return usual;
    }

    private Launch bungee() {
        return new Launch.Bungee(
                launch.stiffnessNPerM(),
                launch.stretchM(),
                Mass.kgFromG(
                        reading.orDefault(
                                launch.cordMassG(),
                                trestle.api.model.Launch.DEFAULT_CORD_MASS_G,
                                at + "/cord_mass_g",
                                NOT_GIVEN)),
                Share.fractionFromPercent(
                        reading.orDefault(
                                launch.energyReturnPercent(),
                                trestle.api.model.Launch.DEFAULT_ENERGY_RETURN_PERCENT,
                                at + "/energy_return_percent",
                                USUAL)),
                reading.orDefault(
                        launch.slidingFriction(),
                        trestle.api.model.Launch.DEFAULT_SLIDING_FRICTION,
                        at + "/sliding_friction",
                        USUAL),
                angleRad(),
                releaseHeightM(0.5));
    }

    private double angleRad() {
        return Angle.radFromDeg(
                reading.orDefault(
                        launch.angleDeg(),
                        trestle.api.model.Launch.DEFAULT_ANGLE_DEG,
                        at + "/angle_deg",
                        NOT_GIVEN));
    }

    private double releaseHeightM(double usualM) {
        return reading.orDefault(launch.releaseHeightM(), usualM, at + "/release_height_m", USUAL);
    }
}
