package trestle.massbalance;

/**
 * Mass and CG with what they may be off by; a tolerance is a bound of two standard deviations.
 *
 * @param massKg mass, kg
 * @param armM CG aft of the datum, m
 * @param lateralM CG right of the plane of symmetry, m
 * @param verticalM CG above the reference line, m
 * @param massToleranceKg tolerance of the mass, kg
 * @param armToleranceM tolerance of the arm, m
 * @param lateralToleranceM tolerance of the lateral place, from the masses alone, m
 */
public record Centre(
        double massKg,
        double armM,
        double lateralM,
        double verticalM,
        double massToleranceKg,
        double armToleranceM,
        double lateralToleranceM) {}
