package trestle.units;

/** Energy: watt hour at the edge, joule inside. */
public final class Energy {
    /** Exact. */
    private static final double JOULES_PER_WATT_HOUR = 3600;

    private Energy() {}

    /**
     * Energy, J.
     *
     * @param energyWh energy, Wh
     * @return energy, J
     */
    public static double jFromWh(double energyWh) {
        return energyWh * JOULES_PER_WATT_HOUR;
    }

    /**
     * Energy, Wh.
     *
     * @param energyJ energy, J
     * @return energy, Wh
     */
    public static double whFromJ(double energyJ) {
        return energyJ / JOULES_PER_WATT_HOUR;
    }
}
