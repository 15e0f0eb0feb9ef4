package trestle.battery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Temperature;

/** Judges an answer: what the discharge does to the cells, and all other findings in order. */
final class PackFindings {
    /** Cells are not to get hotter, °C; usual data-sheet limit, from memory. */
    private static final double HOTTEST_C = 60;

    /** The weak segment may end the flight this much earlier than the pack alone would, %. */
    private static final double EARLY_PERCENT = 3;

    private final PackTask task;
    private final PackEnergy energy;
    private final Discharge discharge;
    private final List<Finding> found = new ArrayList<>();

    private PackFindings(PackTask task, PackEnergy energy) {
        this.task = task;
        this.energy = energy;
        this.discharge = energy.discharge();
    }

    static List<Finding> of(PackTask task, PackState start, PackEnergy energy) {
        PackFindings draft = new PackFindings(task, energy);
        draft.found.addAll(EndingFindings.of(task, energy));
        draft.found.addAll(CutoffFindings.of(task, energy));
        draft.weakSegment();
        draft.ratings();
        draft.heat();
        draft.reserve();
        draft.found.addAll(CountFindings.of(task, start));
        draft.found.addAll(RangeFindings.of(task, energy));
        return draft.found;
    }

    private void weakSegment() {
        CutoffTimes times = energy.times();
        double earlyPercent = (1 - times.weakestCellS() / times.packS()) * 100;
        if (task.pack().segments().size() > 1 && earlyPercent > EARLY_PERCENT) {
            int k = discharge.limitingSegment();
            found.add(Finding.of(
                    Severity.ATTENTION,
                    "weak-segment",
                    Subject.of(PackPart.SEGMENT, k),
                    earlyPercent,
                    EARLY_PERCENT,
                    text(
                            "Segment %d is the weak one: its cells reach their share of the cutoff after %.0f s, the"
                                    + " pack as a whole only after %.0f s.",
                            k + 1, times.weakestCellS(), times.packS())));
        }
    }

    private void ratings() {
        for (int k = 0; k < task.pack().segments().size(); k++) {
            Segment segment = task.pack().segments().get(k);
            double limitA = segment.cell().limits().maxContinuousCurrentA().orElse(Double.MAX_VALUE);
            double highestA = discharge.highestCurrentA() / segment.parallelCount();
            double meanA = discharge.chargeC() / Math.max(discharge.durationS(), 1) / segment.parallelCount();
            if (highestA > limitA) {
                found.add(Finding.of(
                        meanA > limitA ? Severity.STOP : Severity.ATTENTION,
                        "current-above-cell-rating",
                        Subject.of(PackPart.MAX_CONTINUOUS_CURRENT, k),
                        highestA,
                        limitA,
                        text(
                                "Up to %.1f A flows through each cell of segment %d (%.1f A"
                                        + " on average), above its continuous %.1f A.",
                                highestA, k + 1, meanA, limitA)));
            }
        }
    }

    private void heat() {
        double hottestC = Temperature.cFromK(discharge.highestTemperatureK());
        if (hottestC > HOTTEST_C) {
            found.add(Finding.of(
                    Severity.STOP,
                    "cells-too-hot",
                    Subject.of(PackPart.PACK),
                    hottestC,
                    HOTTEST_C,
                    text(
                            "The cells reach %.0f °C, above %.0f °C: cool the pack, use"
                                    + " more cells in parallel, or less power.",
                            hottestC, HOTTEST_C)));
        }
    }

    private void reserve() {
        if (task.reserveFraction() == 0) {
            found.add(Finding.of(
                    Severity.ATTENTION,
                    "no-reserve",
                    Subject.of(PackPart.RESERVE),
                    "No reserve is held back: the cutoff takes the motor away in flight; plan to land before it."));
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
