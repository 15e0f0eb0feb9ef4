package trestle.flight;

/**
 * The pack mass that flies longest under the mass limit, everything else unchanged.
 *
 * @param packMassKg pack mass, kg
 * @param takeoffMassKg take-off mass with it, kg
 * @param enduranceS time to the reserve with it, s
 * @param stallSpeedMPerS stall speed with it, m/s
 * @param atMassLimit true where the mass limit holds it back
 */
public record PackOptimum(
        double packMassKg, double takeoffMassKg, double enduranceS, double stallSpeedMPerS, boolean atMassLimit) {}
