package trestle.units;

/** Charge: ampere hour at the edge, coulomb inside. */
public final class Charge {
    /** Exact. */
    private static final double COULOMBS_PER_AMPERE_HOUR = 3600;

    private Charge() {}

    /**
     * Charge, C.
     *
     * @param chargeAh charge, Ah
     * @return charge, C
     */
    public static double cFromAh(double chargeAh) {
        return chargeAh * COULOMBS_PER_AMPERE_HOUR;
    }

    /**
     * Charge, Ah.
     *
     * @param chargeC charge, C
     * @return charge, Ah
     */
    public static double ahFromC(double chargeC) {
        return chargeC / COULOMBS_PER_AMPERE_HOUR;
    }
}
