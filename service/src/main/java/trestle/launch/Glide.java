package trestle.launch;

import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.flight.LevelFlight;

/**
 * Gliding with the motor off, at 1.2 stall speeds or more.
 *
 * @param bestRatio distance over height of the flattest glide
 * @param bestRatioAirspeedMPerS its airspeed, m/s
 * @param leastSinkMPerS least rate of sink, m/s
 * @param leastSinkAirspeedMPerS its airspeed, m/s
 */
public record Glide(
        double bestRatio, double bestRatioAirspeedMPerS, double leastSinkMPerS, double leastSinkAirspeedMPerS) {
    /** Glides keep this many stall speeds: common practice, no source. */
    private static final double FLOOR_IN_STALL_SPEEDS = 1.2;

    /**
     * The closed forms of the polar, [1] section 6.9, with the lift coefficient held to that of 1.2
     * stall speeds; small angles.
     *
     * @param airframe the aircraft
     * @param polar its drag polar
     * @param densityKgPerM3 density, kg/m³
     * @return the glide
     */
    static Glide of(Airframe airframe, DragPolar polar, double densityKgPerM3) {
        double greatest = airframe.maxLiftCoefficient() / (FLOOR_IN_STALL_SPEEDS * FLOOR_IN_STALL_SPEEDS);
        double flattest = Math.min(polar.bestGlideLiftCoefficient(), greatest);
        double slowest = Math.min(polar.leastPowerLiftCoefficient(), greatest);
        double flattestMPerS = airspeedMPerS(airframe, densityKgPerM3, flattest);
        double slowestMPerS = airspeedMPerS(airframe, densityKgPerM3, slowest);
        return new Glide(
                flattest / polar.dragCoefficient(flattest),
                flattestMPerS,
                slowestMPerS * polar.dragCoefficient(slowest) / slowest,
                slowestMPerS);
    }

    private static double airspeedMPerS(Airframe airframe, double density, double lift) {
        return LevelFlight.airspeedMPerS(airframe.massKg(), airframe.wingAreaM2(), density, lift);
    }
}
