package trestle.launch;

/** Wind over height in neutral air over even ground, [4]. */
final class WindProfile {
    private WindProfile() {}

    /**
     * Wind at a height over that at another: {@code ln(h / z0) / ln(h_ref / z0)}.
     *
     * @param heightM height {@code h}, m, above the roughness length
     * @param referenceHeightM height {@code h_ref}, m, likewise
     * @param roughnessM roughness length {@code z0}, m
     * @return the share
     */
    static double logarithmicShare(double heightM, double referenceHeightM, double roughnessM) {
        return Math.log(heightM / roughnessM) / Math.log(referenceHeightM / roughnessM);
    }

    /**
     * Standard deviation of the wind over its mean: {@code 1 / ln(h / z0)}, [5].
     *
     * @param heightM height {@code h}, m, above the roughness length
     * @param roughnessM roughness length {@code z0}, m
     * @return the intensity of the turbulence
     */
    static double turbulenceIntensity(double heightM, double roughnessM) {
        return 1 / Math.log(heightM / roughnessM);
    }
}
