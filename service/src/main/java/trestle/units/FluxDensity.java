package trestle.units;

/** Magnetic flux density: microtesla at the edge, tesla inside. */
public final class FluxDensity {
    private FluxDensity() {}

    /**
     * Flux density, T.
     *
     * @param fluxDensityUt flux density, µT
     * @return flux density, T
     */
    public static double tFromUt(double fluxDensityUt) {
        return fluxDensityUt / 1e6;
    }

    /**
     * Flux density, µT.
     *
     * @param fluxDensityT flux density, T
     * @return flux density, µT
     */
    public static double utFromT(double fluxDensityT) {
        return fluxDensityT * 1e6;
    }
}
