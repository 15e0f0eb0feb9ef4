package trestle.telemetry;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Judgement;

/**
 * What a flight took and what it says of the aircraft.
 *
 * @param log what the log says; empty where there was none
 * @param sums charge, energy, distance
 * @param capacity the pack's capacity, as the flight shows it
 * @param contradiction readings held against each other; empty where one is missing
 * @param steadyPower mean power of steady flight
 * @param calibration the power curve
 * @param why why there is no power curve
 * @param judgement the checks
 */
public record FlightReview(
        Optional<FlightLog> log,
        FlightSums sums,
        Optional<CapacityEstimate> capacity,
        Optional<Reconciliation> contradiction,
        Optional<PowerAtSpeed> steadyPower,
        Optional<PowerFit> calibration,
        PowerCurve.Reason why,
        Judgement judgement) {
    /** Bounds of what {@code endurance} takes as a calibration. */
    private static final double LEAST_PARASITE_M2 = 1e-5;

    private static final double MOST_PARASITE_M2 = 20;
    private static final double LEAST_INDUCED_PER_S4 = 0.01;
    private static final double MOST_INDUCED_PER_S4 = 1e4;
    private static final double MOST_DEVIATION = 2;

    /**
     * Reviews a flight.
     *
     * @param task its log or its landing
     * @return the review
     * @throws trestle.numeric.ImpossibleValue where no two rows of a log follow each other in time
     */
    public static FlightReview of(ReviewTask task) {
        return task.landing().isPresent()
                ? LandingReview.of(task, task.landing().get())
                : ofLog(
                        task,
                        FlightLog.of(task.log().orElseThrow(), task.flown())
                                .orElseThrow(() -> new trestle.numeric.ImpossibleValue(
                                        "time", "a log needs two rows whose times follow each other")));
    }

    private static FlightReview ofLog(ReviewTask task, FlightLog log) {
        FlightSums sums = FlightSums.of(log);
        RestVoltages rest = RestVoltages.of(log.screened());
        Optional<CapacityEstimate> capacity =
                task.pack().isPresent() && rest.afterV().isPresent()
                        ? CapacityEstimate.of(
                                task.pack().get().rest(),
                                rest.beforeV(),
                                rest.afterV().getAsDouble(),
                                log.totals().chargeC())
                        : Optional.empty();
        Optional<PowerFit> fit = log.curve().fit().filter(FlightReview::isPlausible);
        PowerCurve.Reason why = log.curve().fit().isPresent() && fit.isEmpty()
                ? PowerCurve.Reason.INDISTINCT
                : log.curve().why();
        return judged(
                task,
                new FlightReview(
                        Optional.of(log),
                        sums,
                        capacity,
                        Optional.empty(),
                        log.curve().mean(),
                        fit,
                        why,
                        null));
    }

    static FlightReview judged(ReviewTask task, FlightReview review) {
        return new FlightReview(
                review.log,
                review.sums,
                review.capacity,
                review.contradiction,
                review.steadyPower,
                review.calibration,
                review.why,
                ReviewChecks.of(task, review));
    }

    static boolean isPlausible(PowerFit fit) {
        return within(fit.parasiteAreaM2(), LEAST_PARASITE_M2, MOST_PARASITE_M2)
                && within(fit.inducedFactorPerS4(), LEAST_INDUCED_PER_S4, MOST_INDUCED_PER_S4)
                && within(fit.parasiteDeviation(), 0, MOST_DEVIATION)
                && within(fit.inducedDeviation(), 0, MOST_DEVIATION);
    }

    private static boolean within(double value, double least, double most) {
        return value >= least && value <= most;
    }

    /**
     * Lowest voltage over the cells in series.
     *
     * @param pack the pack, or none
     * @return voltage, V a cell
     */
    public OptionalDouble lowestCellV(Optional<FlownPack> pack) {
        return pack.isPresent() && sums.lowestVoltageV().isPresent()
                ? OptionalDouble.of(
                        sums.lowestVoltageV().getAsDouble() / pack.get().rest().seriesCount())
                : OptionalDouble.empty();
    }
}
