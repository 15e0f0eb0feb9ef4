package trestle.wiring;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * What is known of the two ends of a run when it is plugged in.
 *
 * @param fullVoltageV highest voltage at the supply, V; empty where not known
 * @param sourceResistanceOhm resistance before the run, pack included, Ω; empty where not known
 * @param capacitanceF capacitance at the far end, F; empty where not known
 * @param precharge what charges it first; empty where nothing does
 */
public record PlugEnd(
        OptionalDouble fullVoltageV,
        OptionalDouble sourceResistanceOhm,
        OptionalDouble capacitanceF,
        Optional<Precharge> precharge) {
    /** Nothing is known. */
    public static final PlugEnd UNKNOWN =
            new PlugEnd(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    /** Checks that nothing is null. */
    public PlugEnd {
        Guard.present("fullVoltageV", fullVoltageV);
        Guard.present("sourceResistanceOhm", sourceResistanceOhm);
        Guard.present("capacitanceF", capacitanceF);
        Guard.present("precharge", precharge);
    }

    /**
     * The same behind a source that is known, as far as nothing else is said of it.
     *
     * @param voltageV its highest voltage, V, above 0
     * @param resistanceOhm its resistance, Ω, above 0
     * @return the ends
     */
    public PlugEnd behind(double voltageV, double resistanceOhm) {
        return new PlugEnd(
                OptionalDouble.of(fullVoltageV.orElse(voltageV)),
                OptionalDouble.of(sourceResistanceOhm.orElse(resistanceOhm)),
                capacitanceF,
                precharge);
    }

    /**
     * Current of a short right behind the source, which nothing else limits.
     *
     * @param supplyVoltageV voltage at the supply, V, where no full voltage is known
     * @return current, A; empty where the resistance of the source is not known
     */
    public OptionalDouble shortCircuitA(double supplyVoltageV) {
        double voltageV = fullVoltageV.orElse(supplyVoltageV);
        return sourceResistanceOhm.stream().map(ohm -> voltageV / ohm).findFirst();
    }
}
