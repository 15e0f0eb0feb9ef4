package trestle.wiring;

import java.util.OptionalDouble;
import trestle.atmosphere.StandardAtmosphere;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * Where a wire lies.
 *
 * @param enclosure what surrounds it
 * @param ambientTemperatureK outside air, K, 193 to 473
 * @param bayTemperatureK air of the bay, K, where known; used in a still bay only
 * @param altitudeM geopotential altitude, m, −1000 to 20 000; it sets the air's pressure
 * @param bundledConductors conductors lying together that carry this current, this one included, at
 *     least 1
 * @param foamWallM foam between wire and outside, m, above 0; used in a foam channel only
 */
public record Surroundings(
        Enclosure enclosure,
        double ambientTemperatureK,
        OptionalDouble bayTemperatureK,
        double altitudeM,
        int bundledConductors,
        double foamWallM) {
    /** How much warmer than outside a closed bay is taken, K. Common practice, no source. */
    public static final double BAY_RISE_K = 10;

    /** Foam wall where none is known, m. Common practice, no source. */
    public static final double USUAL_FOAM_WALL_M = 20e-3;

    private static final double COLDEST_K = 193.15;
    private static final double HOTTEST_K = 473.15;

    /** Checks the physics. */
    public Surroundings {
        Guard.present("enclosure", enclosure);
        Guard.within("ambientTemperatureK", ambientTemperatureK, COLDEST_K, HOTTEST_K);
        Guard.present("bayTemperatureK", bayTemperatureK)
                .ifPresent(t -> Guard.within("bayTemperatureK", t, COLDEST_K, HOTTEST_K));
        Guard.within(
                "altitudeM", altitudeM, StandardAtmosphere.LOWEST_ALTITUDE_M, StandardAtmosphere.HIGHEST_ALTITUDE_M);
        if (bundledConductors < 1) {
            throw new ImpossibleValue(
                    "bundledConductors", "bundledConductors is " + bundledConductors + ", and must be at least 1");
        }
        Guard.positive("foamWallM", foamWallM);
    }

    /**
     * A wire on its own in open air.
     *
     * @param ambientTemperatureK outside air, K
     * @param altitudeM geopotential altitude, m
     * @return the surroundings
     */
    public static Surroundings freeAir(double ambientTemperatureK, double altitudeM) {
        return new Surroundings(
                Enclosure.FREE_AIR, ambientTemperatureK, OptionalDouble.empty(), altitudeM, 1, USUAL_FOAM_WALL_M);
    }

    /**
     * The temperature that the heat flows to: the bay's air in a still bay (given, or outside air
     * plus {@link #BAY_RISE_K}), else outside air.
     *
     * @return temperature, K
     */
    public double sinkTemperatureK() {
        return enclosure == Enclosure.STILL_BAY
                ? bayTemperatureK.orElse(ambientTemperatureK + BAY_RISE_K)
                : ambientTemperatureK;
    }

    /**
     * The same place with at least so many conductors together.
     *
     * @param least conductors, at least 1
     * @return the surroundings
     */
    Surroundings bundledAtLeast(int least) {
        return least <= bundledConductors
                ? this
                : new Surroundings(enclosure, ambientTemperatureK, bayTemperatureK, altitudeM, least, foamWallM);
    }

    /**
     * The same place with still air all round the wire.
     *
     * @return the surroundings
     */
    Surroundings inStillBay() {
        return new Surroundings(
                Enclosure.STILL_BAY, ambientTemperatureK, bayTemperatureK, altitudeM, bundledConductors, foamWallM);
    }
}
