package trestle.flight;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;
import trestle.numeric.Guard;

/**
 * Where and in what weather the aircraft flies.
 *
 * @param altitudeM geopotential altitude above sea level, m, −1000 to 20 000
 * @param temperatureK air temperature, K; empty for the standard one at the altitude
 * @param pressurePa static pressure, Pa; empty for the standard one at the altitude
 */
public record Conditions(double altitudeM, OptionalDouble temperatureK, OptionalDouble pressurePa) {
    /** Checks the physics: air that an aircraft may meet. */
    public Conditions {
        Guard.within(
                "altitudeM", altitudeM, StandardAtmosphere.LOWEST_ALTITUDE_M, StandardAtmosphere.HIGHEST_ALTITUDE_M);
        temperatureK.ifPresent(t -> Guard.within("temperatureK", t, 180, 340));
        pressurePa.ifPresent(p -> Guard.within("pressurePa", p, 4_000, 115_000));
    }

    /**
     * Standard air at an altitude.
     *
     * @param altitudeM geopotential altitude, m
     * @return the conditions
     */
    public static Conditions standard(double altitudeM) {
        return new Conditions(altitudeM, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * The air: what is given stands, the standard atmosphere at the altitude fills the rest.
     *
     * @return its state
     */
    public AirState air() {
        return new AirState(
                temperatureK.orElseGet(() -> StandardAtmosphere.temperatureK(altitudeM)),
                pressurePa.orElseGet(() -> StandardAtmosphere.pressurePa(altitudeM)));
    }
}
