package trestle.wiring;

import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;
import trestle.units.Area;

/**
 * A conductor size.
 *
 * @param system how it is named
 * @param designation its name: {@code 10}, {@code 00}, {@code 2.5}
 * @param areaM2 copper area, m², above 0
 * @param resistancePerMOhm resistance of the stranded conductor at 20 °C, Ω/m, above 0
 */
public record Gauge(GaugeSystem system, String designation, double areaM2, double resistancePerMOhm) {
    /**
     * Stranded over solid resistance of the same copper area: the strands run a few percent longer
     * than the wire. Common practice, no source.
     */
    public static final double LAY_RATIO = 1.02;

    /**
     * Diameter round the strands over that of the solid conductor: 0.78 of the circle is copper.
     * Common practice, no source.
     */
    public static final double STRANDED_DIAMETER_RATIO = 1.13;

    /** Checks the physics. */
    public Gauge {
        Guard.present("system", system);
        Guard.present("designation", designation);
        Guard.positive("areaM2", areaM2);
        Guard.positive("resistancePerMOhm", resistancePerMOhm);
    }

    /**
     * An American wire gauge, stranded.
     *
     * @param number gauge number, −3 (0000) to 40
     * @return the conductor
     * @throws ImpossibleValue outside that range
     */
    public static Gauge awg(int number) {
        double diameterM = Awg.diameterM(number);
        double areaM2 = Math.PI / 4 * diameterM * diameterM;
        return new Gauge(
                GaugeSystem.AWG, Awg.designation(number), areaM2, LAY_RATIO * Copper.resistancePerMOhm(areaM2));
    }

    /**
     * A metric flexible conductor.
     *
     * @param areaMm2 one of the standard areas of {@link MetricConductors}, mm²
     * @return the conductor
     * @throws ImpossibleValue when there is no such area
     */
    public static Gauge metric(double areaMm2) {
        return new Gauge(
                GaugeSystem.METRIC,
                MetricConductors.text(areaMm2),
                Area.m2FromMm2(areaMm2),
                MetricConductors.resistancePerMOhm(areaMm2));
    }

    /**
     * The conductor behind a name.
     *
     * @param system how it is named
     * @param text {@code 10}, {@code 00} or {@code 2/0}; {@code 6} or {@code 6.0}
     * @return the conductor
     * @throws ImpossibleValue when the system has no such size
     */
    public static Gauge parse(GaugeSystem system, String text) {
        if (system == GaugeSystem.AWG) {
            return awg(Awg.number(text));
        }
        try {
            return metric(Double.parseDouble(text.strip()));
        } catch (NumberFormatException notANumber) {
            throw new ImpossibleValue("gauge", "gauge " + text + " is not an area in mm²");
        }
    }

    /**
     * Diameter of a solid conductor of the same copper area.
     *
     * @return diameter, m
     */
    public double solidDiameterM() {
        return Math.sqrt(4 / Math.PI * areaM2);
    }

    /**
     * Diameter round the strands.
     *
     * @return diameter, m
     */
    public double conductorDiameterM() {
        return STRANDED_DIAMETER_RATIO * solidDiameterM();
    }

    /**
     * The name with its unit, for sentences.
     *
     * @return such as "AWG 10" or "6 mm²"
     */
    public String label() {
        return system == GaugeSystem.AWG ? "AWG " + designation : designation + " mm²";
    }
}
