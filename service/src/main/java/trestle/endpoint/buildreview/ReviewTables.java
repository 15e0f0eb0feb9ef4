package trestle.endpoint.buildreview;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiEnergyUse;
import trestle.api.model.ApiGaugeResult;
import trestle.api.model.ApiLegUse;
import trestle.api.model.ApiRunReview;
import trestle.figure.Numbers;
import trestle.sheet.Table;
import trestle.units.Time;

/** Wires and legs as tables; a table without a row is left out. */
public final class ReviewTables {
    private static final String ABSENT = "–";

    private static final List<String> WIRES = List.of(
            "Run",
            "Continuous, A",
            "Peak, A",
            "Gauge",
            "Copper, mm²",
            "Drop, V",
            "Drop, %",
            "Loss, W",
            "Copper, °C",
            "In peak, °C",
            "Mass, g",
            "Fails");

    private static final List<String> LEGS = List.of(
            "Leg",
            "Begins, min",
            "Lasts, min",
            "Airspeed, m/s",
            "Power, W",
            "Energy, Wh",
            "Ground, km",
            "Lowest, V",
            "Flown");

    private ReviewTables() {}

    static List<Table> of(ApiBuildReviewAnswer answer) {
        List<Table> tables = new ArrayList<>();
        ApiEnergyUse energy = answer.endurance().energy();
        List<ApiLegUse> legs = energy.legs();
        if (!legs.isEmpty()) {
            tables.add(new Table(
                    "Legs",
                    summary(energy),
                    LEGS,
                    IntStream.range(0, legs.size())
                            .mapToObj(i -> leg(i + 1, legs.get(i)))
                            .toList()));
        }
        if (!answer.wireSizing().isEmpty()) {
            tables.add(new Table(
                    "Wires",
                    "",
                    WIRES,
                    answer.wireSizing().stream().map(ReviewTables::wire).toList()));
        }
        return tables;
    }

    /** The gauge fitted is the checked one, else the recommended one, as the review weighed it. */
    private static List<String> wire(ApiRunReview run) {
        Optional<ApiGaugeResult> fitted = Optional.ofNullable(run.answer().checked())
                .or(() -> Optional.ofNullable(run.answer().recommended()));
        return List.of(
                run.name(),
                number(run.currentA(), 1),
                number(run.peakCurrentA(), 1),
                fitted.map(ApiGaugeResult::gauge).orElse("none meets"),
                of(fitted.map(ApiGaugeResult::areaMm2), 2),
                of(fitted.map(ApiGaugeResult::dropV), 2),
                of(fitted.map(ApiGaugeResult::dropPercent), 1),
                of(fitted.map(ApiGaugeResult::lossW), 2),
                of(fitted.map(ApiGaugeResult::conductorTemperatureC), 0),
                of(fitted.map(ApiGaugeResult::peakTemperatureC), 0),
                of(fitted.map(ApiGaugeResult::massG), 1),
                fitted.map(ReviewTables::fails).orElse(ABSENT));
    }

    private static String fails(ApiGaugeResult gauge) {
        return gauge.meets()
                ? ABSENT
                : gauge.fails().stream()
                        .map(failure -> failure.name().toLowerCase(Locale.ROOT))
                        .collect(Collectors.joining(", "));
    }

    private static List<String> leg(int place, ApiLegUse leg) {
        return List.of(
                place + " " + leg.kind().name().toLowerCase(Locale.ROOT),
                number(Time.minFromS(leg.startS()), 1),
                number(Time.minFromS(leg.durationS()), 1),
                number(leg.airspeedMPerS(), 1),
                number(leg.powerW(), 0),
                number(leg.energyWh(), 1),
                number(leg.distanceKm(), 1),
                number(leg.lowestVoltageV(), 2),
                leg.completed() ? "yes" : "no");
    }

    private static String summary(ApiEnergyUse energy) {
        return String.format(
                "%s Wh to the cutoff: %s Wh for the legs, %s Wh kept as reserve, %s Wh left",
                number(energy.availableWh(), 0),
                number(energy.legsWh(), 0),
                number(energy.reserveWh(), 0),
                number(energy.remainingWh(), 0));
    }

    private static String of(Optional<Double> value, int places) {
        return number(value.orElse(null), places);
    }

    private static String number(Double value, int places) {
        return value == null ? ABSENT : Numbers.fixed(value, places);
    }
}
