package trestle.endpoint.launch;

import java.util.Optional;
import trestle.api.model.ApiLaunch;
import trestle.api.model.ApiLaunchKind;
import trestle.api.model.ApiLaunchWind;
import trestle.api.model.ApiTerrain;
import trestle.endpoint.Reading;
import trestle.launch.Launch;
import trestle.launch.LaunchLimits;
import trestle.launch.LaunchWind;
import trestle.launch.LiftOff;
import trestle.launch.Terrain;
import trestle.units.Angle;
import trestle.units.Mass;
import trestle.units.Share;

/**
 * Reads how an aircraft is launched: which fields a launch takes depends on its kind.
 *
 * @param launch of the request
 * @param at JSON Pointer of the launch
 * @param reading notes defaults and contradictions
 */
public record LaunchReading(ApiLaunch launch, String at, Reading reading) {
    private static final String NOT_GIVEN = "the request gives none";
    private static final String USUAL = "the request gives none; common practice, no source";

    /** Where an aircraft leaves its dolly when nothing is said: common practice, no source. */
    private static final double LIFT_OFF_IN_STALL_SPEEDS = 1.2;

    /**
     * The launch.
     *
     * @return the launch; empty where a contradiction was noted
     */
    public Optional<Launch> read() {
        if (!LaunchFields.fit(launch, at, reading)) {
            return Optional.empty();
        }
        return Optional.of(
                switch (launch.kind()) {
                    case HAND -> new Launch.Hand(launch.releaseSpeedMPerS(), angleRad(), releaseHeightM(1.8));
                    case DOLLY -> dolly();
                    case BUNGEE -> bungee();
                    case CATAPULT ->
                        new Launch.Catapult(
                                launch.releaseSpeedMPerS(), launch.railLengthM(), angleRad(), releaseHeightM(1));
                });
    }

    /**
     * Time from release until the motor pulls; a dolly has it on from the start.
     *
     * @return time, s
     */
    public double motorDelayS() {
        return launch.kind() == ApiLaunchKind.DOLLY
                ? 0
                : reading.orDefault(launch.motorDelayS(), ApiLaunch.MOTOR_DELAY_S, at, USUAL);
    }

    /**
     * What aircraft and hook are good for.
     *
     * @param neverExceedMPerS airspeed never to exceed, m/s, or null
     * @return the limits
     */
    public LaunchLimits limits(Double neverExceedMPerS) {
        return new LaunchLimits(
                Reading.optional(launch.maxLoadFactor()),
                Reading.optional(launch.maxHookForceN()),
                Reading.optional(neverExceedMPerS));
    }

    /**
     * The wind of the launch, still air where none is given.
     *
     * @param flight the flight's headwind, where there is a flight to take it from
     * @return the wind; empty where a contradiction was noted
     */
    public Optional<LaunchWind> wind(Optional<FlightWind> flight) {
        ApiLaunchWind wind = launch.wind();
        String place = ApiLaunch.WIND.at(at);
        if (wind == null) {
            reading.assume(place, "still air", NOT_GIVEN);
            return Optional.of(LaunchWind.STILL);
        }
        boolean fromFlight = Reading.or(wind.fromFlight(), ApiLaunchWind.FROM_FLIGHT);
        return fromFlight ? fromFlight(wind, place, flight) : measured(wind, place);
    }

    private Optional<LaunchWind> measured(ApiLaunchWind wind, String place) {
        if (!reading.needs("a wind that is not the flight's", place, "speed_m_per_s", wind.speedMPerS())) {
            return Optional.empty();
        }
        double heightM = reading.orDefault(wind.heightM(), ApiLaunchWind.HEIGHT_M, place, USUAL);
        return Optional.of(wind(wind, place, wind.speedMPerS(), heightM, false));
    }

    private Optional<LaunchWind> fromFlight(ApiLaunchWind wind, String place, Optional<FlightWind> flight) {
        if (flight.isEmpty()) {
            reading.fault(
                    ApiLaunchWind.FROM_FLIGHT.at(place),
                    "contradiction",
                    "there is no flight here to take the wind from: give speed_m_per_s");
            return Optional.empty();
        }
        if (!reading.takesNo("a wind from the flight", place, "speed_m_per_s", wind.speedMPerS())) {
            return Optional.empty();
        }
        double heightM = reading.orDefault(
                wind.heightM(),
                flight.get().heightM(),
                ApiLaunchWind.HEIGHT_M.at(place),
                "the height of the flight's first leg, or 100 m");
        return Optional.of(wind(wind, place, flight.get().headwindMPerS(), heightM, true));
    }

    private LaunchWind wind(ApiLaunchWind wind, String place, double speedMPerS, double heightM, boolean fromFlight) {
        Terrain terrain = Terrain.valueOf(
                reading.orDefault(wind.terrain(), ApiTerrain.OPEN, ApiLaunchWind.TERRAIN.at(place), NOT_GIVEN)
                        .name());
        return new LaunchWind(
                speedMPerS,
                heightM,
                terrain,
                Reading.optional(wind.gustSpreadPercent(), Share::fractionFromPercent),
                fromFlight);
    }

    private Launch dolly() {
        return new Launch.Dolly(
                liftOff(),
                reading.orDefault(launch.rollingResistance(), ApiLaunch.ROLLING_RESISTANCE, at, USUAL),
                reading.orDefault(launch.rollLiftCoefficient(), ApiLaunch.ROLL_LIFT_COEFFICIENT, at, USUAL),
                Mass.kgFromG(reading.orDefault(launch.dollyMassG(), ApiLaunch.DOLLY_MASS_G, at, NOT_GIVEN)),
                releaseHeightM(0.3));
    }

    private LiftOff liftOff() {
        Double given = launch.liftOffAirspeedMPerS();
        if (given != null) {
            return new LiftOff.Airspeed(given);
        }
        reading.assume(ApiLaunch.LIFT_OFF_AIRSPEED_M_PER_S.at(at), "1.2 stall speeds", USUAL);
        return new LiftOff.StallSpeeds(LIFT_OFF_IN_STALL_SPEEDS);
    }

    private Launch bungee() {
        return new Launch.Bungee(
                launch.stiffnessNPerM(),
                launch.stretchM(),
                Mass.kgFromG(reading.orDefault(launch.cordMassG(), ApiLaunch.CORD_MASS_G, at, NOT_GIVEN)),
                Share.fractionFromPercent(
                        reading.orDefault(launch.energyReturnPercent(), ApiLaunch.ENERGY_RETURN_PERCENT, at, USUAL)),
                reading.orDefault(launch.slidingFriction(), ApiLaunch.SLIDING_FRICTION, at, USUAL),
                angleRad(),
                releaseHeightM(0.5));
    }

    private double angleRad() {
        return Angle.radFromDeg(reading.orDefault(launch.angleDeg(), ApiLaunch.ANGLE_DEG, at, NOT_GIVEN));
    }

    private double releaseHeightM(double usualM) {
        return reading.orDefault(launch.releaseHeightM(), usualM, ApiLaunch.RELEASE_HEIGHT_M.at(at), USUAL);
    }
}
