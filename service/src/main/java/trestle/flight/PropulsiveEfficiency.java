package trestle.flight;

import trestle.numeric.Guard;

/** Efficiency from pack power to thrust power, as a function of airspeed and thrust. */
@FunctionalInterface
public interface PropulsiveEfficiency {
    /**
     * Thrust power over the pack power that makes it.
     *
     * <p>One answer asks a few thousand times: a costly model tabulates itself first.
     *
     * @param airspeedMPerS airspeed, m/s, above 0
     * @param thrustN thrust, N, above 0
     * @return efficiency, 0 to 1; 0 where the propulsion cannot make that thrust at that airspeed
     */
    double fraction(double airspeedMPerS, double thrustN);

    /**
     * Constant efficiencies of propeller, motor and controller, multiplied.
     *
     * @param propeller propeller efficiency, above 0, at most 1
     * @param motor motor efficiency, above 0, at most 1
     * @param controller controller efficiency, above 0, at most 1
     * @return the constant product
     */
    static PropulsiveEfficiency constant(double propeller, double motor, double controller) {
        double product = proper("propeller", propeller) * proper("motor", motor) * proper("controller", controller);
        return (airspeedMPerS, thrustN) -> product;
    }

    private static double proper(String argument, double fraction) {
        Guard.positive(argument, fraction);
        return Guard.within(argument, fraction, 0, 1);
    }
}
