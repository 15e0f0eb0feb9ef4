package trestle.estimate;

/**
 * What a motor controller is likely to be, from its ratings.
 *
 * <p>Mass: least squares over 73 controllers of five makers in the table of a university course on sizing (Toulouse, 2022).
 * Loss: the form of a fixed part, the resistance of two switches and leads, and switching; its figures are judgement.
 */
public final class ControllerRules {
    /** Two switches in series and leads: 3 mΩ at 80 A. */
    private static final double OHM_AMPERE = 0.25;

    private ControllerRules() {}

    /**
     * m = 0.435 I^0.931 V^0.348, g.
     *
     * @param currentA rated current, A
     * @param voltageV highest voltage, V
     * @return mass, g; of one in three it lies off by more than a factor of 1.4
     */
    public static double massG(double currentA, double voltageV) {
        return 0.435 * Math.pow(currentA, 0.931) * Math.pow(voltageV, 0.348);
    }

    /**
     * R_on = 0.25 Ω A over the rated current.
     *
     * @param currentA rated current, A
     * @return its spread, Ω
     */
    public static Spread resistanceOhm(double currentA) {
        return Spread.logNormal(OHM_AMPERE / currentA, 0.40);
    }
}
