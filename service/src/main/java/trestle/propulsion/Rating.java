package trestle.propulsion;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import trestle.units.Rotation;

/**
 * A limit that a part sets to a state of the drive.
 *
 * @param kept which rating
 * @param code stem of its check and findings
 * @param owner whose rating, as a genitive
 * @param unit of value and limit
 * @param part where the limit stands
 * @param limit the limit; empty where none is stated
 * @param value what is held against it
 * @param essential whether a verdict hangs on it
 */
record Rating(
        KeptRating kept,
        String code,
        String owner,
        String unit,
        PropulsionPart part,
        OptionalDouble limit,
        ToDoubleFunction<OperatingPoint> value,
        boolean essential) {

    /** The ratings that slow flight and rest load most. */
    static List<Rating> loads(PropulsionTask task) {
        Motor motor = task.system().motor();
        Controller controller = task.system().controller();
        DriveLimits limits = task.limits();
        return List.of(
                new Rating(
                        KeptRating.MOTOR_CURRENT,
                        "motor-current",
                        "the motor's",
                        "A",
                        PropulsionPart.MOTOR_MAX_CURRENT,
                        motor.maxCurrentA(),
                        OperatingPoint::motorCurrentA,
                        true),
                new Rating(
                        KeptRating.MOTOR_POWER,
                        "motor-power",
                        "the motor's",
                        "W",
                        PropulsionPart.MOTOR_MAX_POWER,
                        motor.maxPowerW(),
                        OperatingPoint::motorPowerW,
                        true),
                new Rating(
                        KeptRating.CONTROLLER_CURRENT,
                        "controller-current",
                        "the motor controller's",
                        "A",
                        PropulsionPart.CONTROLLER_MAX_CURRENT,
                        controller.maxCurrentA(),
                        OperatingPoint::motorCurrentA,
                        true),
                new Rating(
                        KeptRating.PACK_CURRENT,
                        "pack-current",
                        "the cells'",
                        "A",
                        PropulsionPart.SUPPLY_MAX_CURRENT,
                        task.system().supply().maxCurrentA(),
                        OperatingPoint::supplyCurrentA,
                        true),
                line(KeptRating.WIRE, "wire-current", "the wires'", PropulsionPart.WIRE_CURRENT, limits.wireCurrentA()),
                line(
                        KeptRating.CONNECTOR,
                        "connector-current",
                        "the connector's",
                        PropulsionPart.CONNECTOR_CURRENT,
                        limits.connectorCurrentA()));
    }

    private static Rating line(KeptRating kept, String code, String owner, PropulsionPart part, OptionalDouble limitA) {
        return new Rating(kept, code, owner, "A", part, limitA, OperatingPoint::supplyCurrentA, false);
    }

    /** The rating that fast flight loads most. */
    static Rating rotation(PropulsionTask task) {
        OptionalDouble limit = task.system().propeller().maxRotationRadPerS();
        return new Rating(
                KeptRating.PROPELLER_ROTATION,
                "propeller-rotation",
                "the propeller's",
                "rpm",
                PropulsionPart.PROPELLER_MAX_ROTATION,
                limit.isPresent()
                        ? OptionalDouble.of(Rotation.rpmFromRadPerS(limit.getAsDouble()))
                        : OptionalDouble.empty(),
                p -> Rotation.rpmFromRadPerS(p.rotationRadPerS()),
                true);
    }
}
