package trestle.api.model;

/**
 * What a block of equal cells is, wherever it stands in the contract: a segment of a pack, or a pack in its bay. The
 * generated records of both implement it, so that the compiler holds the two shapes together.
 */
public interface ApiSegmentShape {
    /** What it is called; null where it has no name. */
    String name();

    /** Cells in series. */
    Integer series();

    /** Cells in parallel. */
    Integer parallel();

    /** The cell. */
    ApiCell cell();

    /** Mass of the finished block, g; null where it follows from its cells. */
    Double massG();

    /** Capacity left of that when new, %; null where the default holds. */
    Double healthPercent();

    /** Charge at the start, % of full; null where the default holds. */
    Double stateOfChargePercent();
}
