package trestle.wiring;

import trestle.units.Length;

/**
 * Currents that melt bare copper, [8]. Rough guides to what a short circuit does; neither is a
 * rating.
 */
public final class Fusing {
    /** Circular mils in a square metre: a mil is 0.0254 mm, a circular mil π/4 of its square. */
    private static final double CIRCULAR_MILS_PER_M2 = 4 / (Math.PI * 0.0254e-3 * 0.0254e-3);

    private static final double PREECE_COPPER = 10_244;

    private Fusing() {}

    /**
     * Preece: the current that in time melts a bare wire in free air, {@code 10244 d^1.5}, d in
     * inches.
     *
     * @param diameterM diameter of solid copper, m, above 0
     * @return current, A
     */
    public static double preeceCurrentA(double diameterM) {
        return PREECE_COPPER * Math.pow(Length.inFromM(diameterM), 1.5);
    }

    /**
     * Onderdonk: the current that brings copper to a temperature in a short time when no heat
     * leaves it, {@code A sqrt(log10((Tm − Ta) / (234 + Ta) + 1) / (33 t))}, A in circular mils,
     * temperatures in °C. Some quote 234 − Ta: that is a slip.
     *
     * @param areaM2 copper area, m², above 0
     * @param startC temperature at the start, °C
     * @param endC temperature at the end, °C, above {@code startC}
     * @param durationS duration, s, above 0
     * @return current, A
     */
    public static double onderdonkCurrentA(double areaM2, double startC, double endC, double durationS) {
        double circularMils = areaM2 * CIRCULAR_MILS_PER_M2;
        double exponent = Math.log10((endC - startC) / (234 + startC) + 1);
        return circularMils * Math.sqrt(exponent / (33 * durationS));
    }
}
