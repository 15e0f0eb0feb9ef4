package trestle.propulsion;

/**
 * Thrust and power of a propeller without dimensions.
 *
 * @param thrust {@code CT = T / (ρ n² D⁴)}
 * @param power {@code CP = P / (ρ n³ D⁵)}
 */
public record PropellerCoefficients(double thrust, double power) {

    /**
     * Propeller efficiency: {@code η = J CT / CP}.
     *
     * @param advanceRatio {@code J = V / (n D)}
     * @return 0 to 1; 0 at rest, and where the propeller brakes or is driven by the wind
     */
    public double efficiency(double advanceRatio) {
        return thrust > 0 && power > 0 ? advanceRatio * thrust / power : 0;
    }

    /**
     * Efficiency that no propeller of this thrust can pass: {@code 2 / (1 + sqrt(1 + 8 CT / (π
     * J²)))}, momentum theory [4].
     *
     * @param advanceRatio {@code J = V / (n D)}, above 0
     * @return 0 to 1; 1 where there is no thrust
     */
    public double idealEfficiency(double advanceRatio) {
        if (thrust <= 0) {
            return 1;
        }
        double loading = 8 / Math.PI * thrust / (advanceRatio * advanceRatio);
        return 2 / (1 + Math.sqrt(1 + loading));
    }

    /**
     * Static figure of merit: ideal over true power at rest, {@code CT^1.5 sqrt(2 / π) / CP},
     * momentum theory [4].
     *
     * @return 0 to 1 for anything real
     */
    public double figureOfMerit() {
        return thrust > 0 && power > 0 ? Math.pow(thrust, 1.5) * Math.sqrt(2 / Math.PI) / power : 0;
    }
}
