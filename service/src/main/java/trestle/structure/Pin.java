package trestle.structure;

/** A joiner as a rigid pin in a socket that gives in proportion to pressure. */
public final class Pin {
    private Pin() {}

    /**
     * Load per length at the mouth: {@code q = 4V/ℓ + 6M/ℓ²}.
     *
     * @param shearN V, N
     * @param bendingNm M, N m
     * @param engagementM ℓ, m, above 0
     * @return N/m
     */
    public static double mouthNPerM(double shearN, double bendingNm, double engagementM) {
        return 4 * shearN / engagementM + 6 * bendingNm / (engagementM * engagementM);
    }

    /**
     * Shear inside the pin where it reverses: {@code (2Vℓ + 3M)² / (3ℓ (2M + Vℓ)) − V}.
     *
     * @param shearN V, N
     * @param bendingNm M, N m, not both 0
     * @param engagementM ℓ, m, above 0
     * @return N
     */
    public static double reverseShearN(double shearN, double bendingNm, double engagementM) {
        double turning = 2 * shearN * engagementM + 3 * bendingNm;
        double below = 3 * engagementM * (2 * bendingNm + shearN * engagementM);
        return below > 0 ? turning * turning / below - shearN : 0;
    }

    /**
     * The engagement at which the mouth bears just so much.
     *
     * @param shearN V, N
     * @param bendingNm M, N m
     * @param allowedNPerM what the mouth may bear, N/m, above 0
     * @return ℓ, m
     */
    public static double engagementM(double shearN, double bendingNm, double allowedNPerM) {
        double root = Math.sqrt(16 * shearN * shearN + 24 * bendingNm * allowedNPerM);
        return (4 * shearN + root) / (2 * allowedNPerM);
    }
}
