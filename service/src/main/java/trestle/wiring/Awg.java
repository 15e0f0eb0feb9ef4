package trestle.wiring;

import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/** The American wire gauge, 0000 to 40. */
public final class Awg {
    /** Gauge 0000, by number. */
    public static final int THICKEST_NUMBER = -3;

    /** The thinnest gauge of the tables. */
    public static final int THINNEST_NUMBER = 40;

    /** Diameter of gauge 36, m: 0.005 in, exact, [1]. */
    private static final double GAUGE_36_DIAMETER_M = 0.127e-3;

    private Awg() {}

    /**
     * Diameter of the solid conductor: {@code 0.127 mm × 92^((36 − n) / 39)}, [1].
     *
     * @param number gauge number, −3 (0000) to 40
     * @return diameter, m
     * @throws ImpossibleValue outside that range
     */
    public static double diameterM(int number) {
        Guard.within("gauge", number, THICKEST_NUMBER, THINNEST_NUMBER);
        return GAUGE_36_DIAMETER_M * Math.pow(92, (36 - number) / 39.0);
    }

    /**
     * The gauge's name: {@code 0000} to {@code 0} for −3 to 0, then the number.
     *
     * @param number gauge number, −3 to 40
     * @return its name
     */
    public static String designation(int number) {
        return number > 0 ? Integer.toString(number) : "0".repeat(1 - number);
    }

    /**
     * The number behind a name: {@code 10}, {@code 00} or {@code 2/0}.
     *
     * @param designation name of a gauge
     * @return gauge number, −3 to 40
     * @throws ImpossibleValue when there is no such gauge
     */
    public static int number(String designation) {
        String name = Guard.present("gauge", designation).strip();
        for (int number = THICKEST_NUMBER; number <= THINNEST_NUMBER; number++) {
            boolean aught = number <= 0 && name.equals((1 - number) + "/0");
            if (aught || name.equals(designation(number))) {
                return number;
            }
        }
        throw new ImpossibleValue("gauge", "gauge " + name + " is not an American wire gauge from 0000 to 40");
    }
}
