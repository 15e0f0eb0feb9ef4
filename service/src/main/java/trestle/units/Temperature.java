package trestle.units;

/** Temperature: degree Celsius at the edge, kelvin inside. */
public final class Temperature {
    /** Ice point, K, exact by definition. */
    private static final double ZERO_CELSIUS_K = 273.15;

    private Temperature() {}

    /**
     * Temperature, K.
     *
     * @param temperatureC temperature, °C
     * @return temperature, K
     */
    public static double kFromC(double temperatureC) {
        return temperatureC + ZERO_CELSIUS_K;
    }

    /**
     * Temperature, °C.
     *
     * @param temperatureK temperature, K
     * @return temperature, °C
     */
    public static double cFromK(double temperatureK) {
        return temperatureK - ZERO_CELSIUS_K;
    }
}
