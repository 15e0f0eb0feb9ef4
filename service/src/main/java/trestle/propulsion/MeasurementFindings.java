package trestle.propulsion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;

/** Are the measurements of a propeller possible, and do they cover what is asked of them? */
final class MeasurementFindings {
    /** A static test this far from the model is more likely a wrong entry than a rare propeller. */
    private static final double STATIC_TEST_LEAST_RATIO = 0.65;

    private static final double STATIC_TEST_GREATEST_RATIO = 1.5;

    private final Propeller propeller;
    private final DrivePerformance performance;
    private final List<Finding> findings = new ArrayList<>();

    private MeasurementFindings(Propeller propeller, DrivePerformance performance) {
        this.propeller = propeller;
        this.performance = performance;
    }

    /** The findings on what was measured of a propeller. */
    static List<Finding> of(PropulsionTask task, DrivePerformance performance, PowerTrain train) {
        MeasurementFindings judged = new MeasurementFindings(task.system().propeller(), performance);
        if (judged.propeller.data() instanceof CoefficientTable table) {
            judged.tableRows(table);
            judged.tableRange(train.propeller());
            judged.beyondIdeal(
                    "propeller-table-impossible-in-flight",
                    PropulsionPart.PROPELLER_TABLE,
                    "Between or beyond the rows of the table");
        }
        if (judged.propeller.data() instanceof StaticTest test) {
            judged.staticTest(test);
            judged.beyondIdeal(
                    "static-test-impossible-in-flight",
                    PropulsionPart.PROPELLER_STATIC_TEST,
                    "Scaled to the static test");
        }
        return judged.findings;
    }

    private Stream<OperatingPoint> points() {
        return Stream.concat(performance.cruise().stream(), performance.atFullThrottle().stream());
    }

    /** Momentum theory bounds every row; only a wrong entry passes it. */
    private void tableRows(CoefficientTable table) {
        for (int i = 0; i < table.rows().size(); i++) {
            CoefficientRow row = table.rows().get(i);
            PropellerCoefficients c = row.coefficients();
            double advanceRatio = row.advanceRatio();
            boolean atRest = advanceRatio == 0;
            double value = atRest ? c.figureOfMerit() : c.efficiency(advanceRatio);
            double limit = atRest ? 1 : c.idealEfficiency(advanceRatio);
            if (value > limit) {
                findings.add(Finding.of(
                        Severity.STOP,
                        "propeller-table-impossible",
                        Subject.of(PropulsionPart.PROPELLER_TABLE, i),
                        value,
                        limit,
                        String.format(
                                Locale.ROOT,
                                "At advance ratio %.3f the table gives an efficiency of"
                                        + " %.3f; momentum theory allows %.3f.",
                                advanceRatio,
                                value,
                                limit)));
            }
        }
    }

    /** Measurements can carry the flight past momentum theory where no row or test stands. */
    private void beyondIdeal(String code, PropulsionPart part, String basis) {
        points().filter(p -> p.efficiency().propeller() > p.idealPropellerEfficiency())
                .max(Comparator.comparingDouble(p -> p.efficiency().propeller()))
                .ifPresent(point -> findings.add(Finding.of(
                        Severity.STOP,
                        code,
                        Subject.of(part),
                        point.efficiency().propeller(),
                        point.idealPropellerEfficiency(),
                        String.format(
                                Locale.ROOT,
                                "%s, the propeller's efficiency at %.1f m/s is %.2f; momentum theory allows %.2f:"
                                        + " check the entries.",
                                basis,
                                point.airspeedMPerS(),
                                point.efficiency().propeller(),
                                point.idealPropellerEfficiency()))));
    }

    private void tableRange(PropellerMap map) {
        double least = map.leastMeasuredAdvanceRatio().orElse(0);
        double greatest = map.greatestAdvanceRatio();
        OptionalDouble outside = Stream.concat(performance.atRest().stream(), points().filter(p -> p.thrustN() > 0))
                .mapToDouble(OperatingPoint::advanceRatio)
                .filter(ratio -> ratio < least || ratio > greatest)
                .findFirst();
        if (outside.isPresent()) {
            double value = outside.getAsDouble();
            findings.add(Finding.of(
                    Severity.ATTENTION,
                    "propeller-table-exceeded",
                    Subject.of(PropulsionPart.PROPELLER_TABLE),
                    value,
                    value < least ? least : greatest,
                    String.format(
                            Locale.ROOT,
                            "The answer needs advance ratio %.3f and the table covers %.3f to %.3f: beyond it values"
                                    + " are continued, not measured.",
                            value,
                            least,
                            greatest)));
        }
    }

    private void staticTest(StaticTest test) {
        PropellerCoefficients measured = test.coefficients(propeller.diameterM());
        PropellerCoefficients expected = ScaledMap.expected(test, propeller);
        double merit = measured.figureOfMerit();
        if (merit > 1) {
            findings.add(Finding.of(
                    Severity.STOP,
                    "static-test-impossible",
                    Subject.of(PropulsionPart.PROPELLER_STATIC_TEST),
                    merit,
                    1,
                    String.format(
                            Locale.ROOT,
                            "The static test makes more thrust of its shaft power than an ideal propeller could: %.2f"
                                    + " times. Check diameter, thrust and power.",
                            merit)));
        }
        farFromModel("thrust", measured.thrust() / expected.thrust());
        farFromModel("power", measured.power() / expected.power());
    }

    private void farFromModel(String what, double ratio) {
        if (ratio < STATIC_TEST_LEAST_RATIO || ratio > STATIC_TEST_GREATEST_RATIO) {
            double limit = ratio < 1 ? STATIC_TEST_LEAST_RATIO : STATIC_TEST_GREATEST_RATIO;
            findings.add(Finding.of(
                    Severity.ATTENTION,
                    "static-test-far-from-model",
                    Subject.of(PropulsionPart.PROPELLER_STATIC_TEST),
                    ratio,
                    limit,
                    String.format(
                            Locale.ROOT,
                            "The %s of the static test is %.2f times what diameter, pitch"
                                    + " and blades suggest, past %.2f: check the entry.",
                            what,
                            ratio,
                            limit)));
        }
    }
}
