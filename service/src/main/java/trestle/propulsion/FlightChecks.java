package trestle.propulsion;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** Can the motor turn the propeller, and does its thrust fly the aircraft? */
final class FlightChecks {
    /** Voltage under load over voltage at rest: below it the pack is past its power peak. */
    private static final double POWER_PEAK_VOLTAGE_RATIO = 0.5;

    /** A pack that sags below this gives little more for a lot of heat. Common practice. */
    private static final double DEEP_SAG_VOLTAGE_RATIO = 0.8;

    /** Throttle above which cruise leaves little to climb or to age with. Common practice. */
    private static final double HIGH_CRUISE_THROTTLE = 0.8;

    private final PropulsionTask task;
    private final DrivePerformance performance;

    private FlightChecks(PropulsionTask task, DrivePerformance performance) {
        this.task = task;
        this.performance = performance;
    }

    /** Judges a drive's use in flight. */
    static void judge(PropulsionTask task, DrivePerformance performance, Judge judge) {
        FlightChecks flight = new FlightChecks(task, performance);
        Subject supply = Subject.of(PropulsionPart.SUPPLY);
        judge.check("propeller-turns", "the supply turns the propeller", supply, flight::turning);
        judge.check(
                "motor-stall",
                "the motor at full throttle at rest",
                Subject.of(PropulsionPart.PROPELLER),
                flight.atRest(flight::stall));
        judge.check("supply-sag", "the supply at full throttle at rest", supply, flight.atRest(flight::sag));
        judge.check(
                "cutoff-at-full-throttle",
                "the cutoff at full throttle at rest",
                Subject.of(PropulsionPart.SUPPLY_CUTOFF),
                flight.atRest(flight::cutoff));
        Subject thrust = Subject.of(PropulsionPart.CRUISE_THRUST);
        judge.essential("cruise-thrust", "thrust in cruise", thrust, flight.inCruise(flight::cruise));
        judge.check("cruise-throttle", "throttle in cruise", thrust, flight.inCruise(flight::throttle));
        judge.check("level-flight", "thrust against drag at any airspeed", thrust, flight.inCruise(flight::level));
        flight.curve(judge);
    }

    private Consumer<Trial> atRest(BiConsumer<Trial, OperatingPoint> judged) {
        return trial -> performance
                .atRest()
                .ifPresentOrElse(
                        point -> judged.accept(trial, point), () -> trial.notJudged(Subject.of(PropulsionPart.SUPPLY)));
    }

    private Consumer<Trial> inCruise(BiConsumer<Trial, CruiseDemand> judged) {
        return trial -> task.cruise()
                .ifPresentOrElse(
                        demand -> judged.accept(trial, demand),
                        () -> trial.notJudged(
                                Subject.of(PropulsionPart.CRUISE_THRUST), Subject.of(PropulsionPart.CRUISE_AIRSPEED)));
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
                                    + " A more power turns to heat than to work.",
                            atRest.motorCurrentA(),
                            limitA);
        }
    }

    private void sag(Trial trial, OperatingPoint atRest) {
        double restV = task.system().supply().restVoltageV();
        double loadV = atRest.supplyVoltageV();
        String sentence = "Full throttle pulls the supply from %.1f V down to %.1f V, below %.1f V: %s.";
        trial.of(loadV, "V")
                .atLeast(POWER_PEAK_VOLTAGE_RATIO * restV, Basis.COMPUTED)
                .stop(
                        "pack-past-power-peak",
                        sentence,
                        restV,
                        loadV,
                        POWER_PEAK_VOLTAGE_RATIO * restV,
                        "more throttle gives less thrust")
                .atLeast(DEEP_SAG_VOLTAGE_RATIO * restV, Basis.COMMON_PRACTICE)
                .attention(
                        "pack-sags",
                        sentence,
                        restV,
                        loadV,
                        DEEP_SAG_VOLTAGE_RATIO * restV,
                        "the pack is small for this motor");
    }

    /** A controller that sees its cutoff at full throttle stops the motor in the launch. */
    private void cutoff(Trial trial, OperatingPoint atRest) {
        OptionalDouble cutoffV = task.system().supply().cutoffVoltageV();
        if (cutoffV.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.SUPPLY_CUTOFF));
            return;
        }
        trial.of(atRest.supplyVoltageV(), "V")
                .atLeast(cutoffV.getAsDouble(), Basis.REQUEST)
                .stop(
                        "cutoff-at-full-throttle",
                        "Full throttle pulls the supply down to %.1f V, below the"
                                + " cutoff of %.1f V: the controller stops the motor.",
                        atRest.supplyVoltageV(),
                        cutoffV.getAsDouble());
    }

    private double mostInCruiseN() {
        return Math.max(
                0,
                performance.fullThrottleInCruise().map(OperatingPoint::thrustN).orElse(0.0));
    }

    private void cruise(Trial trial, CruiseDemand demand) {
        double mostN = mostInCruiseN();
        trial.of(mostN, "N")
                .atLeast(demand.thrustN(), Basis.COMPUTED)
                .stopIf(
                        performance.cruise().isEmpty(),
                        "cruise-thrust-short",
                        "Full throttle gives %.2f N at %.1f m/s and cruise takes %.2f N.",
                        mostN,
                        demand.airspeedMPerS(),
                        demand.thrustN());
    }

    private void throttle(Trial trial, CruiseDemand demand) {
        Optional<OperatingPoint> cruise = performance.cruise();
        if (cruise.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.CRUISE_THRUST));
            return;
        }
        double percent = 100 * cruise.get().throttleFraction();
        trial.of(percent, "%")
                .atMost(100 * HIGH_CRUISE_THROTTLE, Basis.COMMON_PRACTICE)
                .attention(
                        "cruise-throttle-high",
                        "Cruise takes %.0f %% throttle; above %.0f %% little is left for climb, gusts and a low pack.",
                        percent,
                        100 * HIGH_CRUISE_THROTTLE);
    }

    private void level(Trial trial, CruiseDemand demand) {
        double mostN = mostInCruiseN();
        trial.of(mostN, "N")
                .atLeast(demand.thrustN(), Basis.COMPUTED)
                .stopIf(
                        performance.cruise().isEmpty()
                                && performance.topSpeedMPerS().isEmpty(),
                        "thrust-never-reaches-drag",
                        "Thrust at full throttle is below the drag at every airspeed, %.2f N against %.2f N at"
                                + " %.1f m/s: this drive does not fly level.",
                        mostN,
                        demand.thrustN(),
                        demand.airspeedMPerS());
    }

    /** Airspeeds that were asked for, and at which the wind drives the propeller. */
    private void curve(Judge judge) {
        OptionalDouble end = performance.zeroThrustSpeedMPerS();
        if (performance.atRest().isEmpty() || end.isEmpty()) {
            return;
        }
        for (int i = 0; i < task.airspeedsMPerS().size(); i++) {
            double airspeed = task.airspeedsMPerS().get(i);
            judge.check(
                    "airspeed-of-curve",
                    "an airspeed of the curve",
                    Subject.of(PropulsionPart.AIRSPEED, i),
                    trial -> trial.of(airspeed, "m/s")
                            .atMost(end.getAsDouble(), Basis.COMPUTED)
                            .note(
                                    "airspeed-beyond-thrust",
                                    "At %.1f m/s full throttle gives no thrust: it ends at %.1f m/s.",
                                    airspeed,
                                    end.getAsDouble()));
        }
    }
}
