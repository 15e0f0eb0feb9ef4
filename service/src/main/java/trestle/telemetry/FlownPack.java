package trestle.telemetry;

/**
 * What a review wants to know of the pack.
 *
 * @param rest its rest voltage over the charge out of it
 * @param minimumCellV lowest voltage that its cells are made for, V a cell
 * @param overDischargeCellV below this a cell is harmed, V
 */
public record FlownPack(RestCurve rest, double minimumCellV, double overDischargeCellV) {}
