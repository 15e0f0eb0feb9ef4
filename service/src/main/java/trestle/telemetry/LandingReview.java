package trestle.telemetry;

import java.util.Optional;
import java.util.OptionalDouble;

/** Reviews what was written down after a landing. Shares are common practice, no source. */
final class LandingReview {
    /** Launch, climbs and turns are in the mean power of a whole flight. */
    private static final double MANOEUVRES = 0.05;

    /** The mean voltage is taken from rest voltages, without the drop under load. */
    private static final double VOLTAGE = 0.03;

    /** Way over the ground in place of way through the air. */
    private static final double STILL_AIR = 0.1;

    /** Readings that cannot all be true make the power no surer than this, at most. */
    private static final double MOST_APART = 1;

    private LandingReview() {}

    static FlightReview of(ReviewTask task, Landing landing) {
        FlightSums sums = FlightSums.of(landing, task.pack());
        Optional<Reconciliation> readings = task.pack().flatMap(pack -> landing.reconciled(pack.rest()));
        Optional<CapacityEstimate> capacity = task.pack().isPresent()
                        && landing.chargeC().isPresent()
                        && landing.restVoltageV().isPresent()
                ? CapacityEstimate.of(
                        task.pack().get().rest(),
                        OptionalDouble.empty(),
                        landing.restVoltageV().getAsDouble(),
                        landing.chargeC().getAsDouble())
                : Optional.empty();
        Optional<PowerAtSpeed> mean = mean(landing, sums, readings);
        Optional<PowerFit> fit = mean.flatMap(power -> fit(task, power)).filter(FlightReview::isPlausible);
        return FlightReview.judged(
                task,
                new FlightReview(Optional.empty(), sums, capacity, readings, mean, fit, why(task, mean, fit), null));
    }

    private static PowerCurve.Reason why(ReviewTask task, Optional<PowerAtSpeed> mean, Optional<PowerFit> fit) {
        if (fit.isPresent()) {
            return PowerCurve.Reason.SEEN;
        }
        if (mean.isEmpty()) {
            return PowerCurve.Reason.NO_AIRSPEED;
        }
        return task.flown().massKg().isEmpty() || task.spanM().isEmpty()
                ? PowerCurve.Reason.NO_MASS
                : PowerCurve.Reason.INDISTINCT;
    }

    private static Optional<PowerFit> fit(ReviewTask task, PowerAtSpeed power) {
        Flown flown = task.flown();
        return flown.massKg().isPresent() && task.spanM().isPresent()
                ? OneSpeedFit.of(
                        power,
                        flown.massKg().getAsDouble(),
                        task.spanM().getAsDouble(),
                        flown.densityKgPerM3(),
                        flown.systemsPowerW())
                : Optional.empty();
    }

    private static Optional<PowerAtSpeed> mean(Landing landing, FlightSums sums, Optional<Reconciliation> readings) {
        OptionalDouble airspeed =
                landing.airspeedMPerS().isPresent() ? landing.airspeedMPerS() : sums.meanGroundSpeedMPerS();
        if (airspeed.isEmpty() || sums.meanPowerW().isEmpty()) {
            return Optional.empty();
        }
        double apart = readings.filter(Reconciliation::apart)
                .map(r -> Math.min(MOST_APART, Math.abs(Math.log(r.chargeFactor()))))
                .orElse(0.0);
        double byVoltage = landing.energyJ().isPresent() ? 0 : VOLTAGE;
        double bySpeed = landing.airspeedMPerS().isPresent() ? 0 : STILL_AIR;
        double share = Math.sqrt(Landing.CHARGE_DEVIATION * Landing.CHARGE_DEVIATION
                + MANOEUVRES * MANOEUVRES
                + byVoltage * byVoltage
                + bySpeed * bySpeed
                + apart * apart);
        double power = sums.meanPowerW().getAsDouble();
        return Optional.of(new PowerAtSpeed(airspeed.getAsDouble(), power, share * power));
    }
}
