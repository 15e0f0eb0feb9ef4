package trestle.propulsion;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Resistance;
import trestle.units.Rotation;

/** Can the motor turn the propeller, and are its constants those of a motor? */
final class MotorChecks {
    /** Voltage under load over voltage at rest: below it the pack is past its power peak. */
    private static final double POWER_PEAK_VOLTAGE_RATIO = 0.5;

    /** A pack that sags below this gives little more for a lot of heat. Common practice. */
    private static final double DEEP_SAG_VOLTAGE_RATIO = 0.8;

    /**
     * Best efficiency by the three constants: good motors reach 0.85 to 0.95. Beyond these it is a slip of the unit
     * rather than a rare motor; common practice, no source.
     */
    private static final double DOUBTFUL_EFFICIENCY = 0.97;

    private static final double IMPOSSIBLE_EFFICIENCY = 0.985;
    private static final double POOR_EFFICIENCY = 0.5;

    /** Full throttle takes tens of no-load currents; common practice, no source. */
    private static final double LIGHT_LOAD_RATIO = 3;

    private static final double NO_LOAD_RATIO = 1.3;

    private final PropulsionTask task;
    private final DrivePerformance performance;

    private MotorChecks(PropulsionTask task, DrivePerformance performance) {
        this.task = task;
        this.performance = performance;
    }

    /** Judges a motor on its supply. */
    static void judge(PropulsionTask task, DrivePerformance performance, Judge judge) {
        MotorChecks motor = new MotorChecks(task, performance);
        Subject supply = Subject.of(PropulsionPart.SUPPLY);
        judge.check(
                "motor-constants",
                "best efficiency by the motor's constants",
                Subject.of(PropulsionPart.MOTOR_RESISTANCE),
                motor::constants);
        judge.check("propeller-turns", "supply that turns the propeller", supply, motor::turning);
        judge.check(
                "motor-stall",
                "motor current at full throttle at rest, against half of that at standstill",
                Subject.of(PropulsionPart.PROPELLER),
                motor.atRest(motor::stall));
        judge.check(
                "motor-loading",
                "load of the motor at full throttle",
                Subject.of(PropulsionPart.MOTOR_SPEED_CONSTANT),
                motor.atRest(motor::loading));
        judge.check("supply-sag", "supply at full throttle at rest", supply, motor.atRest(motor::sag));
        judge.check(
                "cutoff-at-full-throttle",
                "cutoff at full throttle at rest",
                Subject.of(PropulsionPart.SUPPLY_CUTOFF),
                motor.atRest(motor::cutoff));
    }

    private Consumer<Trial> atRest(BiConsumer<Trial, OperatingPoint> judged) {
        return trial -> performance
                .atRest()
                .ifPresentOrElse(
                        point -> judged.accept(trial, point), () -> trial.notJudged(Subject.of(PropulsionPart.SUPPLY)));
    }

    private void constants(Trial trial) {
        Motor motor = task.system().motor();
        double supplyV = task.system().supply().restVoltageV();
        double best = motor.bestEfficiency(supplyV);
        double milliohm = Resistance.milliohmFromOhm(motor.resistanceOhm());
        String sentence = "By its constants the motor reaches an efficiency of %.3f; %s (common practice): check that"
                + " the resistance of %s mΩ is %s, and the no-load current.";
        trial.of(best, "");
        if (motor.noLoadCurrentA() > 0 && motor.resistanceOhm() > 0) {
            trial.atMost(IMPOSSIBLE_EFFICIENCY, Basis.COMMON_PRACTICE)
                    .stop(
                            "motor-constants-implausible",
                            sentence,
                            best,
                            "no motor passes 0.985",
                            Figures.of(milliohm),
                            "not in ohm (1 Ω is 1000 mΩ)")
                    .atMost(DOUBTFUL_EFFICIENCY, Basis.COMMON_PRACTICE)
                    .attention(
                            "motor-constants-implausible",
                            sentence,
                            best,
                            "the best reach 0.97",
                            Figures.of(milliohm),
                            "not in ohm (1 Ω is 1000 mΩ)");
        }
        trial.atLeast(POOR_EFFICIENCY, Basis.COMMON_PRACTICE)
                .attention(
                        "motor-constants-implausible",
                        sentence,
                        best,
                        "a poor one reaches 0.5",
                        Figures.of(milliohm),
                        "that between two leads");
    }

    private void turning(Trial trial) {
        trial.stopIf(
                performance.atRest().isEmpty(),
                "propeller-not-turned",
                "The supply of %.1f V collapses before the propeller turns: check its resistance and the"
                        + " motor's no-load current.",
                task.system().supply().restVoltageV());
    }

    /** Past half the current at standstill a motor turns more power into heat than into work. */
    private void stall(Trial trial, OperatingPoint atRest) {
        double resistanceOhm = task.system().motor().resistanceOhm()
                + task.system().controller().resistanceOhm();
        trial.of(atRest.motorCurrentA(), "A");
        if (resistanceOhm > 0) {
            double limitA = atRest.supplyVoltageV() / (2 * resistanceOhm);
            trial.atMost(limitA, Basis.COMPUTED)
                    .stop(
                            "motor-stalled",
                            "The propeller stalls the motor: at full throttle at rest it takes %.0f A, and above %.0f"
                                    + " A more power turns to heat than to work. Take less diameter or pitch, or a"
                                    + " motor of fewer rpm/V than %s.",
                            atRest.motorCurrentA(),
                            limitA,
                            Figures.of(rpmPerV()));
        }
    }

    private double rpmPerV() {
        return Rotation.rpmFromRadPerS(task.system().motor().speedConstantRadPerSPerV());
    }

    /** A speed constant in rad/s per volt is a tenth of one in rpm/V: the propeller then hardly turns. */
    private void loading(Trial trial, OperatingPoint atRest) {
        double idleA = task.system().motor().noLoadCurrentA(atRest.rotationRadPerS());
        if (idleA == 0) {
            trial.notJudged(Subject.of(PropulsionPart.MOTOR_NO_LOAD_CURRENT));
            return;
        }
        String sentence = "At full throttle at rest the motor takes %s A, hardly more than the %s A of no load: the"
                + " speed constant of %s rpm/V may be in rad/s per volt (times 9.55 is rpm/V), or the propeller is small"
                + " for this motor.";
        Object[] values = {Figures.of(atRest.motorCurrentA()), Figures.of(idleA), Figures.of(rpmPerV())};
        trial.of(atRest.motorCurrentA(), "A")
                .atLeast(NO_LOAD_RATIO * idleA, Basis.COMMON_PRACTICE)
                .stop("motor-hardly-loaded", sentence, values)
                .atLeast(LIGHT_LOAD_RATIO * idleA, Basis.COMMON_PRACTICE)
                .attention("motor-hardly-loaded", sentence, values);
    }

    private void sag(Trial trial, OperatingPoint atRest) {
        double restV = task.system().supply().restVoltageV();
        double loadV = atRest.supplyVoltageV();
        trial.of(loadV, "V")
                .atLeast(POWER_PEAK_VOLTAGE_RATIO * restV, Basis.COMPUTED)
                .stop(
                        "pack-past-power-peak",
                        "Full throttle pulls the pack from %.1f V down to %.1f V, below half of it: more throttle gives"
                                + " less thrust.",
                        restV,
                        loadV)
                .atLeast(DEEP_SAG_VOLTAGE_RATIO * restV, Basis.COMMON_PRACTICE)
                .attention(
                        "pack-sags",
                        "Full throttle pulls the pack from %.1f V down to %.1f V, below 80 %% of it (common practice):"
                                + " the pack is small for this motor.",
                        restV,
                        loadV);
    }

    /** A controller that sees its cutoff at full throttle stops the motor in the launch. */
    private void cutoff(Trial trial, OperatingPoint atRest) {
        if (task.system().supply().cutoffVoltageV().isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.SUPPLY_CUTOFF));
            return;
        }
        double cutoffV = task.system().supply().cutoffVoltageV().getAsDouble();
        trial.of(atRest.supplyVoltageV(), "V")
                .atLeast(cutoffV, Basis.REQUEST)
                .stop(
                        "cutoff-at-full-throttle",
                        "Full throttle pulls the pack down to %.2f V, below the cutoff of %.2f V: the controller stops"
                                + " the motor. Take a stronger pack, or lower the cutoff as far as the cells allow.",
                        atRest.supplyVoltageV(),
                        cutoffV);
    }
}
