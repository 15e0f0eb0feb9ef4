package trestle.units;

/** Mass: gram at the edge, kilogram inside. */
public final class Mass {
    private Mass() {}

    /**
     * Mass, kg.
     *
     * @param massG mass, g
     * @return mass, kg
     */
    public static double kgFromG(double massG) {
        return massG / 1000;
    }

    /**
     * Mass, g.
     *
     * @param massKg mass, kg
     * @return mass, g
     */
    public static double gFromKg(double massKg) {
        return massKg * 1000;
    }
}
