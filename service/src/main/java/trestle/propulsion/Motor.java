package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A brushless motor by its three constants [3].
 *
 * @param speedConstantRadPerSPerV Kv: rotation per volt behind the resistance, rad/s/V, above 0;
 *     {@code rpm/V · 2π / 60}
 * @param resistanceOhm winding resistance R between two leads, Ω, 0 or more
 * @param noLoadCurrentA I0: what it draws turning nothing, A, 0 or more
 * @param noLoadVoltageV voltage at which I0 was measured, V; empty where unknown, and I0 is then
 *     taken as the same at every speed
 * @param maxCurrentA its rating, A; empty where none is stated
 * @param maxPowerW its rating as electrical input, W; empty where none is stated
 * @param ratingDurationS how long it may be run at its ratings, s; empty where no time is stated
 */
public record Motor(
        double speedConstantRadPerSPerV,
        double resistanceOhm,
        double noLoadCurrentA,
        OptionalDouble noLoadVoltageV,
        OptionalDouble maxCurrentA,
        OptionalDouble maxPowerW,
        OptionalDouble ratingDurationS) {
    /**
     * Share of the no-load current that rises with speed (eddy currents, windage); the rest
     * (hysteresis, bearings) is a constant torque. Common practice, no source: half and half.
     */
    static final double RISING_SHARE = 0.5;

    /** Rise of copper's resistance with temperature at 20 °C, 1/K: that of annealed copper (IEC 60028). */
    private static final double COPPER_PER_K = 0.00393;

    /** Makers state resistance at 20 °C, K. */
    private static final double STATED_AT_K = 293.15;

    /** Checks the physics. */
    public Motor {
        Guard.positive("speedConstantRadPerSPerV", speedConstantRadPerSPerV);
        Guard.notNegative("resistanceOhm", resistanceOhm);
        Guard.notNegative("noLoadCurrentA", noLoadCurrentA);
        if (noLoadVoltageV.isPresent()) {
            Guard.positive(
                    "noLoadVoltageV less the drop in the winding",
                    noLoadVoltageV.getAsDouble() - noLoadCurrentA * resistanceOhm);
        }
        maxCurrentA.ifPresent(limit -> Guard.positive("maxCurrentA", limit));
        maxPowerW.ifPresent(limit -> Guard.positive("maxPowerW", limit));
        ratingDurationS.ifPresent(limit -> Guard.positive("ratingDurationS", limit));
    }

    /**
     * A motor whose ratings hold for as long as one likes.
     *
     * @param speedConstantRadPerSPerV as above
     * @param resistanceOhm as above
     * @param noLoadCurrentA as above
     * @param noLoadVoltageV as above
     * @param maxCurrentA as above
     * @param maxPowerW as above
     */
    public Motor(
            double speedConstantRadPerSPerV,
            double resistanceOhm,
            double noLoadCurrentA,
            OptionalDouble noLoadVoltageV,
            OptionalDouble maxCurrentA,
            OptionalDouble maxPowerW) {
        this(
                speedConstantRadPerSPerV,
                resistanceOhm,
                noLoadCurrentA,
                noLoadVoltageV,
                maxCurrentA,
                maxPowerW,
                OptionalDouble.empty());
    }

    /**
     * Resistance of a winding at its temperature: {@code R (1 + 0.00393 (T − 20 °C))}.
     *
     * @param resistanceOhm R at 20 °C, Ω
     * @param windingK temperature of the winding T, K
     * @return resistance, Ω
     */
    public static double hotResistanceOhm(double resistanceOhm, double windingK) {
        return resistanceOhm * (1 + COPPER_PER_K * (windingK - STATED_AT_K));
    }

    /**
     * The best efficiency that the constants allow at a voltage: {@code (1 − √(I0 R / V))²}, from the three constants by
     * hand.
     *
     * @param voltageV voltage V, V, above 0
     * @return 0 to 1; 0 where the no-load current alone takes the voltage
     */
    public double bestEfficiency(double voltageV) {
        double left = Math.max(0, 1 - Math.sqrt(noLoadCurrentA * resistanceOhm / voltageV));
        return left * left;
    }

    /**
     * No-load current at a speed: {@code I0 (½ + ½ ω / ω0)}, ω0 the speed of the no-load test.
     *
     * @param rotationRadPerS rotation ω, rad/s, 0 or more
     * @return current, A
     */
    public double noLoadCurrentA(double rotationRadPerS) {
        if (noLoadVoltageV.isEmpty()) {
            return noLoadCurrentA;
        }
        double testedRadPerS =
                (noLoadVoltageV.getAsDouble() - noLoadCurrentA * resistanceOhm) * speedConstantRadPerSPerV;
        return noLoadCurrentA * (1 - RISING_SHARE + RISING_SHARE * rotationRadPerS / testedRadPerS);
    }

    /**
     * Current that a torque takes: {@code I = Q Kv + I0(ω)}.
     *
     * @param torqueNm torque at the shaft Q, N m
     * @param rotationRadPerS rotation ω, rad/s
     * @return current, A
     */
    public double currentA(double torqueNm, double rotationRadPerS) {
        return torqueNm * speedConstantRadPerSPerV + noLoadCurrentA(rotationRadPerS);
    }

    /**
     * Voltage at the motor: {@code V = ω / Kv + I R}.
     *
     * @param currentA current I, A
     * @param rotationRadPerS rotation ω, rad/s
     * @return voltage, V
     */
    public double voltageV(double currentA, double rotationRadPerS) {
        return rotationRadPerS / speedConstantRadPerSPerV + currentA * resistanceOhm;
    }
}
