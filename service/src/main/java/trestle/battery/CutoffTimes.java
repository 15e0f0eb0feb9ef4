package trestle.battery;

/**
 * When a cutoff would be reached by either way of watching it; far apart where segments differ.
 *
 * @param packS when the voltage of the whole pack is down to it, s
 * @param weakestCellS when the weakest cell is down to its share of it, s
 * @param packAtWeakestV voltage that the pack still shows then, V
 * @param reversal whether the weakest cells would be empty, and driven backwards by the others,
 *     before the pack's voltage shows it
 */
public record CutoffTimes(double packS, double weakestCellS, double packAtWeakestV, boolean reversal) {

    static CutoffTimes of(PackState start, Load load, Cutoff cutoff, Discharge known) {
        Pack pack = start.pack();
        double packV = cutoff.packVoltageV(pack);
        Discharge byPack = cutoff.isOfPack() && known.ending() == DischargeEnd.CUTOFF
                ? known
                : Discharge.of(start, load, Limits.unguarded(pack, packV, Double.NEGATIVE_INFINITY), Trace.NONE);
        boolean cellWatched =
                cutoff instanceof Cutoff.CellVoltage && pack.segments().size() == 1;
        Discharge byCell = cellWatched && known.ending() == DischargeEnd.CUTOFF
                ? known
                : Discharge.of(start, load, Limits.sharedOut(pack, packV), Trace.NONE);
        boolean reversal = pack.segments().size() > 1 && byPack.ending() == DischargeEnd.OVER_DISCHARGE;
        return new CutoffTimes(byPack.durationS(), byCell.durationS(), byCell.endVoltageV(), reversal);
    }
}
