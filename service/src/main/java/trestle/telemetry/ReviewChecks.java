package trestle.telemetry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Charge;
import trestle.units.Share;

/** The checks of a flight: whether its numbers can be believed, and what they say of the pack. */
final class ReviewChecks {
    /** Time without rows over that of the log, %: common practice, no source. */
    private static final double MOST_GAP_PERCENT = 1;

    /** How far two counts of one charge may differ, %: common practice, no source. */
    private static final double MOST_COUNT_PERCENT = 5;

    /** How far a capacity may lie from the one described, in standard deviations. */
    private static final double DEVIATIONS_APART = 2;

    private final ReviewTask task;
    private final FlightReview review;

    private ReviewChecks(ReviewTask task, FlightReview review) {
        this.task = task;
        this.review = review;
    }

    static Judgement of(ReviewTask task, FlightReview review) {
        ReviewChecks checks = new ReviewChecks(task, review);
        Judge judge = new Judge();
        Subject log = Subject.of(ReviewPart.LOG);
        Subject flight = Subject.of(ReviewPart.FLIGHT);
        judge.essential("log-gaps", "time of the log without rows", log, checks::gaps);
        judge.check("log-order", "times of the log", Subject.of(ReviewPart.TIME), checks::order);
        judge.check("sensors-move", "sensors that stand still", log, checks::frozen);
        judge.essential("sensors-agree", "charge against another reading of it", flight, checks::agree);
        judge.check("pack-capacity", "capacity that the flight shows", Subject.of(ReviewPart.PACK), checks::capacity);
        judge.essential("lowest-cell-voltage", "lowest voltage of a cell in the mean", flight, checks::lowestCell);
        judge.check("positions", "steps of position", log, checks::positions);
        judge.check("wind", "directions flown", log, checks::wind);
        judge.check("power-curve", "what the power shows", flight, checks::powerCurve);
        return judge.judgement();
    }

    private void gaps(Trial trial) {
        if (review.log().isEmpty()) {
            trial.notJudged(Subject.of(ReviewPart.LOG));
            return;
        }
        Screened screened = review.log().get().screened();
        Optional<Gap> longest = screened.gaps().stream().max(Comparator.comparingDouble(Gap::durationS));
        double percent = Share.percentFromFraction(screened.gapS() / screened.durationS());
        trial.of(percent, "%").atMost(MOST_GAP_PERCENT, Basis.COMMON_PRACTICE);
        longest.ifPresent(gap -> {
            String sentence = Judge.text(
                    "%d of the steps between rows are gaps, %.1f %% of the time, the longest of %.1f s from %.1f s on:"
                            + " charge, energy and distance are without what was in them.",
                    screened.gaps().size(), percent, gap.durationS(), gap.startS());
            trial.attention("log-gaps", "%s", sentence).noteIf(true, "log-gaps", "%s", sentence);
        });
    }

    private void order(Trial trial) {
        if (review.log().isEmpty()) {
            trial.notJudged(Subject.of(ReviewPart.LOG));
            return;
        }
        Screened s = review.log().get().screened();
        trial.attentionIf(
                        s.restartCount() > 0,
                        "clock-restarted",
                        "The clock of the log starts again %d times: only its longest stretch is reviewed, and %d rows are"
                                + " left out.",
                        s.restartCount(),
                        s.otherStretchCount())
                .noteIf(
                        s.outOfOrderCount() + s.duplicateCount() > 0,
                        "rows-out-of-order",
                        "%d rows are earlier than the row above them and %d have its time: they are left out.",
                        s.outOfOrderCount(),
                        s.duplicateCount());
    }

    private void frozen(Trial trial) {
        if (review.log().isEmpty()) {
            trial.notJudged(Subject.of(ReviewPart.LOG));
            return;
        }
        List<FrozenSensor> frozen = review.log().get().screened().frozen();
        if (frozen.isEmpty()) {
            return;
        }
        FrozenSensor worst = frozen.stream()
                .max(Comparator.comparingDouble(f -> f.endS() - f.startS()))
                .orElseThrow();
        trial.at(Subject.of(ReviewPart.COLUMN, worst.channel().ordinal()))
                .attentionIf(
                        true,
                        "sensor-frozen",
                        "The %s shows one and the same figure from %.1f to %.1f s while others move, and such stretches are"
                                + " found %d times: what rests on it there cannot be believed.",
                        worst.channel().said(),
                        worst.startS(),
                        worst.endS(),
                        frozen.size());
    }

    private void agree(Trial trial) {
        if (review.contradiction().isPresent()) {
            readings(review.contradiction().get(), trial.at(Subject.of(ReviewPart.CHARGE)));
            return;
        }
        OptionalDouble counted =
                review.log().map(log -> log.totals().countedC()).orElse(OptionalDouble.empty());
        double charge = review.sums().chargeC().orElse(0);
        if (counted.isPresent() && counted.getAsDouble() > 0 && charge > 0) {
            double apart = Math.abs(Share.percentFromFraction(charge / counted.getAsDouble() - 1));
            trial.at(Subject.of(ReviewPart.COLUMN, Channel.CHARGE_COUNTER.ordinal()))
                    .of(apart, "%")
                    .atMost(MOST_COUNT_PERCENT, Basis.COMMON_PRACTICE)
                    .attention(
                            "charge-counter-differs",
                            "The current adds up to %.3f Ah and the recorder counts %.3f Ah, %.1f %% apart: one of them is"
                                    + " off, or rows are missing.",
                            Charge.ahFromC(charge),
                            Charge.ahFromC(counted.getAsDouble()),
                            apart);
        } else if (review.capacity().isPresent()) {
            trial.asSaid(isCapacityApart(review.capacity().get()), Severity.ATTENTION);
        } else {
            trial.notJudged(missing());
        }
    }

    private Subject[] missing() {
        List<Subject> missing = new ArrayList<>();
        if (task.pack().isEmpty()) {
            missing.add(Subject.of(ReviewPart.PACK));
        }
        if (task.landing().isPresent()) {
            missing.add(Subject.of(ReviewPart.CHARGE));
            missing.add(Subject.of(ReviewPart.REST_VOLTAGE));
        } else {
            missing.add(Subject.of(ReviewPart.COLUMN, Channel.CHARGE_COUNTER.ordinal()));
        }
        return missing.toArray(Subject[]::new);
    }

    private void readings(Reconciliation r, Trial trial) {
        int series = task.pack().orElseThrow().rest().seriesCount();
        double apart = Math.abs(r.chargeSaidC() - r.chargeShownC());
        trial.of(Charge.ahFromC(apart), "Ah")
                .atMost(Charge.ahFromC(DEVIATIONS_APART * r.deviationC()), Basis.COMMON_PRACTICE)
                .attention(
                        "readings-apart",
                        "%.2f Ah used, a pack of %.2f Ah and %.2f V a cell at rest cannot all be true: either %.2f Ah were"
                                + " used (%.2f times what was counted), or the pack holds %s of what is described, or it rests"
                                + " at %.2f V a cell (%.2f times the reading).",
                        Charge.ahFromC(r.chargeSaidC()),
                        Charge.ahFromC(r.capacityC()),
                        r.restVoltageV() / series,
                        Charge.ahFromC(r.chargeShownC()),
                        r.chargeFactor(),
                        r.chargeShownC() > 0 ? Judge.text("%.2f", r.capacityFactor()) : "many times",
                        r.restVoltageDueV() / series,
                        r.voltageFactor());
    }

    private void capacity(Trial trial) {
        if (review.capacity().isEmpty()) {
            trial.notJudged(Subject.of(ReviewPart.PACK));
            return;
        }
        CapacityEstimate estimate = review.capacity().get();
        double saidC = task.pack().orElseThrow().rest().capacityC();
        double percent = Math.abs(Share.percentFromFraction(estimate.capacityC() / saidC - 1));
        trial.of(percent, "%").atMost(mostApartPercent(estimate, saidC), Basis.COMMON_PRACTICE);
        if (review.contradiction().isPresent()) {
            trial.asSaid(isCapacityApart(estimate), Severity.ATTENTION);
            return;
        }
        trial.attention(
                "capacity-differs",
                "Charge and rest voltages show a pack of %.2f Ah where %.2f Ah are described, further apart than their usual"
                        + " errors: the pack has lost capacity, was not full, or the current sensor is off.",
                Charge.ahFromC(estimate.capacityC()),
                Charge.ahFromC(saidC));
    }

    private static double mostApartPercent(CapacityEstimate estimate, double saidC) {
        return Share.percentFromFraction(
                DEVIATIONS_APART * Math.hypot(estimate.deviationC() / saidC, Landing.CAPACITY_DEVIATION));
    }

    private boolean isCapacityApart(CapacityEstimate estimate) {
        double saidC = task.pack().orElseThrow().rest().capacityC();
        return Math.abs(Share.percentFromFraction(estimate.capacityC() / saidC - 1))
                > mostApartPercent(estimate, saidC);
    }

    private void lowestCell(Trial trial) {
        OptionalDouble lowest = review.lowestCellV(task.pack());
        if (lowest.isEmpty()) {
            trial.notJudged(Subject.of(task.pack().isEmpty() ? ReviewPart.PACK : ReviewPart.LOWEST_VOLTAGE));
            return;
        }
        FlownPack pack = task.pack().orElseThrow();
        double cellV = lowest.getAsDouble();
        trial.at(Subject.of(ReviewPart.PACK))
                .of(cellV, "V")
                .atLeast(pack.overDischargeCellV(), Basis.source("the cells"))
                .stop(
                        "cell-over-discharged",
                        "The cells went down to %.2f V in the mean, below the %.2f V under which they are harmed: do not charge"
                                + " this pack before each cell was measured.",
                        cellV,
                        pack.overDischargeCellV())
                .atLeast(pack.minimumCellV(), Basis.source("the cells"))
                .attention(
                        "cell-below-minimum",
                        "The cells went down to %.2f V in the mean, below their minimum of %.2f V: land earlier, or set the"
                                + " cutoff higher.",
                        cellV,
                        pack.minimumCellV());
    }

    private void positions(Trial trial) {
        int jumps = review.log().map(log -> log.totals().jumpCount()).orElse(0);
        if (review.log().isEmpty() || !review.log().get().screened().rows().has(Channel.LATITUDE, Channel.LONGITUDE)) {
            trial.notJudged(Subject.of(ReviewPart.COLUMN, Channel.LATITUDE.ordinal()));
            return;
        }
        trial.noteIf(
                jumps > 0,
                "position-jumps",
                "%d positions are further from the one before than %.0f m/s would carry: the distance is without them.",
                jumps,
                Integration.FASTEST_M_PER_S);
    }

    private void wind(Trial trial) {
        Optional<WindFit> fit = review.log().flatMap(FlightLog::wind);
        if (fit.isEmpty()) {
            trial.notJudged(Subject.of(ReviewPart.COLUMN, Channel.VELOCITY_NORTH.ordinal()));
            return;
        }
        double coverage = Math.toDegrees(fit.get().coverageRad());
        trial.place(coverage, "°")
                .atLeast(Math.toDegrees(WindFit.LEAST_COVERAGE_RAD), Basis.COMMON_PRACTICE)
                .noteIf(
                        fit.get().wind().isEmpty() && fit.get().coverageRad() >= WindFit.LEAST_COVERAGE_RAD,
                        "wind-not-seen",
                        "The ground velocities do not lie on one circle, as they do at one airspeed: without the airspeed the"
                                + " wind is not told.")
                .noteIf(
                        fit.get().wind().isEmpty(),
                        "wind-not-seen",
                        "The flight shows directions over %.0f° of the circle, and a wind needs 120° (common practice): it is"
                                + " not told.",
                        coverage);
    }

    private void powerCurve(Trial trial) {
        trial.noteIf(review.calibration().isEmpty(), "power-curve-not-seen", "No power curve is told: %s.", why());
    }

    private String why() {
        return switch (review.why()) {
            case SEEN -> "";
            case NO_AIRSPEED ->
                task.landing().isPresent()
                        ? "it needs the energy used, or the charge and the pack, and an airspeed or a distance"
                        : "there is no airspeed, and none follows from the wind";
            case NO_MASS ->
                task.landing().isPresent()
                        ? "it needs the mass and the wing span of the aircraft"
                        : "it needs the mass of the aircraft";
            case FEW -> "there are fewer than eight stretches of five seconds of steady level flight";
            case ONE_SPEED ->
                "the airspeeds of steady flight span less than 15 % of their mean (common practice), and one"
                        + " speed cannot tell parasite from induced drag";
            case INDISTINCT ->
                task.landing().isPresent()
                        ? "the wing alone would usually take more than the power that was measured"
                        : "the flight does not tell parasite from induced drag";
        };
    }
}
