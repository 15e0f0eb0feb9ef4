package trestle.propulsion;

/**
 * One state of the whole drive.
 *
 * @param airspeedMPerS airspeed, m/s
 * @param throttleFraction share of the supply's voltage that the controller passes on, 0 to 1
 * @param rotationRadPerS rotation, rad/s
 * @param advanceRatio {@code J = V / (n D)}
 * @param thrustN thrust of all motors, N
 * @param torqueNm torque at one shaft, N m
 * @param shaftPowerW shaft power of all motors, W
 * @param motorCurrentA current in one motor, which part throttle makes greater than the supply's
 *     share, A
 * @param motorVoltageV average voltage at one motor, V
 * @param supplyCurrentA current of all from the supply, A
 * @param supplyVoltageV voltage of the supply under that current, V
 * @param tipMachRatio speed of the blade tips over that of sound
 * @param efficiency each step's
 * @param idealPropellerEfficiency what momentum theory allows at this thrust and airspeed; 0 at
 *     rest
 */
public record OperatingPoint(
        double airspeedMPerS,
        double throttleFraction,
        double rotationRadPerS,
        double advanceRatio,
        double thrustN,
        double torqueNm,
        double shaftPowerW,
        double motorCurrentA,
        double motorVoltageV,
        double supplyCurrentA,
        double supplyVoltageV,
        double tipMachRatio,
        Efficiency efficiency,
        double idealPropellerEfficiency) {

    /**
     * Power from the supply, all motors.
     *
     * @return power, W
     */
    public double electricalPowerW() {
        return supplyVoltageV * supplyCurrentA;
    }

    /**
     * Electrical power into one motor.
     *
     * @return power, W
     */
    public double motorPowerW() {
        return motorVoltageV * motorCurrentA;
    }
}
