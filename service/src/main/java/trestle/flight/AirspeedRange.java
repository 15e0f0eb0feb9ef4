package trestle.flight;

/**
 * Airspeeds from a least to a greatest.
 *
 * @param leastMPerS least airspeed, m/s
 * @param greatestMPerS greatest airspeed, m/s; infinite where there is no bound
 */
public record AirspeedRange(double leastMPerS, double greatestMPerS) {
    /** Every airspeed. */
    public static final AirspeedRange ALL = new AirspeedRange(0, Double.POSITIVE_INFINITY);

    /**
     * Whether an airspeed is inside, ends included.
     *
     * @param airspeedMPerS airspeed, m/s
     * @return true inside
     */
    public boolean contains(double airspeedMPerS) {
        return airspeedMPerS >= leastMPerS && airspeedMPerS <= greatestMPerS;
    }
}
