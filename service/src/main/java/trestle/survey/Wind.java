package trestle.survey;

import trestle.numeric.Guard;

/**
 * A steady wind.
 *
 * @param speedMPerS speed, m/s, not negative
 * @param fromRad direction that it comes from, clockwise from north, rad
 */
public record Wind(double speedMPerS, double fromRad) {
    /** No wind. */
    public static final Wind STILL = new Wind(0, 0);

    /** Checks the physics. */
    public Wind {
        Guard.notNegative("speedMPerS", speedMPerS);
        Guard.finite("fromRad", fromRad);
    }

    /**
     * Speed over the ground along a track, by the wind triangle.
     *
     * @param airspeedMPerS airspeed, m/s
     * @param trackRad direction over the ground, clockwise from north, rad
     * @return ground speed, m/s; 0 or below where the track cannot be held
     */
    double groundMPerS(double airspeedMPerS, double trackRad) {
        double across = speedMPerS * Math.sin(fromRad - trackRad);
        double against = speedMPerS * Math.cos(fromRad - trackRad);
        return Math.abs(across) >= airspeedMPerS
                ? 0
                : Math.sqrt(airspeedMPerS * airspeedMPerS - across * across) - against;
    }
}
