package trestle.flight;

/** Where the power of steady flight comes from: a polar, a measured curve or a calibration. */
public sealed interface PowerSource permits PolarPower, MeasuredPower, CalibratedPower {
    /**
     * Pack power in steady flight, systems included.
     *
     * @param airframe the aircraft
     * @param densityKgPerM3 density, kg/m³
     * @param airspeedMPerS airspeed, m/s, above 0
     * @param climbRateMPerS rate of climb, m/s; 0 in level flight
     * @return power, W; infinite where the propulsion cannot make the thrust
     */
    double powerW(Airframe airframe, double densityKgPerM3, double airspeedMPerS, double climbRateMPerS);

    /**
     * The part of the pack power that does not go into thrust.
     *
     * @return power, W
     */
    double systemsPowerW();

    /**
     * The airspeeds that the source speaks for; outside them it extrapolates.
     *
     * @param airframe the aircraft
     * @param densityKgPerM3 density, kg/m³
     * @return the range
     */
    AirspeedRange validAirspeeds(Airframe airframe, double densityKgPerM3);
}
