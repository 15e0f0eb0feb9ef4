package trestle.propulsion;

/**
 * How much of the power goes on at each step, 0 to 1 each.
 *
 * @param propeller thrust times airspeed over shaft power; 0 at rest
 * @param motor shaft power over electrical power at the motor
 * @param controller electrical power at the motor over that at the supply
 */
public record Efficiency(double propeller, double motor, double controller) {
    /**
     * From the supply to the air.
     *
     * @return thrust times airspeed over electrical power
     */
    public double total() {
        return propeller * motor * controller;
    }
}
