package trestle.wiring;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;
import trestle.units.Area;

/** Metric conductors: nominal areas and the greatest resistance of class 5 (flexible), [3]. */
public final class MetricConductors {
    /**
     * Resistance over that of the nominal area in solid copper, where [3] has no class 5 entry
     * (below 0.5 mm²): the ratio of the smallest tabled areas, 0.5 to 1 mm², carried on.
     */
    private static final double UNTABLED_RESISTANCE_RATIO = 1.131;

    /** Nominal area, mm², and greatest resistance at 20 °C, Ω/km, plain copper; 0: not tabled. */
    private static final double[][] CLASS_5 = {
        {0.14, 0}, {0.25, 0}, {0.34, 0}, {0.5, 39.0}, {0.75, 26.0}, {1, 19.5}, {1.5, 13.3},
        {2.5, 7.98}, {4, 4.95}, {6, 3.30}, {10, 1.91}, {16, 1.21}, {25, 0.780}, {35, 0.554},
        {50, 0.386}
    };

    private MetricConductors() {}

    /**
     * The standard areas, thinnest first.
     *
     * @return nominal areas, mm²
     */
    public static List<Double> areasMm2() {
        return Arrays.stream(CLASS_5).map(row -> row[0]).toList();
    }

    /**
     * Greatest resistance of a flexible conductor at 20 °C, [3] class 5 plain; below 0.5 mm² 1.131
     * times that of the nominal area.
     *
     * @param areaMm2 one of the standard areas, mm²
     * @return resistance, Ω/m
     * @throws ImpossibleValue when the area is not a standard one
     */
    public static double resistancePerMOhm(double areaMm2) {
        double perKm = CLASS_5[row(areaMm2)][1];
        return perKm > 0 ? perKm / 1000 : UNTABLED_RESISTANCE_RATIO * Copper.resistancePerMOhm(Area.m2FromMm2(areaMm2));
    }

    private static int row(double areaMm2) {
        Guard.finite("gauge", areaMm2);
        for (int row = 0; row < CLASS_5.length; row++) {
            if (Math.abs(CLASS_5[row][0] - areaMm2) < 1e-9) {
                return row;
            }
        }
        String areas = areasMm2().stream().map(MetricConductors::text).collect(Collectors.joining(", "));
        throw new ImpossibleValue("gauge", text(areaMm2) + " mm² is not a standard area; those are " + areas);
    }

    /**
     * An area as the trade writes it: without a trailing zero.
     *
     * @param areaMm2 area, mm²
     * @return text, such as 0.75 or 6
     */
    static String text(double areaMm2) {
        return String.format(Locale.ROOT, "%.4f", areaMm2).replaceAll("\\.?0+$", "");
    }
}
