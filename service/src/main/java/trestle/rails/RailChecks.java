package trestle.rails;

import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Share;
import trestle.units.Temperature;

/** The checks of one rail. */
final class RailChecks {
    /** Continuous load above this leaves no room for heat; common practice, no source. */
    static final double BUSY_FRACTION = 0.8;

    /** Input above this share of the rating leaves no room for spikes; common practice. */
    static final double NEAR_INPUT_MAX_FRACTION = 0.95;

    /**
     * Heat a bare package sheds: (125 − 40) °C over 50 K/W, a usual free-standing package in a warm
     * bay; common practice, no source.
     */
    static final double BARE_PACKAGE_HEAT_W = 1.7;

    private final Rail rail;
    private final RailLoad load;
    private final Supply supply;
    private final int index;

    private RailChecks(Rail rail, RailLoad load, Supply supply, int index) {
        this.rail = rail;
        this.load = load;
        this.supply = supply;
        this.index = index;
    }

    static void judge(Rail rail, RailLoad load, Supply supply, int index, Judge judge) {
        RailChecks checks = new RailChecks(rail, load, supply, index);
        String of = " of rail " + rail.name();
        Subject regulator = Subject.of(RailPart.REGULATOR, index);
        judge.essential(
                "rail-input-maximum", "full pack at the input" + of, checks.at(RailPart.INPUT_MAX), checks::high);
        judge.essential(
                "rail-input-minimum", "lowest pack at the input" + of, checks.at(RailPart.INPUT_MIN), checks::low);
        judge.essential("rail-load", "continuous load" + of, checks.at(RailPart.MAX_CURRENT), checks::continuous);
        judge.essential("rail-peak", "peak load" + of, checks.at(RailPart.MAX_CURRENT), checks::peak);
        judge.essential("rail-heat", "heat of the regulator" + of, regulator, checks::heat);
        checks.stallCurrents(judge);
        judge.check(
                "rail-sharing",
                "servos and flight control apart on rail " + rail.name(),
                checks.at(RailPart.LOADS),
                checks::sharing);
    }

    private Subject at(RailPart part) {
        return Subject.of(part, index);
    }

    private void high(Trial trial) {
        double fullV = supply.fullVoltageV();
        double limitV = rail.regulator().inputMaxV();
        trial.of(fullV, "V")
                .atMost(limitV, Basis.REQUEST)
                .stop(
                        "input-over-range",
                        "The full pack's %.1f V is above the %.1f V that the regulator of rail %s bears: it will fail"
                                + " and may pass the pack's voltage on.",
                        fullV,
                        limitV,
                        rail.name())
                .atMost(NEAR_INPUT_MAX_FRACTION * limitV, Basis.COMMON_PRACTICE)
                .attention(
                        "input-near-maximum",
                        "The full pack's %.1f V is within 5 %% of the %.1f V that the regulator of rail %s bears:"
                                + " spikes from the motor controller can pass it.",
                        fullV,
                        limitV,
                        rail.name());
    }

    private void low(Trial trial) {
        double lowestV = supply.lowestVoltageV();
        double limitV = rail.regulator().leastInputV();
        boolean browns = lowestV < limitV;
        String sentence = "At the pack's lowest %.1f V rail %s browns out: its regulator needs %.1f V.";
        trial.of(lowestV, "V")
                .atLeast(limitV, Basis.REQUEST)
                .stopIf(browns && rail.carriesTheFlight(), "rail-browns-out", sentence, lowestV, rail.name(), limitV)
                .attention("rail-browns-out", sentence, lowestV, rail.name(), limitV);
    }

    private void continuous(Trial trial) {
        double ratingA = rail.regulator().maxCurrentA();
        double percent = Share.percentFromFraction(load.loadFraction());
        String sentence = "Rail %s carries %.2f A, %.0f %% of its regulator's continuous %.2f A%s.";
        trial.of(load.typicalA(), "A")
                .atMost(ratingA, Basis.REQUEST)
                .stopIf(
                        load.loadFraction() > 1,
                        "load-over-rating",
                        sentence,
                        rail.name(),
                        load.typicalA(),
                        percent,
                        ratingA,
                        "")
                .atMost(BUSY_FRACTION * ratingA, Basis.COMMON_PRACTICE)
                .attentionIf(
                        load.loadFraction() > BUSY_FRACTION,
                        "load-near-rating",
                        sentence,
                        rail.name(),
                        load.typicalA(),
                        percent,
                        ratingA,
                        "; keep it under 80 %");
    }

    private void peak(Trial trial) {
        boolean rated = rail.regulator().peakCurrentA().isPresent();
        double limitA = rail.regulator().peakRatingA();
        trial.at(at(rated ? RailPart.PEAK_CURRENT : RailPart.MAX_CURRENT))
                .of(load.peakA(), "A")
                .atMost(limitA, Basis.REQUEST)
                .stopIf(
                        load.peakLoadFraction() > 1,
                        "peak-over-rating",
                        "Rail %s can be asked for %.2f A, over its regulator's %s %.2f A.",
                        rail.name(),
                        load.peakA(),
                        rated ? "peak rating of" : "continuous",
                        limitA);
    }

    private void heat(Trial trial) {
        Optional<Cooling> cooling = rail.regulator().cooling();
        if (cooling.isPresent()) {
            temperature(trial, cooling.get());
            return;
        }
        trial.of(load.heatW(), "W")
                .atMost(BARE_PACKAGE_HEAT_W, Basis.COMMON_PRACTICE)
                .attention(
                        "regulator-heat",
                        "The regulator of rail %s makes %.1f W of heat, over the %.1f W that a bare package sheds: see"
                                + " to its cooling.",
                        rail.name(),
                        load.heatW(),
                        BARE_PACKAGE_HEAT_W);
    }

    private void temperature(Trial trial, Cooling cooling) {
        double hottestC = Temperature.cFromK(cooling.temperatureK(load.heatW()));
        double limitC = Temperature.cFromK(cooling.highestTemperatureK());
        double leastKPerW = Cooling.greatestResistanceKPerW(
                load.heatW(), cooling.ambientTemperatureK(), cooling.highestTemperatureK());
        trial.of(hottestC, "°C")
                .atMost(limitC, Basis.REQUEST)
                .stop(
                        "regulator-too-hot",
                        "With %.1f W of heat the regulator of rail %s reaches %.0f °C, over %.0f °C: bring its thermal"
                                + " resistance under %.1f K/W.",
                        load.heatW(),
                        rail.name(),
                        hottestC,
                        limitC,
                        Math.max(0, leastKPerW));
    }

    /** A servo without its stall current leaves the peak of its rail too low. */
    private void stallCurrents(Judge judge) {
        for (int i = 0; i < rail.loads().size(); i++) {
            Load servo = rail.loads().get(i);
            Subject peak = Subject.of(RailPart.PEAK_OF_LOAD, index, i);
            if (servo.role() == LoadRole.SERVO) {
                judge.check(
                        "servo-stall-current",
                        "stall current of " + servo.name(),
                        peak,
                        trial -> trial.attentionIf(
                                servo.peakA().isEmpty(),
                                "stall-current-missing",
                                "The stall current of %s on rail %s is not given, and is several times the %.2f A counted as"
                                        + " its peak: measure it or take it from the data sheet.",
                                servo.name(),
                                rail.name(),
                                servo.typicalA()));
            }
        }
    }

    private void sharing(Trial trial) {
        trial.attentionIf(
                rail.carries(LoadRole.SERVO) && rail.carries(LoadRole.FLIGHT_CONTROL),
                "servos-share-flight-control-rail",
                "Rail %s feeds servos and flight control: a stalled servo can reset the flight computer; give the"
                        + " servos a rail of their own.",
                rail.name());
    }
}
