package trestle.flight;

import trestle.numeric.Guard;

/**
 * The aircraft as level flight sees it.
 *
 * @param massKg take-off mass, kg
 * @param wingAreaM2 wing area, m²
 * @param wingSpanM wing span, m
 * @param maxLiftCoefficient greatest lift coefficient of the whole aircraft, above 0
 */
public record Airframe(double massKg, double wingAreaM2, double wingSpanM, double maxLiftCoefficient) {
    /** Checks the physics. */
    public Airframe {
        Guard.positive("massKg", massKg);
        Guard.positive("wingAreaM2", wingAreaM2);
        Guard.positive("wingSpanM", wingSpanM);
        Guard.within("maxLiftCoefficient", maxLiftCoefficient, 0.1, 5);
    }

    /**
     * The same aircraft at another mass.
     *
     * @param otherMassKg mass, kg
     * @return the aircraft
     */
    public Airframe withMassKg(double otherMassKg) {
        return new Airframe(otherMassKg, wingAreaM2, wingSpanM, maxLiftCoefficient);
    }

    /**
     * Aspect ratio: span² over area.
     *
     * @return aspect ratio
     */
    public double aspectRatio() {
        return wingSpanM * wingSpanM / wingAreaM2;
    }

    /**
     * Stall speed in level flight.
     *
     * @param densityKgPerM3 density, kg/m³
     * @return stall speed, m/s
     */
    public double stallSpeedMPerS(double densityKgPerM3) {
        return LevelFlight.airspeedMPerS(massKg, wingAreaM2, densityKgPerM3, maxLiftCoefficient);
    }

    /**
     * Airspeed of a safe climb: 1.3 stall speeds.
     *
     * @param densityKgPerM3 density of the air, kg/m³
     * @return airspeed, m/s
     */
    public double climbSpeedMPerS(double densityKgPerM3) {
        return SteadyFlight.CLIMB_IN_STALL_SPEEDS * stallSpeedMPerS(densityKgPerM3);
    }

    /**
     * Lift coefficient of level flight.
     *
     * @param densityKgPerM3 density, kg/m³
     * @param airspeedMPerS airspeed, m/s, above 0
     * @return lift coefficient
     */
    public double liftCoefficient(double densityKgPerM3, double airspeedMPerS) {
        return LevelFlight.liftCoefficient(
                massKg, wingAreaM2, LevelFlight.dynamicPressurePa(densityKgPerM3, airspeedMPerS));
    }
}
