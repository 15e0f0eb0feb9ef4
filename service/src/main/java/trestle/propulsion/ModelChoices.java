package trestle.propulsion;

import trestle.finding.Judge;
import trestle.finding.Subject;

/** The model choices that touched a drive's numbers. */
final class ModelChoices {
    private ModelChoices() {}

    /** Notes the choices made for a task. */
    static void assume(PropulsionTask task, Judge judge) {
        if (task.cruise().isEmpty()
                && task.system().propeller().maxRotationRadPerS().isPresent()) {
            judge.assume(
                    Subject.of(PropulsionPart.PROPELLER_MAX_ROTATION),
                    "the propeller turns fastest where thrust ends",
                    "no drag is given, which would tell the level top speed");
        }
        propeller(task.system().propeller(), judge);
        judge.assume(
                Subject.of(PropulsionPart.MOTOR_SPEED_CONSTANT),
                "the speed constant as given",
                "printed ones are typically 2 to 10 % above what the loaded motor shows");
        if (task.system().motor().noLoadVoltageV().isEmpty()) {
            judge.assume(
                    Subject.of(PropulsionPart.MOTOR_NO_LOAD_CURRENT),
                    "the no-load current is the same at every speed",
                    "the voltage at which it was measured is not given");
        }
        judge.assume(
                Subject.of(PropulsionPart.CONTROLLER),
                "below full throttle the controller loses another 1 % of supply voltage"
                        + " times motor current, and 0.5 W always",
                "no measured map of a controller of this size is at hand");
        judge.assume(
                Subject.of(PropulsionPart.CONTROLLER),
                "throttle is the share of the supply's voltage that reaches the motor",
                "sticks and controllers map it in their own ways");
    }

    private static void propeller(Propeller propeller, Judge judge) {
        if (propeller.data() instanceof CoefficientTable) {
            judge.assume(
                    Subject.of(PropulsionPart.PROPELLER_TABLE),
                    "straight lines between the rows, at every speed of rotation",
                    "the table has one row for each advance ratio");
        } else if (propeller.data() instanceof StaticTest) {
            judge.assume(
                    Subject.of(PropulsionPart.PROPELLER_STATIC_TEST),
                    "the model scaled to the static test in full at rest, not at all from half of the advance ratio at"
                            + " which thrust ends",
                    "what is wrong at rest says little of fast flight; there about 12 % of thrust and power stay open");
        } else {
            meanBlade(propeller.bladeType(), judge);
        }
    }

    private static void meanBlade(BladeType type, Judge judge) {
        judge.assume(
                Subject.of(PropulsionPart.PROPELLER_BLADE_TYPE),
                Judge.text(
                        "a mean blade of the kind \"%s\": thrust to %.0f %%, power to %.0f %%,"
                                + " efficiency to %.2f, usually",
                        type.label(),
                        100 * type.thrustErrorFraction(),
                        100 * type.powerErrorFraction(),
                        type.efficiencyError()),
                "only diameter, pitch and blades are known");
    }
}
