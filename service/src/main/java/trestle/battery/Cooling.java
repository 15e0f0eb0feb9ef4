package trestle.battery;

/** How a pack sheds heat, brought to one cell. */
final class Cooling {
    /** Lithium cells, J/(kg K): middle of 900 to 1000, from memory. */
    static final double HEAT_CAPACITY_J_PER_KG_K = 950;

    /** Outer surface of a block 3 : 2 : 1 over its volume to the 2/3: {@code 22 / 6^(2/3)}. */
    private static final double BLOCK_SURFACE = 22 / Math.cbrt(36);

    private Cooling() {}

    /**
     * Outer surface of all cells packed into one block of proportions 3 : 2 : 1.
     *
     * @param pack the pack
     * @return area, m²
     */
    static double surfaceM2(Pack pack) {
        double volumeM3 = pack.segments().stream()
                .mapToDouble(it ->
                        it.cellCount() * it.cellMassKg() / it.cell().dynamics().packedDensityKgPerM3())
                .sum();
        return BLOCK_SURFACE * Math.cbrt(volumeM3 * volumeM3);
    }

    /**
     * Heat that one cell of the pack passes to the air: the outer surface is shared evenly.
     *
     * @param pack the pack
     * @param covering how it is wrapped
     * @return conductance, W/K
     */
    static double perCellWPerK(Pack pack, Covering covering) {
        return covering.transferWPerM2K() * surfaceM2(pack) / pack.cellCount();
    }

    /** What surrounds a cell of a segment, given what one cell of the pack passes to the air, W/K. */
    static Bath bath(Segment segment, double perCellWPerK, Surroundings surroundings) {
        return new Bath(
                surroundings.ambientK(),
                surroundings.startK(),
                perCellWPerK * segment.cell().heatLossRatio(),
                HEAT_CAPACITY_J_PER_KG_K * segment.cellMassKg());
    }
}
