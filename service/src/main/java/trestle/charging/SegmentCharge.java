package trestle.charging;

/**
 * How a segment was charged.
 *
 * @param index position in the pack, from 0
 * @param startFraction state of charge at the start, of its capacity as it is now
 * @param endFraction the same at what was asked for
 * @param endCellV voltage of a cell then, V
 * @param highestCellV highest voltage of a cell, V
 * @param currentA current at the start, A
 * @param timeS until what was asked for, s
 * @param allowedA current that its cells may take at the start, A
 * @param allowedBecause what decides that
 */
public record SegmentCharge(
        int index,
        double startFraction,
        double endFraction,
        double endCellV,
        double highestCellV,
        double currentA,
        double timeS,
        double allowedA,
        LimitedBy allowedBecause) {}
