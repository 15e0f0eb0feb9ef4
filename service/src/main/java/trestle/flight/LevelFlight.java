package trestle.flight;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

/** Formulas of level flight, [1] chapters 5 and 6. */
public final class LevelFlight {
    private LevelFlight() {}

    /**
     * Dynamic pressure: {@code q = ρ V² / 2}.
     *
     * @param densityKgPerM3 density, kg/m³
     * @param airspeedMPerS airspeed, m/s
     * @return dynamic pressure, Pa
     */
    public static double dynamicPressurePa(double densityKgPerM3, double airspeedMPerS) {
        return 0.5 * densityKgPerM3 * airspeedMPerS * airspeedMPerS;
    }

    /**
     * Lift coefficient of level flight: {@code C_L = m g / (q S)}.
     *
     * @param massKg mass, kg
     * @param wingAreaM2 wing area, m²
     * @param dynamicPressurePa dynamic pressure, Pa, above 0
     * @return lift coefficient
     */
    public static double liftCoefficient(double massKg, double wingAreaM2, double dynamicPressurePa) {
        return massKg * GRAVITY_M_PER_S2 / (dynamicPressurePa * wingAreaM2);
    }

    /**
     * Airspeed of level flight at a lift coefficient: {@code V = sqrt(2 m g / (ρ S C_L))}. At the
     * greatest lift coefficient this is the stall speed.
     *
     * @param massKg mass, kg
     * @param wingAreaM2 wing area, m²
     * @param densityKgPerM3 density, kg/m³
     * @param liftCoefficient lift coefficient, above 0
     * @return airspeed, m/s
     */
    public static double airspeedMPerS(
            double massKg, double wingAreaM2, double densityKgPerM3, double liftCoefficient) {
        return Math.sqrt(2 * massKg * GRAVITY_M_PER_S2 / (densityKgPerM3 * wingAreaM2 * liftCoefficient));
    }

    /**
     * Drag in level flight: {@code D = q S C_D(C_L)}.
     *
     * @param polar drag polar
     * @param massKg mass, kg
     * @param wingAreaM2 wing area, m²
     * @param densityKgPerM3 density, kg/m³
     * @param airspeedMPerS airspeed, m/s, above 0
     * @return drag, N
     */
    public static double dragN(
            DragPolar polar, double massKg, double wingAreaM2, double densityKgPerM3, double airspeedMPerS) {
        double q = dynamicPressurePa(densityKgPerM3, airspeedMPerS);
        return q * wingAreaM2 * polar.dragCoefficient(liftCoefficient(massKg, wingAreaM2, q));
    }
}
