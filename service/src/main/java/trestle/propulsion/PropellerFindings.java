package trestle.propulsion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Length;
import trestle.units.Rotation;

/** Is the propeller one that the model was checked on, turned no faster than it can tell? */
final class PropellerFindings {
    /** Ranges of the wind-tunnel data [2] that the model was held against. */
    private static final double SMALLEST_IN = 9;

    private static final double LARGEST_IN = 21;
    private static final double LEAST_PITCH_RATIO = 0.3;
    private static final double GREATEST_PITCH_RATIO = 1.1;
    private static final int MOST_BLADES = 4;
    private static final double SLOWEST_RPM = 3000;

    /** All the data lie below 0.3; above 0.6 compressibility is felt. Common practice. */
    private static final double TIP_MACH_LIMIT = 0.6;

    private final Propeller propeller;
    private final DrivePerformance performance;
    private final List<Finding> findings = new ArrayList<>();

    private PropellerFindings(Propeller propeller, DrivePerformance performance) {
        this.propeller = propeller;
        this.performance = performance;
    }

    /** The findings on a propeller. */
    static List<Finding> of(PropulsionTask task, DrivePerformance performance) {
        PropellerFindings judged = new PropellerFindings(task.system().propeller(), performance);
        if (!(judged.propeller.data() instanceof CoefficientTable)) {
            judged.checkedRange();
            judged.wideInCruise();
        }
        judged.tipMach();
        return judged.findings;
    }

    private void checkedRange() {
        double diameterIn = Length.inFromM(propeller.diameterM());
        outside(diameterIn, SMALLEST_IN, LARGEST_IN, "diameter", "in", PropulsionPart.PROPELLER_DIAMETER);
        outside(
                propeller.pitchM() / propeller.diameterM(),
                LEAST_PITCH_RATIO,
                GREATEST_PITCH_RATIO,
                "pitch over diameter",
                "",
                PropulsionPart.PROPELLER_PITCH);
        outside(propeller.bladeCount(), 2, MOST_BLADES, "number of blades", "", PropulsionPart.PROPELLER_BLADES);
        performance
                .atRest()
                .ifPresent(p -> outside(
                        Rotation.rpmFromRadPerS(p.rotationRadPerS()),
                        SLOWEST_RPM,
                        Double.MAX_VALUE,
                        "speed at full throttle",
                        "rpm",
                        PropulsionPart.PROPELLER));
    }

    private void outside(double value, double least, double greatest, String what, String unit, PropulsionPart part) {
        if (value < least || value > greatest) {
            double limit = value < least ? least : greatest;
            findings.add(Finding.of(
                    Severity.ATTENTION,
                    "propeller-outside-checked-range",
                    Subject.of(part),
                    value,
                    limit,
                    String.format(
                            Locale.ROOT,
                            "The propeller's %s is %s, %s the %s to which the model was checked: measure static thrust"
                                    + " and power, and give them.",
                            what,
                            withUnit(value, unit),
                            value < least ? "below" : "above",
                            withUnit(limit, unit))));
        }
    }

    private static String withUnit(double value, String unit) {
        return (Figures.of(value) + " " + unit).strip();
    }

    private void wideInCruise() {
        if (propeller.bladeType() == BladeType.WIDE && performance.cruise().isPresent()) {
            findings.add(Finding.of(
                    Severity.ATTENTION,
                    "wide-blades-in-cruise",
                    Subject.of(PropulsionPart.PROPELLER_BLADE_TYPE),
                    "For wide slow-flight blades static thrust is good to about 5 %, but"
                            + " thrust and power in flight only to about 20 and 25 %."));
        }
    }

    private void tipMach() {
        performance.tipMachRatio().stream()
                .filter(mach -> mach > TIP_MACH_LIMIT)
                .forEach(mach -> findings.add(Finding.of(
                        Severity.ATTENTION,
                        "tip-mach-high",
                        Subject.of(PropulsionPart.PROPELLER_DIAMETER),
                        mach,
                        TIP_MACH_LIMIT,
                        String.format(
                                Locale.ROOT,
                                "The blade tips reach Mach %.2f; above %.1f the model does not count the losses and"
                                        + " the noise grows.",
                                mach,
                                TIP_MACH_LIMIT))));
    }
}
