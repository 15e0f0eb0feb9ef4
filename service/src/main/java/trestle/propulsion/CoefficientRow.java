package trestle.propulsion;

import trestle.numeric.Guard;

/**
 * One row of a propeller table.
 *
 * @param advanceRatio {@code J = V / (n D)}, 0 or more
 * @param thrustCoefficient {@code CT = T / (ρ n² D⁴)}, below 0 where the propeller brakes
 * @param powerCoefficient {@code CP = P / (ρ n³ D⁵)}, above 0 where it does not
 */
public record CoefficientRow(double advanceRatio, double thrustCoefficient, double powerCoefficient) {
    /** Checks the physics. */
    public CoefficientRow {
        Guard.notNegative("advanceRatio", advanceRatio);
        Guard.finite("thrustCoefficient", thrustCoefficient);
        Guard.finite("powerCoefficient", powerCoefficient);
        if (thrustCoefficient >= 0) {
            Guard.positive("powerCoefficient of a propeller that does not brake", powerCoefficient);
        }
    }

    /** The row as coefficients. */
    PropellerCoefficients coefficients() {
        return new PropellerCoefficients(thrustCoefficient, powerCoefficient);
    }
}
