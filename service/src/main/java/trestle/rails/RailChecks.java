package trestle.rails;

import java.util.Locale;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Digits;
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

    /** Heat that a linear regulator sheds on a heat sink of 10 K/W, which is large for an aircraft; common practice. */
    static final double HEAT_SINK_HEAT_W = 5 * BARE_PACKAGE_HEAT_W;

    /** Heat that a switching module sheds on its board and in an air stream; common practice. */
    static final double MODULE_HEAT_W = 10 * BARE_PACKAGE_HEAT_W;

    /** More than a consumer on a rail takes, A, and far more; common practice. */
    static final double MUCH_LOAD_A = 20;

    static final double TOO_MUCH_LOAD_A = 100;

    private final Rail rail;
    private final RailLoad load;
    private final Supply supply;
    private final int index;

    /** The rail in a sentence, and at its beginning. */
    private final String named;

    private final String begins;

    private RailChecks(Rail rail, RailLoad load, Supply supply, int index) {
        this.rail = rail;
        this.load = load;
        this.supply = supply;
        this.index = index;
        this.named = named(rail.name());
        this.begins = named.substring(0, 1).toUpperCase(Locale.ROOT) + named.substring(1);
    }

    /** Most builders call a servo rail a servo rail. */
    private static String named(String name) {
        return name.toLowerCase(Locale.ROOT).contains("rail") ? name : "rail " + name;
    }

    static void judge(Rail rail, RailLoad load, Supply supply, int index, Judge judge) {
        RailChecks checks = new RailChecks(rail, load, supply, index);
        String of = " of " + checks.named;
        Subject regulator = Subject.of(RailPart.REGULATOR, index);
        judge.essential(
                "rail-input-maximum", "full pack at the input" + of, checks.at(RailPart.INPUT_MAX), checks::high);
        judge.essential(
                "rail-input-minimum", "lowest pack at the input" + of, checks.at(RailPart.INPUT_MIN), checks::low);
        judge.essential("rail-load", "continuous load" + of, checks.at(RailPart.MAX_CURRENT), checks::continuous);
        judge.essential("rail-peak", "peak load" + of, checks.at(RailPart.MAX_CURRENT), checks::peak);
        judge.essential("rail-heat", "heat of the regulator" + of, regulator, checks::heat);
        judge.check("rail-loads-plausible", "currents" + of + " as typed", checks.at(RailPart.LOADS), checks::typed);
        checks.stallCurrents(judge);
        judge.check(
                "rail-sharing",
                "servos and flight control apart on " + checks.named,
                checks.at(RailPart.LOADS),
                checks::sharing);
    }

    private Subject at(RailPart part) {
        return Subject.of(part, index);
    }

    private void high(Trial trial) {
        double fullV = supply.fullVoltageV();
        double limitV = rail.regulator().inputMaxV();
        double wantedV = Math.ceil(fullV / NEAR_INPUT_MAX_FRACTION);
        String full = Digits.beside(fullV, limitV, 1);
        String limit = Digits.beside(limitV, fullV, 1);
        trial.of(fullV, "V")
                .atMost(limitV, Basis.REQUEST)
                .stop(
                        "input-over-range",
                        "The full pack's %s V is above the maximum input of %s V of the regulator of %s: it will"
                                + " fail and may pass the pack's voltage on; use one rated for %.0f V or more.",
                        full,
                        limit,
                        named,
                        wantedV)
                .atMost(NEAR_INPUT_MAX_FRACTION * limitV, Basis.COMMON_PRACTICE)
                .attention(
                        "input-near-maximum",
                        "The full pack's %s V is within 5 %% (common practice) of the maximum input of %s V of the"
                                + " regulator of %s: spikes from the motor controller can pass it; use one rated"
                                + " for %.0f V or more.",
                        full,
                        limit,
                        named,
                        wantedV);
    }

    private void low(Trial trial) {
        double lowestV = supply.lowestVoltageV();
        double limitV = rail.regulator().leastInputV();
        String lowest = Digits.beside(lowestV, limitV, 1);
        String limit = Digits.beside(limitV, lowestV, 1);
        String sentence = "At the pack's lowest %s V %s browns out: its regulator needs %s V; stop at a higher pack"
                + " voltage, or use a regulator that needs less.";
        trial.of(lowestV, "V")
                .atLeast(limitV, Basis.REQUEST)
                .stopIf(lowestV < limitV && rail.carriesTheFlight(), "rail-browns-out", sentence, lowest, named, limit)
                .attention("rail-browns-out", sentence, lowest, named, limit);
    }

    private void continuous(Trial trial) {
        double loadA = load.typicalA();
        double ratingA = rail.regulator().maxCurrentA();
        double percent = Share.percentFromFraction(load.loadFraction());
        double wantedA = Math.ceil(10 * loadA / BUSY_FRACTION) / 10;
        trial.of(loadA, "A")
                .atMost(ratingA, Basis.REQUEST)
                .stop(
                        "load-over-rating",
                        "%s carries %s A, %.0f %% of its regulator's continuous %s A: use one rated for %.1f A or"
                                + " more.",
                        begins,
                        Digits.beside(loadA, ratingA, 2),
                        percent,
                        Digits.beside(ratingA, loadA, 2),
                        wantedA)
                .atMost(BUSY_FRACTION * ratingA, Basis.COMMON_PRACTICE)
                .attention(
                        "load-near-rating",
                        "%s carries %s A, %.0f %% of its regulator's continuous %s A, and 80 %% (common practice)"
                                + " leaves room for heat: use one rated for %.1f A or more.",
                        begins,
                        Digits.beside(loadA, ratingA, 2),
                        percent,
                        Digits.beside(ratingA, loadA, 2),
                        wantedA);
    }

    private void peak(Trial trial) {
        boolean rated = rail.regulator().peakCurrentA().isPresent();
        double limitA = rail.regulator().peakRatingA();
        trial.at(at(rated ? RailPart.PEAK_CURRENT : RailPart.MAX_CURRENT))
                .of(load.peakA(), "A")
                .atMost(limitA, Basis.REQUEST)
                .stop(
                        "peak-over-rating",
                        "%s can be asked for %s A, over its regulator's %s %s A: use one rated for more, or move"
                                + " loads to another rail.",
                        begins,
                        Digits.beside(load.peakA(), limitA, 2),
                        rated ? "peak rating of" : "continuous",
                        Digits.beside(limitA, load.peakA(), 2));
    }

    private void heat(Trial trial) {
        Optional<Cooling> cooling = rail.regulator().cooling();
        if (cooling.isPresent()) {
            temperature(trial, cooling.get());
            return;
        }
        boolean linear = linear();
        double mostW = linear ? HEAT_SINK_HEAT_W : MODULE_HEAT_W;
        String remedy = linear ? switching() : "use a more efficient one, or give its cooling";
        trial.of(load.heatW(), "W")
                .atMost(mostW, Basis.COMMON_PRACTICE)
                .stop(
                        "regulator-heat",
                        "The %s regulator of %s makes %s W of heat, and %s sheds %.1f W (common practice): %s.",
                        linear ? "linear" : "switching",
                        named,
                        Digits.beside(load.heatW(), mostW, 1),
                        linear ? "even a large heat sink" : "a module in an air stream",
                        mostW,
                        remedy)
                .atMost(BARE_PACKAGE_HEAT_W, Basis.COMMON_PRACTICE)
                .attention(
                        "regulator-heat",
                        "The regulator of %s makes %s W of heat, over the %.1f W (common practice) that a bare"
                                + " package sheds: see to its cooling%s.",
                        named,
                        Digits.beside(load.heatW(), BARE_PACKAGE_HEAT_W, 1),
                        BARE_PACKAGE_HEAT_W,
                        linear ? ", or " + switching() : "");
    }

    private boolean linear() {
        return rail.regulator().conversion() instanceof Conversion.Linear;
    }

    /** What a usual switching regulator would make of the same load. */
    private String switching() {
        double outputW = rail.regulator().outputVoltageV() * load.typicalA();
        double heatW = outputW * (1 / Conversion.Switching.USUAL_EFFICIENCY_RATIO - 1);
        return Judge.text("use a switching one (about %.1f W of heat)", heatW);
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
                        "With %.1f W of heat the regulator of %s reaches %s °C, over its maximum of %s °C: bring"
                                + " its thermal resistance under %.1f K/W%s.",
                        load.heatW(),
                        named,
                        Digits.beside(hottestC, limitC, 0),
                        Digits.beside(limitC, hottestC, 0),
                        Math.max(0, leastKPerW),
                        linear() ? ", or " + switching() : "");
    }

    private void typed(Trial trial) {
        double greatestA = rail.loads().stream()
                .mapToDouble(one -> one.peakA().orElse(one.typicalA()))
                .max()
                .orElse(0);
        String typed = Digits.significant(greatestA, 4);
        String sentence = "A load of %s takes %s A, more than the %.0f A of any (common practice): is it in mA? %s mA"
                + " are %s A.";
        String meant = Digits.significant(greatestA / 1000, 4);
        trial.of(greatestA, "A")
                .atMost(TOO_MUCH_LOAD_A, Basis.COMMON_PRACTICE)
                .stop("load-implausible", sentence, named, typed, TOO_MUCH_LOAD_A, typed, meant)
                .atMost(MUCH_LOAD_A, Basis.COMMON_PRACTICE)
                .attention("load-implausible", sentence, named, typed, MUCH_LOAD_A, typed, meant);
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
                                "The stall current of %s on %s is not given, and is several times the %.2f A counted as"
                                        + " its peak: measure it or take it from the data sheet.",
                                servo.name(),
                                named,
                                servo.typicalA()));
            }
        }
    }

    private void sharing(Trial trial) {
        trial.attentionIf(
                rail.carries(LoadRole.SERVO) && rail.carries(LoadRole.FLIGHT_CONTROL),
                "servos-share-flight-control-rail",
                "%s feeds servos and flight control: a stalled servo can reset the flight controller; give the"
                        + " servos a rail of their own.",
                begins);
    }
}
