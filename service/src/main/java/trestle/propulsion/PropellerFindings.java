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
import trestle.units.Length;
import trestle.units.Rotation;

/** Is the propeller one that the model was checked on, and are its measurements possible? */
final class PropellerFindings {
    /** Ranges of the wind-tunnel data [2] that the model was held against. */
    private static final double SMALLEST_IN = 9;

    private static final double LARGEST_IN = 21;
    private static final double LEAST_PITCH_RATIO = 0.3;
    private static final double GREATEST_PITCH_RATIO = 1.1;
    private static final int MOST_BLADES = 4;
    private static final double SLOWEST_RPM = 3000;

    /** All the data lie below 0.3; above 0.6 compressibility is felt. Common practice. */
    private static final double TIP_MACH_LIMIT = 0.6;

    /** A static test this far from the model is more likely a wrong entry than a rare propeller. */
    private static final double STATIC_TEST_LEAST_RATIO = 0.65;

    private static final double STATIC_TEST_GREATEST_RATIO = 1.5;

    private final Propeller propeller;
    private final DrivePerformance performance;
    private final List<Finding> findings = new ArrayList<>();

    private PropellerFindings(Propeller propeller, DrivePerformance performance) {
        this.propeller = propeller;
        this.performance = performance;
    }

    /** The findings on a propeller. */
    static List<Finding> of(PropulsionTask task, DrivePerformance performance, PowerTrain train) {
        PropellerFindings judged = new PropellerFindings(task.system().propeller(), performance);
        if (judged.propeller.data() instanceof CoefficientTable table) {
            judged.tableRows(table);
            judged.tableRange(train.propeller());
            judged.beyondIdeal(
                    "propeller-table-impossible-in-flight",
                    PropulsionPart.PROPELLER_TABLE,
                    "Between or beyond the rows of the table");
        } else {
            judged.checkedRange();
            judged.wideInCruise();
        }
        if (judged.propeller.data() instanceof StaticTest test) {
            judged.staticTest(test);
            judged.beyondIdeal(
                    "static-test-impossible-in-flight",
                    PropulsionPart.PROPELLER_STATIC_TEST,
                    "Scaled to the static test");
        }
        judged.tipMach();
        return judged.findings;
    }

    private Stream<OperatingPoint> points() {
        return Stream.concat(performance.cruise().stream(), performance.atFullThrottle().stream());
    }

    private void checkedRange() {
        double diameterIn = Length.inFromM(propeller.diameterM());
        outside(
                diameterIn,
                SMALLEST_IN,
                LARGEST_IN,
                "diameter",
                "in",
                PropulsionPart.PROPELLER_DIAMETER);
        outside(
                propeller.pitchM() / propeller.diameterM(),
                LEAST_PITCH_RATIO,
                GREATEST_PITCH_RATIO,
                "pitch over diameter",
                "",
                PropulsionPart.PROPELLER_PITCH);
        outside(
                propeller.bladeCount(),
                2,
                MOST_BLADES,
                "number of blades",
                "",
                PropulsionPart.PROPELLER_BLADES);
        performance
                .atRest()
                .ifPresent(
                        p ->
                                outside(
                                        Rotation.rpmFromRadPerS(p.rotationRadPerS()),
                                        SLOWEST_RPM,
                                        Double.MAX_VALUE,
                                        "speed at full throttle",
                                        "rpm",
                                        PropulsionPart.PROPELLER));
    }

    private void outside(
            double value,
            double least,
            double greatest,
            String what,
            String unit,
            PropulsionPart part) {
        if (value < least || value > greatest) {
            double limit = value < least ? least : greatest;
            findings.add(
                    Finding.of(
                            Severity.ATTENTION,
                            "propeller-outside-checked-range",
                            Subject.of(part),
                            value,
                            limit,
                            String.format(
                                    Locale.ROOT,
                                    "The propeller's %s is %s, %s the %s to which the model was"
                                            + " checked: measure static thrust and power, and give"
                                            + " them.",
                                    what,
                                    withUnit(value, unit),
                                    value < least ? "below" : "above",
                                    withUnit(limit, unit))));
        }
    }

    private static String withUnit(double value, String unit) {
        return (Figures.of(value) + " " + unit).strip();
    }

    private void tableRange(PropellerMap map) {
        double least = map.leastMeasuredAdvanceRatio().orElse(0);
        double greatest = map.greatestAdvanceRatio();
        OptionalDouble outside =
                Stream.concat(performance.atRest().stream(), points().filter(p -> p.thrustN() > 0))
                        .mapToDouble(OperatingPoint::advanceRatio)
                        .filter(ratio -> ratio < least || ratio > greatest)
                        .findFirst();
        if (outside.isPresent()) {
            double value = outside.getAsDouble();
            findings.add(
                    Finding.of(
                            Severity.ATTENTION,
                            "propeller-table-exceeded",
                            Subject.of(PropulsionPart.PROPELLER_TABLE),
                            value,
                            value < least ? least : greatest,
                            String.format(
                                    Locale.ROOT,
                                    "The answer needs advance ratio %.3f and the table covers %.3f"
                                            + " to %.3f: beyond it values are continued, not"
                                            + " measured.",
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
            findings.add(
                    Finding.of(
                            Severity.STOP,
                            "static-test-impossible",
                            Subject.of(PropulsionPart.PROPELLER_STATIC_TEST),
                            merit,
                            1,
                            String.format(
                                    Locale.ROOT,
                                    "The static test makes more thrust of its shaft power than an"
                                            + " ideal propeller could: %.2f times. Check diameter,"
                                            + " thrust and power.",
                                    merit)));
        }
        farFromModel("thrust", measured.thrust() / expected.thrust());
        farFromModel("power", measured.power() / expected.power());
    }

    private void farFromModel(String what, double ratio) {
        if (ratio < STATIC_TEST_LEAST_RATIO || ratio > STATIC_TEST_GREATEST_RATIO) {
            double limit = ratio < 1 ? STATIC_TEST_LEAST_RATIO : STATIC_TEST_GREATEST_RATIO;
            findings.add(
                    Finding.of(
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

    private void wideInCruise() {
        if (propeller.bladeType() == BladeType.WIDE && performance.cruise().isPresent()) {
            findings.add(
                    Finding.of(
                            Severity.ATTENTION,
                            "wide-blades-in-cruise",
                            Subject.of(PropulsionPart.PROPELLER_BLADE_TYPE),
                            "For wide slow-flight blades static thrust is good to about 5 %, but"
                                    + " thrust and power in flight only to about 20 and 25 %."));
        }
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
                findings.add(
                        Finding.of(
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
                .ifPresent(
                        point ->
                                findings.add(
                                        Finding.of(
                                                Severity.STOP,
                                                code,
                                                Subject.of(part),
                                                point.efficiency().propeller(),
                                                point.idealPropellerEfficiency(),
                                                String.format(
                                                        Locale.ROOT,
                                                        "%s, the propeller's efficiency at %.1f m/s"
                                                                + " is %.2f; momentum theory allows"
                                                                + " %.2f: check the entries.",
                                                        basis,
                                                        point.airspeedMPerS(),
                                                        point.efficiency().propeller(),
                                                        point.idealPropellerEfficiency()))));
    }

    private void tipMach() {
        performance.tipMachRatio().stream()
                .filter(mach -> mach > TIP_MACH_LIMIT)
                .forEach(
                        mach ->
                                findings.add(
                                        Finding.of(
                                                Severity.ATTENTION,
                                                "tip-mach-high",
                                                Subject.of(PropulsionPart.PROPELLER_DIAMETER),
                                                mach,
                                                TIP_MACH_LIMIT,
                                                String.format(
                                                        Locale.ROOT,
                                                        "The blade tips reach Mach %.2f; above"
                                                                + " %.1f the model does not count"
                                                                + " the losses and the noise"
                                                                + " grows.",
                                                        mach,
                                                        TIP_MACH_LIMIT))));
    }
}
