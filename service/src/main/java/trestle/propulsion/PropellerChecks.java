package trestle.propulsion;

import java.util.function.Consumer;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;
import trestle.units.Rotation;

/** Is the propeller one that the model was checked on, turned no faster than it can tell? */
final class PropellerChecks {
    /** Ranges of the wind-tunnel data [2] that the model was held against. */
    private static final double SMALLEST_IN = 9;

    private static final double LARGEST_IN = 21;
    private static final double LEAST_PITCH_RATIO = 0.3;
    private static final double GREATEST_PITCH_RATIO = 1.1;
    private static final int MOST_BLADES = 4;
    private static final double SLOWEST_RPM = 3000;
    private static final Basis CHECKED = Basis.source("UIUC Propeller Data Site, volumes 1 to 4");

    /** All the data lie below 0.3; above 0.6 compressibility is felt. Common practice. */
    private static final double TIP_MACH_LIMIT = 0.6;

    private final Propeller propeller;
    private final DrivePerformance performance;

    private PropellerChecks(Propeller propeller, DrivePerformance performance) {
        this.propeller = propeller;
        this.performance = performance;
    }

    /** Judges a propeller against the range of the model. */
    static void judge(PropulsionTask task, DrivePerformance performance, Judge judge) {
        PropellerChecks checks = new PropellerChecks(task.system().propeller(), performance);
        checks.range(judge);
        judge.check(
                "wide-blades",
                "kind of blade in cruise",
                Subject.of(PropulsionPart.PROPELLER_BLADE_TYPE),
                checks.modelled(checks::wideInCruise));
        judge.check(
                "tip-mach", "speed of the blade tips", Subject.of(PropulsionPart.PROPELLER_DIAMETER), checks::tipMach);
    }

    private void range(Judge judge) {
        double diameterIn = Length.inFromM(propeller.diameterM());
        double pitchRatio = propeller.pitchM() / propeller.diameterM();
        ranged(judge, "diameter", "diameter", PropulsionPart.PROPELLER_DIAMETER, trial -> {
            trial.of(diameterIn, "in");
            outside(trial, diameterIn, SMALLEST_IN, LARGEST_IN, "diameter", "in");
        });
        ranged(judge, "pitch", "pitch over diameter", PropulsionPart.PROPELLER_PITCH, trial -> {
            trial.of(pitchRatio, "");
            outside(trial, pitchRatio, LEAST_PITCH_RATIO, GREATEST_PITCH_RATIO, "pitch over diameter", "");
        });
        ranged(judge, "blades", "number of blades", PropulsionPart.PROPELLER_BLADES, trial -> {
            trial.of(propeller.bladeCount(), "");
            outside(trial, propeller.bladeCount(), 2, MOST_BLADES, "number of blades", "");
        });
        ranged(judge, "speed", "speed at full throttle", PropulsionPart.PROPELLER, this::speed);
    }

    private void ranged(Judge judge, String code, String what, PropulsionPart part, Consumer<Trial> trial) {
        judge.check(
                "propeller-" + code + "-range",
                "propeller's " + what + ", against what the model was checked on",
                Subject.of(part),
                modelled(trial));
    }

    /** A measured table takes the place of the model, whose range then does not matter. */
    private Consumer<Trial> modelled(Consumer<Trial> judged) {
        return propeller.data() instanceof CoefficientTable ? Trial::notJudged : judged;
    }

    private void speed(Trial trial) {
        if (performance.atRest().isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.SUPPLY));
            return;
        }
        double rpm = Rotation.rpmFromRadPerS(performance.atRest().get().rotationRadPerS());
        below(trial.of(rpm, "rpm"), rpm, SLOWEST_RPM, "speed at full throttle", "rpm");
    }

    private static void outside(Trial trial, double value, double least, double greatest, String what, String unit) {
        below(trial, value, least, what, unit);
        trial.atMost(greatest, CHECKED)
                .attention(
                        "propeller-outside-checked-range",
                        "The propeller's %s is %s, above the %s to which the model was checked: measure static thrust"
                                + " and power, and give them.",
                        what,
                        withUnit(value, unit),
                        withUnit(greatest, unit));
    }

    private static void below(Trial trial, double value, double least, String what, String unit) {
        trial.atLeast(least, CHECKED)
                .attention(
                        "propeller-outside-checked-range",
                        "The propeller's %s is %s, below the %s to which the model was checked: measure static thrust"
                                + " and power, and give them.",
                        what,
                        withUnit(value, unit),
                        withUnit(least, unit));
    }

    private static String withUnit(double value, String unit) {
        return (Figures.of(value) + " " + unit).strip();
    }

    private void wideInCruise(Trial trial) {
        trial.attentionIf(
                propeller.bladeType() == BladeType.WIDE && performance.cruise().isPresent(),
                "wide-blades-in-cruise",
                "For wide slow-flight blades static thrust is good to about 5 %%, but"
                        + " thrust and power in flight only to about 20 and 25 %%.");
    }

    private void tipMach(Trial trial) {
        if (performance.tipMachRatio().isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.SUPPLY));
            return;
        }
        double mach = performance.tipMachRatio().getAsDouble();
        trial.of(mach, "")
                .atMost(TIP_MACH_LIMIT, Basis.COMMON_PRACTICE)
                .attention(
                        "tip-mach-high",
                        "The blade tips reach Mach %.2f; above %.1f (common practice) losses that the model does not"
                                + " count and noise grow: take less diameter, or fewer rpm.",
                        mach,
                        TIP_MACH_LIMIT);
    }
}
