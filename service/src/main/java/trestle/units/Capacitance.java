package trestle.units;

/** Capacitance: microfarad at the edge, farad inside. */
public final class Capacitance {
    private Capacitance() {}

    /**
     * Capacitance, F.
     *
     * @param capacitanceUf capacitance, µF
     * @return capacitance, F
     */
    public static double fFromUf(double capacitanceUf) {
        return capacitanceUf / 1e6;
    }

    /**
     * Capacitance, µF.
     *
     * @param capacitanceF capacitance, F
     * @return capacitance, µF
     */
    public static double ufFromF(double capacitanceF) {
        return capacitanceF * 1e6;
    }
}
