package trestle.propulsion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Rotation;

/** Holds the states at full throttle against what each part is rated for. */
final class RatingChecks {
    /** Load above which a rating is thinly kept. Common practice, no source. */
    private static final double THIN_LOAD_RATIO = 0.9;

    private final PropulsionSystem system;
    private final List<OperatingPoint> points;

    private RatingChecks(PropulsionSystem system, List<OperatingPoint> points) {
        this.system = system;
        this.points = points;
    }

    /** Judges a system's ratings by its states at full throttle. */
    static void judge(PropulsionSystem system, List<OperatingPoint> points, Judge judge) {
        RatingChecks ratings = new RatingChecks(system, points);
        judge.essential(
                "controller-voltage",
                "full pack at the controller",
                Subject.of(PropulsionPart.CONTROLLER_MAX_VOLTAGE),
                ratings::controllerVoltage);
        ratings.hold(
                new Rating("motor-current", "the motor current", "A", PropulsionPart.MOTOR_MAX_CURRENT),
                OperatingPoint::motorCurrentA,
                system.motor().maxCurrentA(),
                judge);
        ratings.hold(
                new Rating("motor-power", "the electrical power into a motor", "W", PropulsionPart.MOTOR_MAX_POWER),
                OperatingPoint::motorPowerW,
                system.motor().maxPowerW(),
                judge);
        ratings.hold(
                new Rating("controller-current", "the controller current", "A", PropulsionPart.CONTROLLER_MAX_CURRENT),
                OperatingPoint::motorCurrentA,
                OptionalDouble.of(system.controller().maxCurrentA()),
                judge);
        ratings.hold(
                new Rating("pack-current", "the pack current", "A", PropulsionPart.SUPPLY_MAX_CURRENT),
                OperatingPoint::supplyCurrentA,
                system.supply().maxCurrentA(),
                judge);
        ratings.hold(
                new Rating("propeller-rotation", "the propeller speed", "rpm", PropulsionPart.PROPELLER_MAX_ROTATION),
                p -> Rotation.rpmFromRadPerS(p.rotationRadPerS()),
                asRpm(system.propeller().maxRotationRadPerS()),
                judge);
    }

    private record Rating(String code, String name, String unit, PropulsionPart part) {}

    private void controllerVoltage(Trial trial) {
        double fullV = system.supply().fullVoltageV();
        double limitV = system.controller().maxVoltageV();
        trial.of(fullV, "V")
                .atMost(limitV, Basis.REQUEST)
                .stop(
                        "controller-voltage-exceeded",
                        "The full pack has %.1f V and the controller stands %.1f V:"
                                + " connecting it can destroy the controller.",
                        fullV,
                        limitV);
    }

    private void hold(Rating rating, ToDoubleFunction<OperatingPoint> value, OptionalDouble limit, Judge judge) {
        judge.essential(
                rating.code(),
                rating.name() + " at full throttle",
                Subject.of(rating.part()),
                trial -> hold(trial, rating, value, limit));
    }

    private void hold(Trial trial, Rating rating, ToDoubleFunction<OperatingPoint> value, OptionalDouble limit) {
        Optional<OperatingPoint> worst =
                points.stream().max((a, b) -> Double.compare(value.applyAsDouble(a), value.applyAsDouble(b)));
        if (limit.isEmpty()) {
            trial.notJudged(Subject.of(rating.part()));
        } else if (worst.isEmpty()) {
            trial.notJudged(Subject.of(PropulsionPart.SUPPLY));
        } else {
            within(trial, rating, worst.get(), value.applyAsDouble(worst.get()), limit.getAsDouble());
        }
    }

    private static void within(Trial trial, Rating rating, OperatingPoint at, double greatest, double allowed) {
        String sentence = "At full throttle and %.1f m/s %s is %s %s, %s the limit of %s %s.";
        String value = Figures.of(greatest);
        String limit = Figures.of(allowed);
        trial.of(greatest, rating.unit())
                .atMost(allowed, Basis.REQUEST)
                .stop(
                        rating.code() + "-exceeded",
                        sentence,
                        at.airspeedMPerS(),
                        rating.name(),
                        value,
                        rating.unit(),
                        "above",
                        limit,
                        rating.unit())
                .attentionIf(
                        greatest > THIN_LOAD_RATIO * allowed,
                        rating.code() + "-thin",
                        sentence,
                        at.airspeedMPerS(),
                        rating.name(),
                        value,
                        rating.unit(),
                        "within 10 % of",
                        limit,
                        rating.unit());
    }

    private static OptionalDouble asRpm(OptionalDouble radPerS) {
        return radPerS.isPresent()
                ? OptionalDouble.of(Rotation.rpmFromRadPerS(radPerS.getAsDouble()))
                : OptionalDouble.empty();
    }
}
