package trestle.flight;

/**
 * The battery mass that flies longest, everything else unchanged.
 *
 * @param batteryMassKg battery mass, kg
 * @param takeoffMassKg take-off mass with it, kg
 * @param enduranceS time to the reserve with it, s
 * @param stallSpeedMPerS stall speed with it, m/s
 * @param atMassLimit true where the mass limit holds it back
 */
public record BatteryOptimum(
        double batteryMassKg, double takeoffMassKg, double enduranceS, double stallSpeedMPerS, boolean atMassLimit) {}
