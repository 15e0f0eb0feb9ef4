package trestle.wiring;

import java.util.OptionalDouble;

/**
 * What rushes into capacitors that are plugged onto a stiff supply: the step response of resistance, inductance and
 * capacitance in series, a closed form of circuit theory.
 *
 * @param energyJ energy that the capacitors take, J
 * @param peakCurrentA highest current, A; empty where the resistance is not known
 * @param damping damping ratio of the loop; empty likewise
 * @param durationS five time constants, s; empty likewise
 */
public record Inrush(double energyJ, OptionalDouble peakCurrentA, OptionalDouble damping, OptionalDouble durationS) {
    /** Closer to 1 than this a damping is taken as 1, where both forms divide by nothing. */
    private static final double CRITICAL = 1e-6;

    /**
     * With a source whose resistance is not known.
     *
     * @param capacitanceF capacitance, F
     * @param voltageV voltage of the supply, V
     * @return the energy alone
     */
    public static Inrush ofUnknownSource(double capacitanceF, double voltageV) {
        return new Inrush(
                energyJ(capacitanceF, voltageV),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * With everything known.
     *
     * @param capacitanceF capacitance, F, above 0
     * @param voltageV voltage of the supply, V
     * @param resistanceOhm of the whole loop, Ω, above 0
     * @param inductanceH of the whole loop, H, above 0
     * @return the inrush
     */
    public static Inrush of(double capacitanceF, double voltageV, double resistanceOhm, double inductanceH) {
        double damping = resistanceOhm / 2 * Math.sqrt(capacitanceF / inductanceH);
        double omega = 1 / Math.sqrt(inductanceH * capacitanceF);
        double slope = voltageV / inductanceH;
        return new Inrush(
                energyJ(capacitanceF, voltageV),
                OptionalDouble.of(slope * peakOfUnitSlope(damping, omega)),
                OptionalDouble.of(damping),
                OptionalDouble.of(Precharge.TIME_CONSTANTS * resistanceOhm * capacitanceF));
    }

    private static double energyJ(double capacitanceF, double voltageV) {
        return capacitanceF * voltageV * voltageV / 2;
    }

    private static double peakOfUnitSlope(double damping, double omega) {
        double root = Math.sqrt(Math.abs(1 - damping * damping));
        if (Math.abs(damping - 1) < CRITICAL) {
            return 1 / (omega * Math.E);
        }
        if (damping < 1) {
            double angle = Math.atan2(root, damping);
            return Math.exp(-damping / root * angle) * Math.sin(angle) / (omega * root);
        }
        // The slow root as a quotient: a difference would lose its digits where the damping is great.
        double slow = -omega / (damping + root);
        double fast = -omega * (damping + root);
        double timeS = Math.log(fast / slow) / (slow - fast);
        return (Math.exp(slow * timeS) - Math.exp(fast * timeS)) / (slow - fast);
    }
}
