package trestle.wiring;

import static trestle.finding.Digits.significant;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Temperature;

/** The check of how warm the connectors of a run get. */
final class ConnectorHeatChecks {
    /** A connector that is warmer ages. Common practice, no source. */
    private static final double HOTTEST_C = 60;

    /** Two alike share the current, and each has a quarter of the heat. */
    private static final double HALVED_HEAT = 0.25;

    private final double limitC;
    private final Basis basis;
    private final double airC;

    private ConnectorHeatChecks(WireTask task) {
        Optional<ContactMaterial> least = task.touches().orElse(List.of()).stream()
                .filter(material -> material != ContactMaterial.SKIN)
                .min(Comparator.comparingDouble(ContactMaterial::limitK));
        double touchedC = least.map(it -> Temperature.cFromK(it.limitK())).orElse(HOTTEST_C);
        limitC = Math.min(HOTTEST_C, touchedC);
        basis = touchedC < HOTTEST_C
                ? Basis.source("the lowest limit of the reference table contact-temperatures")
                : Basis.COMMON_PRACTICE;
        airC = Temperature.cFromK(task.surroundings().sinkTemperatureK());
    }

    static void judge(WireTask task, Judge judge) {
        Subject connectors = Subject.of(WiringPart.CONNECTORS);
        if (!task.run().connectorsKnown()) {
            judge.check("connector-heat", "warmth of the connectors", connectors, trial -> trial.notJudged(connectors));
            return;
        }
        ConnectorHeatChecks checks = new ConnectorHeatChecks(task);
        List<Connector> all = task.run().connectors();
        for (int i = 0; i < all.size(); i++) {
            ConnectorHeat heat =
                    ConnectorHeat.of(all.get(i), task.run(), task.surroundings().sinkTemperatureK());
            judge.check(
                    "connector-heat",
                    "warmth of connector " + all.get(i).name(),
                    Subject.of(WiringPart.CONNECTOR, i),
                    trial -> checks.warm(heat, task.run(), trial));
        }
    }

    private void warm(ConnectorHeat heat, WireRun run, Trial trial) {
        double currentA = run.peak().map(CurrentPeak::currentA).orElse(run.currentA());
        trial.of(heat.temperatureC(), "°C")
                .atMost(limitC, basis)
                // One beyond its rating has been told so.
                .asSaid(
                        heat.temperatureC() > limitC
                                && run.currentA() > heat.connector().ratedCurrentA(),
                        Severity.ATTENTION)
                .attention(
                        "connector-hot",
                        "Connector %s warms by %.0f K at %s A to %.0f °C, above %.0f °C: %s.",
                        heat.connector().name(),
                        heat.riseK(),
                        significant(currentA, 3),
                        heat.temperatureC(),
                        limitC,
                        remedy(heat));
    }

    /** What brings it under the limit, worked out with the same law. */
    private String remedy(ConnectorHeat heat) {
        double roomK = limitC - airC;
        if (!(roomK > 0)) {
            return Judge.text("the air round it has %.0f °C already, so lead fresh air to it", airC);
        }
        double halvedC = airC + HALVED_HEAT * heat.riseK();
        String parallel = halvedC <= limitC
                ? Judge.text("two in parallel come to %.0f °C", halvedC)
                : "two in parallel are still too warm";
        return heat.connector().thermalResistanceKPerW().isPresent()
                ? parallel + ", or take one of less contact resistance"
                : parallel
                        + Judge.text(
                                ", or take one rated for %.0f A or more",
                                Math.ceil(heat.connector().ratedCurrentA() * Math.sqrt(heat.riseK() / roomK)));
    }
}
