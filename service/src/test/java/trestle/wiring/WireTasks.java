package trestle.wiring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.units.Temperature;

/** Tasks that the tests of this package vary. */
final class WireTasks {
    private WireTasks() {}

    /** A battery lead of a large model: 60 A, 600 mm, 12 cells in series, silicone, open air. */
    static WireTask batteryLead() {
        return task(WireRun.plain("battery", 60, 0.6, 44.4), Insulation.SILICONE_200, freeAir(25));
    }

    static WireTask task(WireRun run, Insulation insulation, Surroundings surroundings) {
        return new WireTask(
                run,
                insulation,
                OptionalDouble.empty(),
                surroundings,
                WireTask.USUAL_MAX_DROP_FRACTION,
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
                task.maxDropFraction(),
                task.system(),
                task.checked(),
                task.flight());
    }

    static WireTask with(WireTask task, Surroundings surroundings) {
        return task(task.run(), task.insulation(), surroundings);
    }

    static WireTask checking(WireTask task, Gauge gauge) {
        return new WireTask(
                task.run(),
                task.insulation(),
                task.wallM(),
                task.surroundings(),
                task.maxDropFraction(),
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
                task.maxDropFraction(),
                task.system(),
                task.checked(),
                Optional.of(flight));
    }

    static WireRun peaking(WireRun run, double currentA, double durationS) {
        return new WireRun(
                run.name(),
                run.currentA(),
                run.lengthM(),
                run.supplyVoltageV(),
                Optional.of(new CurrentPeak(currentA, durationS)),
                run.strandsInParallel(),
                run.connectors(),
                run.feedsController());
    }

    static WireRun connected(WireRun run, Connector... connectors) {
        return new WireRun(
                run.name(),
                run.currentA(),
                run.lengthM(),
                run.supplyVoltageV(),
                run.peak(),
                run.strandsInParallel(),
                List.of(connectors),
                run.feedsController());
    }

    static WireRun stranded(WireRun run, int strandsInParallel) {
        return new WireRun(
                run.name(),
                run.currentA(),
                run.lengthM(),
                run.supplyVoltageV(),
                run.peak(),
                strandsInParallel,
                run.connectors(),
                run.feedsController());
    }
}
