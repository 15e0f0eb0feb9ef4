package trestle.battery;

/** What covers the pack; decides how warm it stays. */
public enum Covering {
    /** In still air inside the fuselage. */
    BARE(0),
    /** In a sleeve of foam or felt, 3 mm. */
    WRAPPED(0.003),
    /** In a closed foam box, 20 mm walls. */
    BOXED(0.020);

    /** Free convection and radiation in still air, W/(m² K), [6]. */
    private static final double STILL_AIR_W_PER_M2_K = 10;

    /** Foam, W/(m K); typical of expanded polystyrene and polypropylene, from memory. */
    private static final double FOAM_W_PER_M_K = 0.035;

    private final double foamM;

    Covering(double foamM) {
        this.foamM = foamM;
    }

    /**
     * Heat passed to the air: {@code 1 / (1/h + d/k)}.
     *
     * @return heat transfer coefficient, W/(m² K)
     */
    public double transferWPerM2K() {
        return 1 / (1 / STILL_AIR_W_PER_M2_K + foamM / FOAM_W_PER_M_K);
    }
}
