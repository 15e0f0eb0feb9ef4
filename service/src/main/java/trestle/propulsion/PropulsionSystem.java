package trestle.propulsion;

import trestle.numeric.Guard;

/**
 * One or more like motors, each with its controller and propeller, on one supply.
 *
 * @param motor the motor
 * @param controller its controller
 * @param propeller its propeller
 * @param motorCount how many of them, 1 to 16
 * @param supply the supply of all
 */
public record PropulsionSystem(Motor motor, Controller controller, Propeller propeller, int motorCount, Supply supply) {
    private static final int MOST_MOTORS = 16;

    /** Checks the physics. */
    public PropulsionSystem {
        Guard.present("motor", motor);
        Guard.present("controller", controller);
        Guard.present("propeller", propeller);
        Guard.within("motorCount", motorCount, 1, MOST_MOTORS);
        Guard.present("supply", supply);
    }

    /** Rotation of an unloaded motor on the supply at rest, rad/s: no propeller turns faster. */
    double noLoadRotationRadPerS() {
        return motor.speedConstantRadPerSPerV() * supply.restVoltageV();
    }
}
