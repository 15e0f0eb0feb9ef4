package trestle.propulsion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;

/** Can the motor turn the propeller, and does its thrust fly the aircraft? */
final class FlightFindings {
    /** Voltage under load over voltage at rest: below it the pack is past its power peak. */
    private static final double POWER_PEAK_VOLTAGE_RATIO = 0.5;

    /** A pack that sags below this gives little more for a lot of heat. Common practice. */
    private static final double DEEP_SAG_VOLTAGE_RATIO = 0.8;

    /** Throttle above which cruise leaves little to climb or to age with. Common practice. */
    private static final double HIGH_CRUISE_THROTTLE = 0.8;

    private final PropulsionTask task;
    private final DrivePerformance performance;
    private final List<Finding> findings = new ArrayList<>();

    private FlightFindings(PropulsionTask task, DrivePerformance performance) {
        this.task = task;
        this.performance = performance;
    }

    /** The findings on a drive's use in flight. */
    static List<Finding> of(PropulsionTask task, DrivePerformance performance) {
        FlightFindings flight = new FlightFindings(task, performance);
        flight.turning();
        performance.atRest().ifPresent(flight::stall);
        performance.atRest().ifPresent(flight::sag);
        performance.atRest().ifPresent(flight::cutoff);
        task.cruise().ifPresent(flight::cruise);
        flight.curve();
        return flight.findings;
    }

    private void turning() {
        if (performance.atRest().isEmpty()) {
            double restV = task.system().supply().restVoltageV();
            findings.add(Finding.of(
                    Severity.STOP,
                    "propeller-not-turned",
                    Subject.of(PropulsionPart.SUPPLY),
                    String.format(
                            Locale.ROOT,
                            "The supply of %.1f V collapses before the propeller turns: check its resistance and the"
                                    + " motor's no-load current.",
                            restV)));
        }
    }

    /** Past half the current at standstill a motor turns more power into heat than into work. */
    private void stall(OperatingPoint atRest) {
        double resistanceOhm = task.system().motor().resistanceOhm()
                + task.system().controller().resistanceOhm();
        double limitA = atRest.supplyVoltageV() / (2 * resistanceOhm);
        if (resistanceOhm > 0 && atRest.motorCurrentA() > limitA) {
            findings.add(Finding.of(
                    Severity.STOP,
                    "motor-stalled",
                    Subject.of(PropulsionPart.PROPELLER),
                    atRest.motorCurrentA(),
                    limitA,
                    String.format(
                            Locale.ROOT,
                            "The propeller stalls the motor: at full throttle at rest it takes %.0f A, and above %.0f"
                                    + " A more power turns to heat than to work.",
                            atRest.motorCurrentA(),
                            limitA)));
        }
    }

    private void sag(OperatingPoint atRest) {
        double restV = task.system().supply().restVoltageV();
        double limitRatio = atRest.supplyVoltageV() < POWER_PEAK_VOLTAGE_RATIO * restV
                ? POWER_PEAK_VOLTAGE_RATIO
                : DEEP_SAG_VOLTAGE_RATIO;
        if (atRest.supplyVoltageV() < limitRatio * restV) {
            boolean pastPeak = limitRatio == POWER_PEAK_VOLTAGE_RATIO;
            findings.add(Finding.of(
                    pastPeak ? Severity.STOP : Severity.ATTENTION,
                    pastPeak ? "pack-past-power-peak" : "pack-sags",
                    Subject.of(PropulsionPart.SUPPLY),
                    atRest.supplyVoltageV(),
                    limitRatio * restV,
                    String.format(
                            Locale.ROOT,
                            "Full throttle pulls the supply from %.1f V down to %.1f V," + " below %.1f V: %s.",
                            restV,
                            atRest.supplyVoltageV(),
                            limitRatio * restV,
                            pastPeak ? "more throttle gives less thrust" : "the pack is small for this motor")));
        }
    }

    /** A controller that sees its cutoff at full throttle stops the motor in the launch. */
    private void cutoff(OperatingPoint atRest) {
        double cutoffV = task.system().supply().cutoffVoltageV().orElse(0);
        if (atRest.supplyVoltageV() < cutoffV) {
            findings.add(Finding.of(
                    Severity.STOP,
                    "cutoff-at-full-throttle",
                    Subject.of(PropulsionPart.SUPPLY_CUTOFF),
                    atRest.supplyVoltageV(),
                    cutoffV,
                    String.format(
                            Locale.ROOT,
                            "Full throttle pulls the supply down to %.1f V, below the"
                                    + " cutoff of %.1f V: the controller stops the motor.",
                            atRest.supplyVoltageV(),
                            cutoffV)));
        }
    }

    private void cruise(CruiseDemand demand) {
        double wantedN = demand.thrustN();
        double mostN = Math.max(
                0,
                performance.fullThrottleInCruise().map(OperatingPoint::thrustN).orElse(0.0));
        if (performance.cruise().isEmpty()) {
            findings.add(Finding.of(
                    Severity.STOP,
                    "cruise-thrust-short",
                    Subject.of(PropulsionPart.CRUISE_THRUST),
                    mostN,
                    wantedN,
                    String.format(
                            Locale.ROOT,
                            "Full throttle gives %.2f N at %.1f m/s and cruise takes" + " %.2f N.",
                            mostN,
                            demand.airspeedMPerS(),
                            wantedN)));
        }
        performance
                .cruise()
                .filter(point -> point.throttleFraction() > HIGH_CRUISE_THROTTLE)
                .ifPresent(this::highThrottle);
        if (performance.cruise().isEmpty() && performance.topSpeedMPerS().isEmpty()) {
            findings.add(Finding.of(
                    Severity.STOP,
                    "thrust-never-reaches-drag",
                    Subject.of(PropulsionPart.CRUISE_THRUST),
                    mostN,
                    wantedN,
                    String.format(
                            Locale.ROOT,
                            "Thrust at full throttle is below the drag at every airspeed, %.2f N against %.2f N at"
                                    + " %.1f m/s: this drive does not fly level.",
                            mostN,
                            wantedN,
                            demand.airspeedMPerS())));
        }
    }

    private void highThrottle(OperatingPoint point) {
        findings.add(Finding.of(
                Severity.ATTENTION,
                "cruise-throttle-high",
                Subject.of(PropulsionPart.CRUISE_THRUST),
                100 * point.throttleFraction(),
                100 * HIGH_CRUISE_THROTTLE,
                String.format(
                        Locale.ROOT,
                        "Cruise takes %.0f %% throttle; above %.0f %% little is left for climb, gusts and a low pack.",
                        100 * point.throttleFraction(),
                        100 * HIGH_CRUISE_THROTTLE)));
    }

    /** Airspeeds that were asked for, and at which the wind drives the propeller. */
    private void curve() {
        if (performance.atRest().isEmpty()) {
            return;
        }
        OptionalDouble end = performance.zeroThrustSpeedMPerS();
        for (int i = 0; i < task.airspeedsMPerS().size(); i++) {
            double airspeed = task.airspeedsMPerS().get(i);
            if (end.isPresent() && airspeed > end.getAsDouble()) {
                findings.add(Finding.of(
                        Severity.NOTE,
                        "airspeed-beyond-thrust",
                        Subject.of(PropulsionPart.AIRSPEED, i),
                        airspeed,
                        end.getAsDouble(),
                        String.format(
                                Locale.ROOT,
                                "At %.1f m/s full throttle gives no thrust: it ends at" + " %.1f m/s.",
                                airspeed,
                                end.getAsDouble())));
            }
        }
    }
}
