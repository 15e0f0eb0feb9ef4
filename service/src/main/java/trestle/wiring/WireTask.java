package trestle.wiring;

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
 * @param maxDropFraction greatest drop over supply voltage, connectors included, 0 to 1
 * @param system which sizes to choose from
 * @param checked one gauge to judge besides
 * @param flight flight data; empty when only the mass counts
 */
public record WireTask(
        WireRun run,
        Insulation insulation,
        OptionalDouble wallM,
        Surroundings surroundings,
        double maxDropFraction,
        GaugeSystem system,
        Optional<Gauge> checked,
        Optional<Flight> flight) {
    /** Drop limit where none is given. Common practice, no source; [7] has 2 % for main feeders. */
    public static final double USUAL_MAX_DROP_FRACTION = 0.03;

    /** Checks the physics. */
    public WireTask {
        Guard.present("run", run);
        Guard.present("insulation", insulation);
        Guard.present("wallM", wallM);
        Guard.present("surroundings", surroundings);
        Guard.positive("maxDropFraction", maxDropFraction);
        Guard.within("maxDropFraction", maxDropFraction, 0, 1);
        Guard.present("system", system);
        Guard.present("checked", checked);
        Guard.present("flight", flight);
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
     * The surroundings in force: parallel strands of a lead lie together, so that there are at
     * least as many conductors in the bundle as strands.
     *
     * @return the surroundings
     */
    public Surroundings effectiveSurroundings() {
        return surroundings.bundledAtLeast(run.strandsInParallel());
    }

    /**
     * The temperature that a gauge must stay below, a margin under the rating.
     *
     * @return temperature, K
     */
    public double temperatureLimitK() {
        return insulation.ratingTemperatureK() - WireSizing.TEMPERATURE_MARGIN_K;
    }
}
