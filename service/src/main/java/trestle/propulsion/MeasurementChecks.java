package trestle.propulsion;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** Are the measurements of a propeller possible, and do they cover what is asked of them? */
final class MeasurementChecks {
    /** A static test this far from the model is more likely a wrong entry than a rare propeller. */
    /** A power near nothing gives no number that is worth telling. */
    private static final double MOST_TOLD = 1000;

    private static final double STATIC_TEST_LEAST_RATIO = 0.65;

    private static final double STATIC_TEST_GREATEST_RATIO = 1.5;

    /** This far off it is a unit that slipped. */
    private static final double SLIP_LEAST_RATIO = 0.3;

    private static final double SLIP_GREATEST_RATIO = 3;

    /** Figure of merit at rest above which a test is doubted; the best measured one is 0.79. */
    private static final double DOUBTFUL_MERIT = 0.85;

    private static final Basis MEASURED_MERIT =
            Basis.source("UIUC Propeller Data Site, volumes 1 and 3: 0.79 is the best of 47 propellers");
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
        judge.check("propeller-table-rows", "rows of the propeller's table", table, checks.ofTable(checks::tableRows));
        judge.check(
                "propeller-table-range",
                "advance ratios of the propeller's table",
                table,
                checks.ofTable((trial, rows) -> checks.tableRange(trial, train.propeller())));
        judge.check(
                "propeller-table-in-flight",
                "propeller's table between its rows",
                table,
                checks.ofTable((trial, rows) -> checks.beyondIdeal(trial)));
        Subject test = Subject.of(PropulsionPart.PROPELLER_STATIC_TEST);
        judge.check("static-test-merit", "thrust of the static test for its power", test, checks.ofTest(checks::merit));
        judge.check(
                "static-test-thrust",
                "thrust of the static test over the model's",
                test,
                checks.ofTest((trial, measured) -> checks.farFromModel(
                        trial,
                        "thrust",
                        checks.overModel(measured, PropellerCoefficients::thrust),
                        "check that it is in N (1 kgf is 9.81 N) and of one propeller.")));
        judge.check(
                "static-test-power",
                "power of the static test over the model's",
                test,
                checks.ofTest((trial, measured) -> checks.farFromModel(
                        trial,
                        "power",
                        checks.overModel(measured, PropellerCoefficients::power),
                        "check that it is at one shaft and not at the pack.")));
    }

    private Consumer<Trial> ofTable(BiConsumer<Trial, CoefficientTable> judged) {
        return trial -> {
            if (propeller.data() instanceof CoefficientTable table) {
                judged.accept(trial, table);
            } else {
                trial.notJudged(Subject.of(PropulsionPart.PROPELLER_TABLE));
            }
        };
    }

    private Consumer<Trial> ofTest(BiConsumer<Trial, StaticTest> judged) {
        return trial -> {
            if (propeller.data() instanceof StaticTest test) {
                judged.accept(trial, test);
            } else {
                trial.notJudged(Subject.of(PropulsionPart.PROPELLER_STATIC_TEST));
            }
        };
    }

    private Stream<OperatingPoint> points() {
        return Stream.concat(performance.cruise().stream(), performance.atFullThrottle().stream());
    }

    /** Momentum theory bounds every row; only a wrong entry passes it. */
    private void tableRows(Trial trial, CoefficientTable table) {
        int worst = IntStream.range(0, table.rows().size())
                .boxed()
                .max(Comparator.comparingDouble(i -> overIdeal(table.rows().get(i))))
                .orElseThrow();
        CoefficientRow row = table.rows().get(worst);
        trial.at(Subject.of(PropulsionPart.PROPELLER_TABLE, worst))
                .of(reached(row), "")
                .atMost(ideal(row), MOMENTUM)
                .stop(
                        "propeller-table-impossible",
                        "At advance ratio %.3f the table gives an efficiency of %.3f; momentum theory allows %.3f:"
                                + " check the coefficients.",
                        row.advanceRatio(),
                        reached(row),
                        ideal(row));
    }

    private static double overIdeal(CoefficientRow row) {
        return reached(row) - ideal(row);
    }

    private static double reached(CoefficientRow row) {
        PropellerCoefficients c = row.coefficients();
        double efficiency = row.advanceRatio() == 0 ? c.figureOfMerit() : c.efficiency(row.advanceRatio());
        return Math.min(efficiency, MOST_TOLD);
    }

    private static double ideal(CoefficientRow row) {
        return row.advanceRatio() == 0 ? 1 : row.coefficients().idealEfficiency(row.advanceRatio());
    }

    /** A table can carry the flight past momentum theory where no row stands. */
    private void beyondIdeal(Trial trial) {
        Optional<OperatingPoint> worst = points().max(
                        Comparator.comparingDouble(p -> p.efficiency().propeller() - p.idealPropellerEfficiency()));
        worst.ifPresent(point -> trial.of(point.efficiency().propeller(), "")
                .atMost(point.idealPropellerEfficiency(), MOMENTUM)
                .stop(
                        "propeller-table-impossible-in-flight",
                        "Between or beyond the rows of the table, the propeller's efficiency at %.1f m/s is %.2f; momentum"
                                + " theory allows %.2f: check the rows, or add one there.",
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

    private void merit(Trial trial, StaticTest test) {
        double merit = test.coefficients(propeller.diameterM()).figureOfMerit();
        trial.of(merit, "")
                .atMost(1, MOMENTUM)
                .stop(
                        "static-test-impossible",
                        "The static test makes more thrust of its shaft power than an ideal propeller could (%.2f"
                                + " times): check diameter, thrust and power.",
                        merit)
                .atMost(DOUBTFUL_MERIT, MEASURED_MERIT)
                .attention(
                        "static-test-doubtful",
                        "The static test makes %.2f of the thrust that an ideal propeller would need its power for, and"
                                + " the best of 47 measured propellers makes 0.79: check diameter, thrust and power.",
                        merit);
    }

    private double overModel(StaticTest test, ToDoubleFunction<PropellerCoefficients> of) {
        return of.applyAsDouble(test.coefficients(propeller.diameterM()))
                / of.applyAsDouble(ScaledMap.expected(test, propeller));
    }

    private void farFromModel(Trial trial, String what, double ratio, String slip) {
        String code = "static-test-far-from-model";
        String sentence = "The %s of the static test is %.2f times what diameter, pitch and blades suggest, %s %.2f"
                + " (common practice): %s";
        trial.of(ratio, "")
                .atLeast(SLIP_LEAST_RATIO, Basis.COMMON_PRACTICE)
                .stop(code, sentence, what, ratio, "below", SLIP_LEAST_RATIO, slip)
                .atMost(SLIP_GREATEST_RATIO, Basis.COMMON_PRACTICE)
                .stop(code, sentence, what, ratio, "above", SLIP_GREATEST_RATIO, slip)
                .atLeast(STATIC_TEST_LEAST_RATIO, Basis.COMMON_PRACTICE)
                .attention(code, sentence, what, ratio, "below", STATIC_TEST_LEAST_RATIO, slip)
                .atMost(STATIC_TEST_GREATEST_RATIO, Basis.COMMON_PRACTICE)
                .attention(code, sentence, what, ratio, "above", STATIC_TEST_GREATEST_RATIO, slip);
    }
}
