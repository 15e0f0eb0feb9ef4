package trestle.propulsion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Rotation;

/** Holds the states at full throttle against what each part may bear. */
final class RatingFindings {
    /** Load above which a rating is thinly kept. Common practice, no source. */
    private static final double THIN_LOAD_RATIO = 0.9;

    private final List<OperatingPoint> points;
    private final List<Finding> findings = new ArrayList<>();

    private RatingFindings(List<OperatingPoint> points) {
        this.points = points;
    }

    /** The findings on a system's ratings. */
    static List<Finding> of(PropulsionSystem system, List<OperatingPoint> points) {
        RatingFindings ratings = new RatingFindings(points);
        ratings.controllerVoltage(system);
        ratings.hold(
                new Rating("motor-current", "the motor current", "A", PropulsionPart.MOTOR_MAX_CURRENT),
                OperatingPoint::motorCurrentA,
                system.motor().maxCurrentA());
        ratings.hold(
                new Rating("motor-power", "the electrical power into a motor", "W", PropulsionPart.MOTOR_MAX_POWER),
                OperatingPoint::motorPowerW,
                system.motor().maxPowerW());
        ratings.hold(
                new Rating("controller-current", "the controller current", "A", PropulsionPart.CONTROLLER_MAX_CURRENT),
                OperatingPoint::motorCurrentA,
                OptionalDouble.of(system.controller().maxCurrentA()));
        ratings.hold(
                new Rating("pack-current", "the pack current", "A", PropulsionPart.SUPPLY_MAX_CURRENT),
                OperatingPoint::supplyCurrentA,
                system.supply().maxCurrentA());
        ratings.hold(
                new Rating("propeller-rotation", "the propeller speed", "rpm", PropulsionPart.PROPELLER_MAX_ROTATION),
                p -> Rotation.rpmFromRadPerS(p.rotationRadPerS()),
                asRpm(system.propeller().maxRotationRadPerS()));
        return ratings.findings;
    }

    private record Rating(String code, String name, String unit, PropulsionPart part) {}

    private void controllerVoltage(PropulsionSystem system) {
        double fullV = system.supply().fullVoltageV();
        double limitV = system.controller().maxVoltageV();
        if (fullV > limitV) {
            findings.add(Finding.of(
                    Severity.STOP,
                    "controller-voltage-exceeded",
                    Subject.of(PropulsionPart.CONTROLLER_MAX_VOLTAGE),
                    fullV,
                    limitV,
                    String.format(
                            Locale.ROOT,
                            "The full pack has %.1f V and the controller stands %.1f V:"
                                    + " connecting it can destroy the controller.",
                            fullV,
                            limitV)));
        }
    }

    private void hold(Rating rating, ToDoubleFunction<OperatingPoint> value, OptionalDouble limit) {
        Optional<OperatingPoint> worst =
                points.stream().max((a, b) -> Double.compare(value.applyAsDouble(a), value.applyAsDouble(b)));
        if (limit.isEmpty() || worst.isEmpty()) {
            return;
        }
        double greatest = value.applyAsDouble(worst.get());
        double allowed = limit.getAsDouble();
        if (greatest > allowed) {
            add(rating, Severity.STOP, "-exceeded", worst.get(), greatest, allowed);
        } else if (greatest > THIN_LOAD_RATIO * allowed) {
            add(rating, Severity.ATTENTION, "-thin", worst.get(), greatest, allowed);
        }
    }

    private void add(Rating rating, Severity severity, String ending, OperatingPoint at, double value, double limit) {
        findings.add(Finding.of(
                severity,
                rating.code() + ending,
                Subject.of(rating.part()),
                value,
                limit,
                String.format(
                        Locale.ROOT,
                        "At full throttle and %.1f m/s %s is %s %s, %s the limit of %s %s.",
                        at.airspeedMPerS(),
                        rating.name(),
                        Figures.of(value),
                        rating.unit(),
                        severity == Severity.STOP ? "above" : "within 10 % of",
                        Figures.of(limit),
                        rating.unit())));
    }

    private static OptionalDouble asRpm(OptionalDouble radPerS) {
        return radPerS.isPresent()
                ? OptionalDouble.of(Rotation.rpmFromRadPerS(radPerS.getAsDouble()))
                : OptionalDouble.empty();
    }
}
