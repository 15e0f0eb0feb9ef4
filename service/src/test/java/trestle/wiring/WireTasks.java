package trestle.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.units.Temperature;

/** Tasks that the tests of this package vary. */
final class WireTasks {
    private WireTasks() {}

    /** A pack lead of a large model: 60 A, 600 mm, 12 cells in series, silicone, open air. */
    static WireTask packLead() {
        return task(WireRun.plain("pack lead", 60, 0.6, 44.4), Insulation.SILICONE_200, freeAir(25));
    }

    static WireTask task(WireRun run, Insulation insulation, Surroundings surroundings) {
        return new WireTask(
                run,
                insulation,
                OptionalDouble.empty(),
                surroundings,
                DropLimits.of(OptionalDouble.empty(), OptionalDouble.empty()),
                Optional.empty(),
                GaugeSystem.AWG,
                Optional.empty(),
                Optional.empty());
    }

    static Surroundings freeAir(double ambientC) {
        return Surroundings.freeAir(Temperature.kFromC(ambientC), 0);
    }

    static Surroundings in(Enclosure enclosure, double ambientC, int bundledConductors) {
        return new Surroundings(
                enclosure,
                Temperature.kFromC(ambientC),
                OptionalDouble.empty(),
                0,
                bundledConductors,
                Surroundings.USUAL_FOAM_WALL_M);
    }

    static WireTask with(WireTask task, WireRun run) {
        return new WireTask(
                run,
                task.insulation(),
                task.wallM(),
                task.surroundings(),
                task.drops(),
                task.touches(),
                task.system(),
                task.checked(),
                task.flight());
    }

    static WireTask with(WireTask task, Surroundings surroundings) {
        return task(task.run(), task.insulation(), surroundings);
    }

    /** The same with another run, touching. */
    static WireTask with(WireTask task, WireRun run, ContactMaterial first, ContactMaterial... more) {
        List<ContactMaterial> touches = new ArrayList<>(List.of(more));
        touches.add(first);
        return touching(with(task, run), touches.toArray(ContactMaterial[]::new));
    }

    /** The same with another run, elsewhere. */
    static WireTask with(WireTask task, WireRun run, Surroundings surroundings) {
        return new WireTask(
                run,
                task.insulation(),
                task.wallM(),
                surroundings,
                task.drops(),
                task.touches(),
                task.system(),
                task.checked(),
                task.flight());
    }

    static WireTask checking(WireTask task, Gauge gauge) {
        return new WireTask(
                task.run(),
                task.insulation(),
                task.wallM(),
                task.surroundings(),
                task.drops(),
                task.touches(),
                task.system(),
                Optional.of(gauge),
                task.flight());
    }

    static WireTask flying(WireTask task, Flight flight) {
        return new WireTask(
                task.run(),
                task.insulation(),
                task.wallM(),
                task.surroundings(),
                task.drops(),
                task.touches(),
                task.system(),
                task.checked(),
                Optional.of(flight));
    }

    static WireTask touching(WireTask task, ContactMaterial... touches) {
        return new WireTask(
                task.run(),
                task.insulation(),
                task.wallM(),
                task.surroundings(),
                task.drops(),
                Optional.of(List.of(touches)),
                task.system(),
                task.checked(),
                task.flight());
    }

    static WireRun peaking(WireRun run, double currentA, double durationS) {
        return new WireRun(
                run.name(),
                run.currentA(),
                run.lengthM(),
                run.supplyVoltageV(),
                Optional.of(new CurrentPeak(currentA, durationS)),
                run.parallelWires(),
                run.connectors(),
                run.connectorsKnown(),
                run.feedsController());
    }

    static WireRun connected(WireRun run, Connector... connectors) {
        return new WireRun(
                run.name(),
                run.currentA(),
                run.lengthM(),
                run.supplyVoltageV(),
                run.peak(),
                run.parallelWires(),
                List.of(connectors),
                true,
                run.feedsController());
    }

    static WireRun parallel(WireRun run, int parallelWires) {
        return new WireRun(
                run.name(),
                run.currentA(),
                run.lengthM(),
                run.supplyVoltageV(),
                run.peak(),
                parallelWires,
                run.connectors(),
                run.connectorsKnown(),
                run.feedsController());
    }
}
