package trestle.rails;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Share;
import trestle.units.Temperature;

/** Judgements on one rail. */
final class RailFindings {
    /** Continuous load above this leaves no room for heat; common practice, no source. */
    static final double BUSY_FRACTION = 0.8;

    /** Input above this share of the rating leaves no room for spikes; common practice. */
    static final double NEAR_INPUT_MAX_FRACTION = 0.95;

    /**
     * Heat a bare package sheds: (125 − 40) °C over 50 K/W, a usual free-standing package in a warm
     * bay; common practice, no source.
     */
    static final double BARE_PACKAGE_HEAT_W = 1.7;

    private RailFindings() {}

    static List<Finding> of(Rail rail, RailLoad load, Supply supply, int index) {
        List<Finding> findings = new ArrayList<>();
        high(rail, supply, index).ifPresent(findings::add);
        low(rail, supply, index).ifPresent(findings::add);
        continuous(rail, load, index).ifPresent(findings::add);
        peak(rail, load, index).ifPresent(findings::add);
        heat(rail, load, index).ifPresent(findings::add);
        findings.addAll(stallCurrents(rail, index));
        if (rail.carries(LoadRole.SERVO) && rail.carries(LoadRole.FLIGHT_CONTROL)) {
            findings.add(Finding.of(
                    Severity.ATTENTION,
                    "servos-share-flight-control-rail",
                    Subject.of(RailPart.LOADS, index),
                    text(
                            "Rail %s feeds servos and flight control: a stalled servo can reset the flight computer;"
                                    + " give the servos a rail of their own.",
                            rail.name())));
        }
        return findings;
    }

    /** A servo without its stall current leaves the peak of its rail too low. */
    private static List<Finding> stallCurrents(Rail rail, int index) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < rail.loads().size(); i++) {
            Load load = rail.loads().get(i);
            if (load.role() == LoadRole.SERVO && load.peakA().isEmpty()) {
                findings.add(Finding.of(
                        Severity.ATTENTION,
                        "stall-current-missing",
                        Subject.of(RailPart.PEAK_OF_LOAD, index, i),
                        text(
                                "The stall current of %s on rail %s is not given, and is several times the %.2f A"
                                        + " counted as its peak: measure it or take it from the data sheet.",
                                load.name(), rail.name(), load.typicalA())));
            }
        }
        return findings;
    }

    private static Optional<Finding> high(Rail rail, Supply supply, int index) {
        double fullV = supply.fullVoltageV();
        double limitV = rail.regulator().inputMaxV();
        Subject subject = Subject.of(RailPart.INPUT_MAX, index);
        if (fullV > limitV) {
            return Optional.of(Finding.of(
                    Severity.STOP,
                    "input-over-range",
                    subject,
                    fullV,
                    limitV,
                    text(
                            "The full pack's %.1f V is above the %.1f V that the regulator of rail %s bears: it will"
                                    + " fail and may pass the pack's voltage on.",
                            fullV, limitV, rail.name())));
        }
        if (fullV > NEAR_INPUT_MAX_FRACTION * limitV) {
            return Optional.of(Finding.of(
                    Severity.ATTENTION,
                    "input-near-maximum",
                    subject,
                    fullV,
                    NEAR_INPUT_MAX_FRACTION * limitV,
                    text(
                            "The full pack's %.1f V is within 5 %% of the %.1f V that the regulator of rail %s bears:"
                                    + " spikes from the motor controller can pass it.",
                            fullV, limitV, rail.name())));
        }
        return Optional.empty();
    }

    private static Optional<Finding> low(Rail rail, Supply supply, int index) {
        double lowestV = supply.lowestVoltageV();
        double limitV = rail.regulator().leastInputV();
        if (lowestV >= limitV) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                rail.carriesTheFlight() ? Severity.STOP : Severity.ATTENTION,
                "rail-browns-out",
                Subject.of(RailPart.INPUT_MIN, index),
                lowestV,
                limitV,
                text(
                        "At the pack's lowest %.1f V rail %s browns out: its regulator" + " needs %.1f V.",
                        lowestV, rail.name(), limitV)));
    }

    private static Optional<Finding> continuous(Rail rail, RailLoad load, int index) {
        boolean over = load.loadFraction() > 1;
        if (!over && load.loadFraction() <= BUSY_FRACTION) {
            return Optional.empty();
        }
        double ratingA = rail.regulator().maxCurrentA();
        double limitA = over ? ratingA : BUSY_FRACTION * ratingA;
        return Optional.of(Finding.of(
                over ? Severity.STOP : Severity.ATTENTION,
                over ? "load-over-rating" : "load-near-rating",
                Subject.of(RailPart.MAX_CURRENT, index),
                load.typicalA(),
                limitA,
                text(
                        "Rail %s carries %.2f A, %.0f %% of its regulator's continuous" + " %.2f A%s.",
                        rail.name(),
                        load.typicalA(),
                        Share.percentFromFraction(load.loadFraction()),
                        ratingA,
                        over ? "" : "; keep it under 80 %")));
    }

    private static Optional<Finding> peak(Rail rail, RailLoad load, int index) {
        if (load.peakLoadFraction() <= 1) {
            return Optional.empty();
        }
        boolean rated = rail.regulator().peakCurrentA().isPresent();
        double limitA = rail.regulator().peakRatingA();
        return Optional.of(Finding.of(
                Severity.STOP,
                "peak-over-rating",
                Subject.of(rated ? RailPart.PEAK_CURRENT : RailPart.MAX_CURRENT, index),
                load.peakA(),
                limitA,
                text(
                        "Rail %s can be asked for %.2f A, over its regulator's %s %.2f A.",
                        rail.name(), load.peakA(), rated ? "peak rating of" : "continuous", limitA)));
    }

    private static Optional<Finding> heat(Rail rail, RailLoad load, int index) {
        Subject subject = Subject.of(RailPart.REGULATOR, index);
        if (rail.regulator().cooling().isEmpty()) {
            return load.heatW() <= BARE_PACKAGE_HEAT_W
                    ? Optional.empty()
                    : Optional.of(Finding.of(
                            Severity.ATTENTION,
                            "regulator-heat",
                            subject,
                            load.heatW(),
                            BARE_PACKAGE_HEAT_W,
                            text(
                                    "The regulator of rail %s makes %.1f W of heat, over the %.1f W that a bare"
                                            + " package sheds: see to its cooling.",
                                    rail.name(), load.heatW(), BARE_PACKAGE_HEAT_W)));
        }
        Cooling cooling = rail.regulator().cooling().get();
        double hottestK = cooling.temperatureK(load.heatW());
        if (hottestK <= cooling.highestTemperatureK()) {
            return Optional.empty();
        }
        double hottestC = Temperature.cFromK(hottestK);
        double limitC = Temperature.cFromK(cooling.highestTemperatureK());
        return Optional.of(Finding.of(
                Severity.STOP,
                "regulator-too-hot",
                subject,
                hottestC,
                limitC,
                text(
                        "With %.1f W of heat the regulator of rail %s reaches %.0f °C, over"
                                + " %.0f °C: bring its thermal resistance under %.1f K/W.",
                        load.heatW(),
                        rail.name(),
                        hottestC,
                        limitC,
                        Math.max(
                                0,
                                Cooling.greatestResistanceKPerW(
                                        load.heatW(), cooling.ambientTemperatureK(), cooling.highestTemperatureK())))));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
