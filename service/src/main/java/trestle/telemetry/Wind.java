package trestle.telemetry;

/**
 * The wind that a flight met on the mean.
 *
 * @param northMPerS velocity of the air to the north, m/s
 * @param eastMPerS velocity of the air to the east, m/s
 * @param speedDeviationMPerS standard deviation of its speed, m/s
 * @param scatterMPerS standard deviation of one sample from the fit, m/s
 * @param byAirspeed whether the airspeed was recorded; otherwise it was taken as constant
 */
public record Wind(
        double northMPerS, double eastMPerS, double speedDeviationMPerS, double scatterMPerS, boolean byAirspeed) {
    /**
     * Speed.
     *
     * @return wind speed, m/s
     */
    public double speedMPerS() {
        return Math.hypot(northMPerS, eastMPerS);
    }

    /**
     * Where it blows from.
     *
     * @return direction, rad from north clockwise, 0 to 2π
     */
    public double fromRad() {
        double from = Math.atan2(-eastMPerS, -northMPerS);
        return from < 0 ? from + 2 * Math.PI : from;
    }
}
