package trestle.units;

/** Pressure: hectopascal at the edge, pascal inside. */
public final class Pressure {
    private Pressure() {}

    /**
     * Pressure, Pa.
     *
     * @param pressureHpa pressure, hPa
     * @return pressure, Pa
     */
    public static double paFromHpa(double pressureHpa) {
        return pressureHpa * 100;
    }

    /**
     * Pressure, hPa.
     *
     * @param pressurePa pressure, Pa
     * @return pressure, hPa
     */
    public static double hpaFromPa(double pressurePa) {
        return pressurePa / 100;
    }

    /**
     * Stress or modulus, Pa.
     *
     * @param stressMpa stress, MPa
     * @return stress, Pa
     */
    public static double paFromMpa(double stressMpa) {
        return stressMpa * 1e6;
    }

    /**
     * Stress or modulus, MPa.
     *
     * @param stressPa stress, Pa
     * @return stress, MPa
     */
    public static double mpaFromPa(double stressPa) {
        return stressPa / 1e6;
    }
}
