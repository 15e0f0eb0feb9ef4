package trestle.wiring;

import static trestle.finding.Judge.text;
import static trestle.units.Temperature.cFromK;

import java.util.Optional;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.units.Length;

/** The model choices that touched the numbers of a task. */
final class WireAssumptions {
    private final WireTask task;
    private final Judge judge;

    private WireAssumptions(WireTask task, Judge judge) {
        this.task = task;
        this.judge = judge;
    }

    static void note(WireTask task, Optional<GaugeAnswer> chosen, Judge judge) {
        WireAssumptions all = new WireAssumptions(task, judge);
        all.conductor();
        all.wall(chosen);
        all.enclosure();
        all.bundle();
        if (!task.run().connectors().isEmpty()) {
            all.add(WiringPart.CONNECTOR, "two contacts in each connector", "the current passes it out and back");
        }
        if (task.flight().isPresent()) {
            all.add(
                    WiringPart.FLIGHT,
                    "a gram carried costs 1.5 times the mean power per gram",
                    "power goes with mass to the 1.5 at a fixed lift coefficient");
        }
    }

    private void conductor() {
        boolean american = task.system() == GaugeSystem.AWG;
        add(
                WiringPart.GAUGE_SYSTEM,
                american
                        ? "stranded copper, 2 % above the resistance of solid wire (common practice)"
                        : "the maximum resistance that IEC 60228 class 5 allows; below 0.5 mm²"
                                + " the same ratio to solid copper",
                american ? "strands run longer than the wire" : "the area is nominal");
    }

    private void wall(Optional<GaugeAnswer> chosen) {
        if (task.wallM().isEmpty()) {
            add(
                    WiringPart.INSULATION_THICKNESS,
                    chosen.map(a -> text(
                                    "%.2f mm on %s",
                                    Length.mmFromM(a.wire().wallM()), a.gauge().label()))
                            .orElse("the usual wall of each size"),
                    "usual for size and material");
        }
    }

    private void enclosure() {
        Surroundings surroundings = task.surroundings();
        switch (surroundings.enclosure()) {
            case FREE_AIR ->
                add(
                        WiringPart.ENCLOSURE,
                        "a level wire in still air, surface emissivity 0.9",
                        "moving air cools better");
            case STILL_BAY -> bay(surroundings);
            case FOAM_CHANNEL ->
                add(
                        WiringPart.FOAM_WALL,
                        text(
                                "%.0f mm of foam of 0.035 W/(m K) all round, its outer face at ambient temperature",
                                Length.mmFromM(surroundings.foamWallM())),
                        "heat leaves a foam channel by conduction only");
        }
    }

    private void bay(Surroundings surroundings) {
        if (surroundings.bayTemperatureK().isEmpty()) {
            add(
                    WiringPart.AMBIENT,
                    text("bay air at %.1f °C", cFromK(surroundings.sinkTemperatureK())),
                    "a closed bay is taken 10 °C warmer than outside");
        }
    }

    private void bundle() {
        int together = task.effectiveSurroundings().bundledConductors();
        if (together > 1) {
            add(
                    WiringPart.BUNDLED_CONDUCTORS,
                    text(
                            "%d conductors as one cylinder of %.2f times the diameter of one, its"
                                    + " core warmer than its face",
                            together, HeatPath.BUNDLE_ENVELOPE_RATIO * Math.sqrt(together)),
                    "they share their heat");
        }
        if (together > task.surroundings().bundledConductors()) {
            add(
                    WiringPart.PARALLEL_WIRES,
                    text("the %d parallel wires lie together", together),
                    "both ends meet at the same contacts");
        }
    }

    private void add(WiringPart part, String assumed, String because) {
        judge.assume(Subject.of(part), assumed, because);
    }
}
