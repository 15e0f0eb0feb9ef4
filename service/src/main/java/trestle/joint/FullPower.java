package trestle.joint;

/** What the motors take and give at full power while the voltage behind them falls, at one airspeed. */
public interface FullPower {
    /**
     * Current of the motors.
     *
     * @param voltageV voltage at the end of the pack's leads, V, above 0
     * @return current, A, not negative
     */
    double currentA(double voltageV);

    /**
     * Thrust.
     *
     * @param voltageV voltage at the end of the pack's leads, V, above 0
     * @return thrust of all motors, N
     */
    double thrustN(double voltageV);

    /**
     * A power that is held, with the thrust that it gives, whatever the voltage.
     *
     * @param powerW power of the motors, W, above 0
     * @param thrustN thrust, N
     * @return that power
     */
    static FullPower constant(double powerW, double thrustN) {
        return new FullPower() {
            @Override
            public double currentA(double voltageV) {
                return powerW / voltageV;
            }

            @Override
            public double thrustN(double voltageV) {
                return thrustN;
            }
        };
    }
}
