package trestle.propulsion;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** Are the measurements of a propeller possible, and do they cover what is asked of them? */
final class MeasurementChecks {
    /** A static test this far from the model is more likely a wrong entry than a rare propeller. */
    private static final double STATIC_TEST_LEAST_RATIO = 0.65;

    private static final double STATIC_TEST_GREATEST_RATIO = 1.5;
    private static final Basis MOMENTUM = Basis.source("momentum theory (Rankine, Froude; from memory)");

    private final Propeller propeller;
    private final DrivePerformance performance;

    private MeasurementChecks(Propeller propeller, DrivePerformance performance) {
        this.propeller = propeller;
        this.performance = performance;
    }

    /** Judges what was measured of a propeller. */
    static void judge(PropulsionTask task, DrivePerformance performance, PowerTrain train, Judge judge) {
        MeasurementChecks checks = new MeasurementChecks(task.system().propeller(), performance);
        Subject table = Subject.of(PropulsionPart.PROPELLER_TABLE);
        if (checks.propeller.data() instanceof CoefficientTable rows) {
            checks.tableRows(rows, judge);
            judge.check(
                    "propeller-table-range",
                    "advance ratios of the propeller's table",
                    table,
                    trial -> checks.tableRange(trial, train.propeller()));
            judge.check(
                    "propeller-table-in-flight",
                    "the propeller's table between its rows",
                    table,
                    trial -> checks.beyondIdeal(
                            trial, "propeller-table-impossible-in-flight", "Between or beyond the rows of the table"));
        }
        Subject test = Subject.of(PropulsionPart.PROPELLER_STATIC_TEST);
        if (checks.propeller.data() instanceof StaticTest measured) {
            checks.staticTest(measured, judge);
            judge.check(
                    "static-test-in-flight",
                    "the static test carried into flight",
                    test,
                    trial ->
                            checks.beyondIdeal(trial, "static-test-impossible-in-flight", "Scaled to the static test"));
        }
    }

    private Stream<OperatingPoint> points() {
        return Stream.concat(performance.cruise().stream(), performance.atFullThrottle().stream());
    }

    /** Momentum theory bounds every row; only a wrong entry passes it. */
    private void tableRows(CoefficientTable table, Judge judge) {
        for (int i = 0; i < table.rows().size(); i++) {
            CoefficientRow row = table.rows().get(i);
            judge.check(
                    "propeller-table-row",
                    "a row of the propeller's table",
                    Subject.of(PropulsionPart.PROPELLER_TABLE, i),
                    trial -> tableRow(trial, row));
        }
    }

    private static void tableRow(Trial trial, CoefficientRow row) {
        PropellerCoefficients c = row.coefficients();
        double advanceRatio = row.advanceRatio();
        boolean atRest = advanceRatio == 0;
        double value = atRest ? c.figureOfMerit() : c.efficiency(advanceRatio);
        double limit = atRest ? 1 : c.idealEfficiency(advanceRatio);
        trial.of(value, "")
                .atMost(limit, MOMENTUM)
                .stop(
                        "propeller-table-impossible",
                        "At advance ratio %.3f the table gives an efficiency of %.3f; momentum theory allows %.3f.",
                        advanceRatio,
                        value,
                        limit);
    }

    /** Measurements can carry the flight past momentum theory where no row or test stands. */
    private void beyondIdeal(Trial trial, String code, String basis) {
        Optional<OperatingPoint> worst = points().filter(p -> p.efficiency().propeller() > p.idealPropellerEfficiency())
                .max(Comparator.comparingDouble(p -> p.efficiency().propeller()));
        worst.ifPresent(point -> trial.of(point.efficiency().propeller(), "")
                .atMost(point.idealPropellerEfficiency(), MOMENTUM)
                .stop(
                        code,
                        "%s, the propeller's efficiency at %.1f m/s is %.2f; momentum theory allows %.2f:"
                                + " check the entries.",
                        basis,
                        point.airspeedMPerS(),
                        point.efficiency().propeller(),
                        point.idealPropellerEfficiency()));
    }

    private void tableRange(Trial trial, PropellerMap map) {
        double least = map.leastMeasuredAdvanceRatio().orElse(0);
        double greatest = map.greatestAdvanceRatio();
        OptionalDouble outside = Stream.concat(performance.atRest().stream(), points().filter(p -> p.thrustN() > 0))
                .mapToDouble(OperatingPoint::advanceRatio)
                .filter(ratio -> ratio < least || ratio > greatest)
                .findFirst();
        if (outside.isPresent()) {
            double value = outside.getAsDouble();
            trial.of(value, "");
            (value < least ? trial.atLeast(least, Basis.REQUEST) : trial.atMost(greatest, Basis.REQUEST))
                    .attention(
                            "propeller-table-exceeded",
                            "The answer needs advance ratio %.3f and the table covers %.3f to %.3f: beyond it values"
                                    + " are continued, not measured.",
                            value,
                            least,
                            greatest);
        }
    }

    private void staticTest(StaticTest test, Judge judge) {
        PropellerCoefficients measured = test.coefficients(propeller.diameterM());
        PropellerCoefficients expected = ScaledMap.expected(test, propeller);
        Subject subject = Subject.of(PropulsionPart.PROPELLER_STATIC_TEST);
        double merit = measured.figureOfMerit();
        judge.check(
                "static-test-merit",
                "thrust of the static test for its power",
                subject,
                trial -> trial.of(merit, "")
                        .atMost(1, MOMENTUM)
                        .stop(
                                "static-test-impossible",
                                "The static test makes more thrust of its shaft power than an ideal propeller could: %.2f"
                                        + " times. Check diameter, thrust and power.",
                                merit));
        farFromModel("thrust", measured.thrust() / expected.thrust(), judge);
        farFromModel("power", measured.power() / expected.power(), judge);
    }

    private static void farFromModel(String what, double ratio, Judge judge) {
        String sentence = "The %s of the static test is %.2f times what diameter, pitch and blades suggest, past %.2f:"
                + " check the entry.";
        String code = "static-test-far-from-model";
        judge.check(
                "static-test-" + what,
                what + " of the static test over the model's",
                Subject.of(PropulsionPart.PROPELLER_STATIC_TEST),
                trial -> trial.of(ratio, "")
                        .atLeast(STATIC_TEST_LEAST_RATIO, Basis.COMMON_PRACTICE)
                        .attention(code, sentence, what, ratio, STATIC_TEST_LEAST_RATIO)
                        .atMost(STATIC_TEST_GREATEST_RATIO, Basis.COMMON_PRACTICE)
                        .attention(code, sentence, what, ratio, STATIC_TEST_GREATEST_RATIO));
    }
}
