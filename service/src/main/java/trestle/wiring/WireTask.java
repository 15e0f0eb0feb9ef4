package trestle.wiring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * What a gauge is sought for.
 *
 * @param run the leads
 * @param insulation kind of insulation
 * @param wallM wall of the insulation, m; empty for the wall that is usual for each gauge
 * @param surroundings where the leads lie
 * @param drops what it may drop, connectors included
 * @param touches what the wire touches; empty where that is not known
 * @param system which sizes to choose from
 * @param checked one gauge to judge besides
 * @param flight flight data; empty when only the mass counts
 * @param fuse a fuse in the run; empty where none is asked about
 * @param plug what is known of its ends when it is plugged in
 */
public record WireTask(
        WireRun run,
        Insulation insulation,
        OptionalDouble wallM,
        Surroundings surroundings,
        DropLimits drops,
        Optional<List<ContactMaterial>> touches,
        GaugeSystem system,
        Optional<Gauge> checked,
        Optional<Flight> flight,
        Optional<Fuse> fuse,
        PlugEnd plug) {
    /** Checks the physics. */
    public WireTask {
        Guard.present("run", run);
        Guard.present("insulation", insulation);
        Guard.present("wallM", wallM);
        Guard.present("surroundings", surroundings);
        Guard.present("drops", drops);
        touches = Guard.present("touches", touches).map(List::copyOf);
        Guard.present("system", system);
        Guard.present("checked", checked);
        Guard.present("flight", flight);
        Guard.present("fuse", fuse);
        Guard.present("plug", plug);
    }

    /** Without a fuse, and plugged in unknown. */
    public WireTask(
            WireRun run,
            Insulation insulation,
            OptionalDouble wallM,
            Surroundings surroundings,
            DropLimits drops,
            Optional<List<ContactMaterial>> touches,
            GaugeSystem system,
            Optional<Gauge> checked,
            Optional<Flight> flight) {
        this(
                run,
                insulation,
                wallM,
                surroundings,
                drops,
                touches,
                system,
                checked,
                flight,
                Optional.empty(),
                PlugEnd.UNKNOWN);
    }

    /**
     * The wire of one gauge.
     *
     * @param gauge the conductor
     * @return with the wall given, or the usual one
     */
    public Wire wire(Gauge gauge) {
        return wallM.isPresent() ? new Wire(gauge, insulation, wallM.getAsDouble()) : Wire.usual(gauge, insulation);
    }

    /**
     * The surroundings in force: parallel wires of a lead lie together, so that there are at
     * least as many conductors in the bundle as wires.
     *
     * @return the surroundings
     */
    public Surroundings effectiveSurroundings() {
        return surroundings.bundledAtLeast(run.parallelWires());
    }

    /**
     * The temperature that a gauge must stay below, a margin under the rating.
     *
     * @return temperature, K
     */
    public double temperatureLimitK() {
        return insulation.ratingTemperatureK() - WireSizing.TEMPERATURE_MARGIN_K;
    }

    /**
     * The way of the heat of a wire here.
     *
     * @param wire the wire
     * @return its way
     */
    HeatPath path(Wire wire) {
        return new HeatPath(wire, effectiveSurroundings());
    }
}
