package trestle.magnetics;

/** Fields of straight conductors, [1]. */
final class Conductor {
    /** Magnetic constant over 2π, T m/A: 2e-7 to nine digits. */
    static final double CONSTANT_T_M_PER_A = 2e-7;

    private Conductor() {}

    /**
     * Field of an endless straight conductor: {@code B = µ0 I / (2π r)}.
     *
     * @param currentA I, A
     * @param distanceM r, m, not 0; below 0 on the other side, where the field is reversed
     * @return flux density, T
     */
    static double fieldT(double currentA, double distanceM) {
        return CONSTANT_T_M_PER_A * currentA / distanceM;
    }

    /**
     * Field of a straight conductor of a length, beside its middle: {@code B = µ0 I / (2π r) · L /
     * sqrt(L² + 4 r²)}.
     *
     * @param currentA I, A
     * @param distanceM r, m, not 0; below 0 on the other side
     * @param lengthM L, m, above 0
     * @return flux density, T
     */
    static double fieldT(double currentA, double distanceM, double lengthM) {
        return fieldT(currentA, distanceM) * lengthM / Math.hypot(lengthM, 2 * distanceM);
    }

    /**
     * Field of an endless out-and-return pair, in its plane: the difference of the two, {@code µ0 I
     * / (2π) (1/(r − s/2) − 1/(r + s/2))}; far off {@code µ0 I s / (2π r²)}.
     *
     * @param currentA I, A
     * @param separationM s between the conductors' axes, m, 0 or more
     * @param distanceM r from the middle between them, m, not s/2
     * @return flux density, T
     */
    static double pairFieldT(double currentA, double separationM, double distanceM) {
        return fieldT(currentA, distanceM - separationM / 2) - fieldT(currentA, distanceM + separationM / 2);
    }

    /**
     * The same for conductors of a length, the compass beside their middle. What closes the loop at
     * the ends belongs to other runs; without it, the difference can pass that of endless
     * conductors by up to 9 %.
     *
     * @param currentA I, A
     * @param separationM s, m, 0 or more
     * @param distanceM r from the middle between them, m, not s/2
     * @param lengthM L, m, above 0
     * @return flux density, T
     */
    static double pairFieldT(double currentA, double separationM, double distanceM, double lengthM) {
        return fieldT(currentA, distanceM - separationM / 2, lengthM)
                - fieldT(currentA, distanceM + separationM / 2, lengthM);
    }
}
