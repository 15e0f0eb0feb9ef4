package trestle.battery;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Share;

/**
 * What a controller that counts cells makes of a pack.
 *
 * @param pack the pack
 * @param cutoff what was asked
 * @param count the count that it comes to, or may come to
 * @param stated whether that count was given; otherwise it is guessed from the voltage
 * @param when in which state the guess is that, as a sentence has it
 */
record CountReading(Pack pack, Cutoff cutoff, int count, boolean stated, String when) {

    /** The count that was given, or the worst that the voltage at plug-in may lead to. */
    static CountReading of(PackTask task, PackState start) {
        Pack pack = task.pack();
        if (!(task.cutoff() instanceof Cutoff.CountedCells counted)) {
            return new CountReading(pack, task.cutoff(), pack.seriesCount(), false, "");
        }
        if (counted.stated()) {
            return new CountReading(pack, counted, counted.cellCount(), true, "");
        }
        double chargePercent = Share.percentFromFraction(pack.segments().stream()
                .mapToDouble(Segment::stateOfChargeFraction)
                .min()
                .orElse(1));
        int now = atVoltage(pack, start.restVoltageV());
        return now == pack.seriesCount()
                ? new CountReading(pack, counted, atVoltage(pack, pack.fullVoltageV()), false, "full")
                : new CountReading(pack, counted, now, false, Judge.text("at %.0f %% charge", chargePercent));
    }

    /** The count at a voltage by either divisor, the one that is wrong first. */
    private static int atVoltage(Pack pack, double voltageV) {
        int low = CellCount.of(voltageV, CellCount.HIGH_DIVISOR_V);
        int high = CellCount.of(voltageV, CellCount.LOW_DIVISOR_V);
        return low < pack.seriesCount() ? low : Math.max(high, pack.seriesCount());
    }

    boolean misread() {
        return count != pack.seriesCount();
    }

    /** A count means nothing to a cutoff that is a voltage of the pack or of the weakest cell. */
    void judge(Trial trial, boolean endsEarly, String duration, double leftPercent) {
        if (cutoff instanceof Cutoff.CellMinimum) {
            trial.notJudged(Subject.of(PackPart.CUTOFF));
        } else if (cutoff instanceof Cutoff.CountedCells counted) {
            trial.of(count, "cells").atLeast(pack.seriesCount(), Basis.REQUEST);
            if (stated) {
                counts(trial, counted.voltageV(), endsEarly, duration, leftPercent);
            } else {
                mayCount(trial, counted.voltageV());
            }
        }
    }

    private void counts(Trial trial, double settingV, boolean endsEarly, String duration, double leftPercent) {
        int series = pack.seriesCount();
        double cutV = count * settingV;
        String what = endsEarly
                ? Judge.text("the run ends after %s with %.0f %% of the charge left", duration, leftPercent)
                : count < series ? "too late for the cells" : "early, with energy left";
        String sentence =
                "The controller counts %d cells where %d are in series, and stops at %.1f V, %.2f V a cell: %s;"
                        + " set the count to %d, or the pack voltage to %.1f V.";
        trial.stopIf(
                        misread() && (harmful(cutV) || endsEarly),
                        "cell-count-misread",
                        sentence,
                        count,
                        series,
                        cutV,
                        cutV / series,
                        what,
                        series,
                        series * settingV)
                .attentionIf(
                        misread(),
                        "cell-count-misread",
                        sentence,
                        count,
                        series,
                        cutV,
                        cutV / series,
                        what,
                        series,
                        series * settingV);
    }

    private void mayCount(Trial trial, double settingV) {
        int series = pack.seriesCount();
        double cutV = count * settingV;
        String sentence =
                "A controller that counts cells may take this pack, %s, for %d cells instead of %d (it divides by"
                        + " 4.2 to 4.4 V, common practice) and then stop at %.1f V, %.2f V a cell: set the count to %d, or the"
                        + " pack voltage to %.1f V.";
        trial.stopIf(
                        misread() && harmful(cutV),
                        "cell-count-misread",
                        sentence,
                        when,
                        count,
                        series,
                        cutV,
                        cutV / series,
                        series,
                        series * settingV)
                .attentionIf(
                        misread(),
                        "cell-count-misread",
                        sentence,
                        when,
                        count,
                        series,
                        cutV,
                        cutV / series,
                        series,
                        series * settingV);
    }

    private boolean harmful(double packV) {
        double perCellV = packV / pack.seriesCount();
        return pack.segments().stream().anyMatch(it -> perCellV < it.cell().minimumVoltageV());
    }
}
