package trestle.wiring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A run of wire as it is laid, before it is known what flows through it.
 *
 * @param name the builder's name for it
 * @param lengthM one way, m
 * @param parallelWires wires that share the current in each direction, at least 1
 * @param connectors connectors on the run; empty where they are not known
 * @param insulation kind of insulation
 * @param wallM wall of the insulation, m; empty for the wall that is usual for each gauge
 * @param enclosure what surrounds it
 * @param bayTemperatureK air of the bay, K, where known
 * @param bundledConductors conductors lying together that carry its current, at least 1
 * @param foamWallM foam between wire and outside, m, above 0
 * @param drops what it may drop, connectors included
 * @param touches what the wire touches; empty where that is not known
 * @param system which sizes to choose from
 * @param checked one gauge to judge besides
 * @param fuse a fuse in the run; empty where none is asked about
 * @param plug what is known of its ends when it is plugged in
 */
public record WirePlan(
        String name,
        double lengthM,
        int parallelWires,
        Optional<List<Connector>> connectors,
        Insulation insulation,
        OptionalDouble wallM,
        Enclosure enclosure,
        OptionalDouble bayTemperatureK,
        int bundledConductors,
        double foamWallM,
        DropLimits drops,
        Optional<List<ContactMaterial>> touches,
        GaugeSystem system,
        Optional<Gauge> checked,
        Optional<Fuse> fuse,
        PlugEnd plug) {
    /** Copies the list. */
    public WirePlan {
        Guard.present("name", name);
        connectors = Guard.present("connectors", connectors).map(List::copyOf);
    }

    /**
     * The same run with other ends.
     *
     * @param ends what is known of them
     * @return the run
     */
    public WirePlan pluggedAs(PlugEnd ends) {
        return new WirePlan(
                name,
                lengthM,
                parallelWires,
                connectors,
                insulation,
                wallM,
                enclosure,
                bayTemperatureK,
                bundledConductors,
                foamWallM,
                drops,
                touches,
                system,
                checked,
                fuse,
                ends);
    }

    /**
     * The task that this run is, once it is known what flows and where.
     *
     * @param duty what flows through it
     * @param ambientTemperatureK outside air, K
     * @param altitudeM geopotential altitude, m
     * @return the task
     */
    public WireTask task(WireDuty duty, double ambientTemperatureK, double altitudeM) {
        WireRun run = new WireRun(
                name,
                duty.currentA(),
                lengthM,
                duty.supplyVoltageV(),
                duty.peak(),
                parallelWires,
                connectors.orElse(List.of()),
                connectors.isPresent(),
                duty.feedsController());
        Surroundings surroundings = new Surroundings(
                enclosure, ambientTemperatureK, bayTemperatureK, altitudeM, bundledConductors, foamWallM);
        return new WireTask(
                run, insulation, wallM, surroundings, drops, touches, system, checked, duty.flight(), fuse, plug);
    }
}
