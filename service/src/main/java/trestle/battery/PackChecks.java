package trestle.battery;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Temperature;

/** The checks of a pack at a load, always the same list in the same order. */
final class PackChecks {
    /** Cells are not to get hotter, °C; usual data-sheet limit, from memory. */
    private static final double HOTTEST_C = 60;

    /** The weak segment may end the flight this much earlier than the pack alone would, %. */
    private static final double EARLY_PERCENT = 3;

    /** Voltages and temperatures of the chemistries. */
    static final Basis DATA_SHEETS = Basis.source("usual data sheet of the chemistry, from memory");

    private final PackTask task;
    private final PackEnergy energy;
    private final Discharge discharge;

    private PackChecks(PackTask task, PackEnergy energy) {
        this.task = task;
        this.energy = energy;
        this.discharge = energy.discharge();
    }

    static void judge(PackTask task, PackState start, PackEnergy energy, Judge judge) {
        PackChecks checks = new PackChecks(task, energy);
        EndingChecks.judge(task, energy, judge);
        CutoffChecks.judge(task, energy, judge);
        judge.check(
                "weak-segment",
                "time that the weakest segment takes from the flight",
                Subject.of(PackPart.SEGMENT, energy.discharge().limitingSegment()),
                checks::weakSegment);
        for (int k = 0; k < task.pack().segments().size(); k++) {
            int segment = k;
            judge.essential(
                    "cell-current",
                    "greatest current through each cell of segment " + (k + 1),
                    Subject.of(PackPart.MAX_CONTINUOUS_CURRENT, k),
                    trial -> checks.current(trial, segment));
        }
        judge.check("cell-temperature", "hottest cell", Subject.of(PackPart.PACK), checks::heat);
        judge.check("pack-reserve", "energy held back", Subject.of(PackPart.RESERVE), checks::reserve);
        CountChecks.judge(task, start, judge);
        RangeChecks.judge(task, energy, judge);
    }

    private void weakSegment(Trial trial) {
        CutoffTimes times = energy.times();
        double earlyPercent = (1 - times.weakestCellS() / times.packS()) * 100;
        if (task.pack().segments().size() > 1 && Double.isFinite(earlyPercent)) {
            trial.of(earlyPercent, "%")
                    .atMost(EARLY_PERCENT, Basis.COMMON_PRACTICE)
                    .attention(
                            "weak-segment",
                            "Segment %d is the weak one: its cells reach their share of the cutoff after %.0f s, the"
                                    + " pack as a whole only after %.0f s.",
                            discharge.limitingSegment() + 1,
                            times.weakestCellS(),
                            times.packS());
        }
    }

    private void current(Trial trial, int k) {
        Segment segment = task.pack().segments().get(k);
        if (segment.cell().limits().maxContinuousCurrentA().isEmpty()) {
            trial.notJudged(Subject.of(PackPart.MAX_CONTINUOUS_CURRENT, k));
            return;
        }
        double limitA = segment.cell().limits().maxContinuousCurrentA().getAsDouble();
        double highestA = discharge.highestCurrentA() / segment.parallelCount();
        double meanA = discharge.chargeC() / Math.max(discharge.durationS(), 1) / segment.parallelCount();
        String sentence = "Up to %.1f A flows through each cell of segment %d (%.1f A"
                + " on average), above its continuous %.1f A.";
        trial.of(highestA, "A")
                .atMost(limitA, Basis.REQUEST)
                .stopIf(
                        highestA > limitA && meanA > limitA,
                        "current-above-cell-rating",
                        sentence,
                        highestA,
                        k + 1,
                        meanA,
                        limitA)
                .attention("current-above-cell-rating", sentence, highestA, k + 1, meanA, limitA);
    }

    private void heat(Trial trial) {
        double hottestC = Temperature.cFromK(discharge.highestTemperatureK());
        trial.of(hottestC, "°C")
                .atMost(HOTTEST_C, DATA_SHEETS)
                .stop(
                        "cells-too-hot",
                        "The cells reach %.0f °C, above %.0f °C: cool the pack, use"
                                + " more cells in parallel, or less power.",
                        hottestC,
                        HOTTEST_C);
    }

    private void reserve(Trial trial) {
        trial.attentionIf(
                task.reserveFraction() == 0,
                "no-reserve",
                "No reserve is held back: the cutoff takes the motor away in flight; plan to land before it.");
    }
}
