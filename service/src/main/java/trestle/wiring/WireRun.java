package trestle.wiring;

import static trestle.finding.Digits.significant;

import java.util.List;
import java.util.Optional;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * A pair of leads from a supply to a load.
 *
 * @param name the builder's name for it
 * @param currentA continuous current of the load, A, 0 to 100 000
 * @param lengthM one way, m, 0.001 to 1000; the return is counted by the calculation
 * @param supplyVoltageV voltage at the supply, V, 0.1 to 1500
 * @param peak a short peak, not below the continuous current
 * @param parallelWires wires that share the current in each direction, at least 1
 * @param connectors connectors on the run; empty for none, and where they are not known
 * @param connectorsKnown whether the list of connectors is the builder's
 * @param feedsController whether it runs from the pack to a motor controller, whose input
 *     capacitors are stressed by the inductance of a long lead
 */
public record WireRun(
        String name,
        double currentA,
        double lengthM,
        double supplyVoltageV,
        Optional<CurrentPeak> peak,
        int parallelWires,
        List<Connector> connectors,
        boolean connectorsKnown,
        boolean feedsController) {
    /** Out and back. */
    public static final int WAYS = 2;

    /** Far beyond any wire on board; keeps the arithmetic finite. */
    private static final double MOST_CURRENT_A = 1e5;

    private static final double SHORTEST_M = 1e-3;
    private static final double LONGEST_M = 1000;
    private static final double LEAST_SUPPLY_V = 0.1;

    /** Low voltage ends here; so does this package. */
    private static final double MOST_SUPPLY_V = 1500;

    /** Checks the physics and copies the list. */
    public WireRun {
        Guard.present("name", name);
        Guard.within("currentA", currentA, 0, MOST_CURRENT_A);
        Guard.within("lengthM", lengthM, SHORTEST_M, LONGEST_M);
        Guard.within("supplyVoltageV", supplyVoltageV, LEAST_SUPPLY_V, MOST_SUPPLY_V);
        if (Guard.present("peak", peak).isPresent() && peak.get().currentA() < currentA) {
            throw new ImpossibleValue(
                    "peakCurrentA",
                    "a peak of " + significant(peak.get().currentA(), 4) + " A is below the continuous current of "
                            + significant(currentA, 4) + " A");
        }
        if (parallelWires < 1) {
            throw new ImpossibleValue(
                    "parallelWires", "parallelWires is " + parallelWires + ", and must be at least 1");
        }
        connectors = List.copyOf(connectors);
    }

    /**
     * A plain run: one wire each way, no peak, no connectors.
     *
     * @param name the builder's name for it
     * @param currentA continuous current, A
     * @param lengthM one way, m
     * @param supplyVoltageV voltage at the supply, V
     * @return the run
     */
    public static WireRun plain(String name, double currentA, double lengthM, double supplyVoltageV) {
        return new WireRun(name, currentA, lengthM, supplyVoltageV, Optional.empty(), 1, List.of(), true, false);
    }

    /**
     * Continuous current in each of the parallel wires.
     *
     * @return current, A
     */
    public double wireCurrentA() {
        return currentA / parallelWires;
    }

    /**
     * Wire that the run takes in all: both ways, every wire.
     *
     * @return length, m
     */
    public double wireLengthM() {
        return WAYS * parallelWires * lengthM;
    }

    /**
     * Resistance of the connectors in the loop.
     *
     * @return resistance, Ω
     */
    public double connectorResistanceOhm() {
        double sum = 0;
        for (Connector connector : connectors) {
            sum += connector.loopResistanceOhm();
        }
        return sum;
    }

    /**
     * Resistance of the wires in the loop, out and back, wires in parallel.
     *
     * @param wire the wire it is made of
     * @param conductorK temperature of the copper, K
     * @return resistance, Ω
     */
    public double wireResistanceOhm(Wire wire, double conductorK) {
        return wire.resistancePerMOhm(conductorK) * WAYS * lengthM / parallelWires;
    }
}
