package trestle.binding;

import static java.util.Map.entry;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/**
 * Names that version 0.1 of the contract had and that were given better ones: whoever still sends one
 * is told which. Where one name became several, the one that is known at the place is told.
 */
final class Renamed {
    private static final Map<String, String> NOW = Map.ofEntries(
            entry("strands_in_parallel", "parallel_wires"),
            entry("insulation", "covering"),
            entry("mission", "flight"),
            entry("battery_mass_g", "pack_mass_g"),
            entry("k1", "induced_power_coefficient"),
            entry("k3", "parasite_power_coefficient"),
            entry("stranded_energy_wh", "energy_below_cutoff_wh"),
            entry("total_efficiency", "drive_efficiency"),
            entry("launch_stall", "launch_and_climb"),
            entry("launch-stall", "launch-and-climb"));

    private Renamed() {}

    /**
     * What a name is called now.
     *
     * @param name that is not known
     * @param known the names at the place
     * @return the new name; empty where this is none of the old ones, or its new one is not known here
     */
    static Optional<String> now(String name, Collection<String> known) {
        return Optional.ofNullable(NOW.get(name)).filter(known::contains);
    }
}
