package trestle.propulsion;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What is left below each rating at full throttle, as a fraction of the rating; below 0 the rating
 * is passed. Empty where there is no rating.
 *
 * @param motorCurrentFraction of the motor's current
 * @param motorPowerFraction of the motor's electrical power
 * @param controllerCurrentFraction of the controller's current
 * @param controllerVoltageFraction of the controller's voltage, by the full pack
 * @param packCurrentFraction of the pack's current
 * @param propellerRotationFraction of the propeller's rotation, in level flight where drag is known
 */
public record Headroom(
        OptionalDouble motorCurrentFraction,
        OptionalDouble motorPowerFraction,
        OptionalDouble controllerCurrentFraction,
        OptionalDouble controllerVoltageFraction,
        OptionalDouble packCurrentFraction,
        OptionalDouble propellerRotationFraction) {

    /**
     * The least headroom over lists of states; empty fractions for an empty list.
     *
     * @param points all states at full throttle
     * @param level those of level flight, in which the propeller turns
     */
    static Headroom of(PropulsionSystem system, List<OperatingPoint> points, List<OperatingPoint> level) {
        Motor motor = system.motor();
        return new Headroom(
                left(motor.maxCurrentA(), points, OperatingPoint::motorCurrentA),
                left(motor.maxPowerW(), points, OperatingPoint::motorPowerW),
                left(system.controller().maxCurrentA(), points, OperatingPoint::motorCurrentA),
                voltageLeft(system),
                left(system.supply().maxCurrentA(), points, OperatingPoint::supplyCurrentA),
                left(system.propeller().maxRotationRadPerS(), level, OperatingPoint::rotationRadPerS));
    }

    private static OptionalDouble voltageLeft(PropulsionSystem system) {
        OptionalDouble limit = system.controller().maxVoltageV();
        return limit.isPresent()
                ? OptionalDouble.of(1 - system.supply().fullVoltageV() / limit.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble left(
            OptionalDouble limit, List<OperatingPoint> points, ToDoubleFunction<OperatingPoint> value) {
        OptionalDouble greatest = points.stream().mapToDouble(value).max();
        return limit.isPresent() && greatest.isPresent()
                ? OptionalDouble.of(1 - greatest.getAsDouble() / limit.getAsDouble())
                : OptionalDouble.empty();
    }
}
