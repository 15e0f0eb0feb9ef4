package trestle.battery;

import trestle.numeric.Guard;

/**
 * What the pack is in.
 *
 * @param ambientK temperature of the air around it, K, −50 to 70 °C
 * @param startK temperature of the cells at take-off, K, same range
 * @param covering what covers it
 */
public record Surroundings(double ambientK, double startK, Covering covering) {
    /** −50 and 70 °C, with room for the rounding of the conversion. */
    /** Coldest air that the cell model is asked about: −50 °C and a rounding, K. */
    public static final double COLDEST_K = 223.149;

    /** Hottest air that the cell model is asked about: 70 °C and a rounding, K. */
    public static final double HOTTEST_K = 343.151;

    /** Checks the physics. */
    public Surroundings {
        Guard.within("ambientK", ambientK, COLDEST_K, HOTTEST_K);
        Guard.within("startK", startK, COLDEST_K, HOTTEST_K);
        Guard.present("covering", covering);
    }

    /**
     * A pack that starts as cold or warm as the air.
     *
     * @param ambientK temperature of air and cells, K
     * @param covering how it is wrapped
     * @return the surroundings
     */
    public static Surroundings of(double ambientK, Covering covering) {
        return new Surroundings(ambientK, ambientK, covering);
    }
}
