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
}
