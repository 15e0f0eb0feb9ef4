package trestle.units;

/** Resistance: milliohm at the edge, ohm inside. */
public final class Resistance {
    private Resistance() {}

    /**
     * Resistance, Ω.
     *
     * @param resistanceMilliohm resistance, mΩ
     * @return resistance, Ω
     */
    public static double ohmFromMilliohm(double resistanceMilliohm) {
        return resistanceMilliohm / 1000;
    }

    /**
     * Resistance, mΩ.
     *
     * @param resistanceOhm resistance, Ω
     * @return resistance, mΩ
     */
    public static double milliohmFromOhm(double resistanceOhm) {
        return resistanceOhm * 1000;
    }
}
