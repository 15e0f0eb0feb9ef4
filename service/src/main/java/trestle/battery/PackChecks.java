package trestle.battery;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Temperature;

/** The checks of a pack at a load, always the same list in the same order. */
final class PackChecks {
    /** Voltages and temperatures of the chemistries. */
    static final Basis DATA_SHEETS = Basis.source("usual data sheet of the chemistry, from memory");

    /** Cells are not to get hotter, °C; usual data-sheet limit, from memory. */
    private static final double HOTTEST_C = 60;

    /** What is usually held back, %; common practice, no source. */
    private static final double USUAL_RESERVE_PERCENT = 20;

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
        EndingChecks.judge(task, start, energy, judge);
        CutoffChecks.judge(task, start, energy, judge);
        for (int k = 0; k < task.pack().segments().size(); k++) {
            int segment = k;
            judge.essential(
                    "cell-current",
                    "greatest current through each cell of " + task.pack().nameOf(k),
                    Subject.of(PackPart.MAX_CONTINUOUS_CURRENT, k),
                    trial -> checks.current(trial, segment));
        }
        judge.check("cell-temperature", "hottest cell", Subject.of(PackPart.PACK), checks::heat);
        judge.check("pack-reserve", "energy held back", Subject.of(PackPart.RESERVE), checks::reserve);
        RangeChecks.judge(task, energy, judge);
        for (int k = 0; k < task.pack().segments().size(); k++) {
            CellChecks.judge(task, energy, k, judge);
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
        int enough = (int) Math.ceil(discharge.highestCurrentA() / limitA);
        String sentence = "Up to %.1f A flows through each cell of %s (%.1f A on average), above the %.1f A that it is"
                + " rated for: put %d cells in parallel, or draw no more than %.1f A from the pack.";
        trial.of(highestA, "A")
                .atMost(limitA, Basis.REQUEST)
                .asSaid(highestA > limitA && saidBefore(k), meanA > limitA ? Severity.STOP : Severity.ATTENTION)
                .stopIf(
                        highestA > limitA && meanA > limitA,
                        "current-above-cell-rating",
                        sentence,
                        highestA,
                        task.pack().nameOf(k),
                        meanA,
                        limitA,
                        enough,
                        limitA * segment.parallelCount())
                .attention(
                        "current-above-cell-rating",
                        sentence,
                        highestA,
                        task.pack().nameOf(k),
                        meanA,
                        limitA,
                        enough,
                        limitA * segment.parallelCount());
    }

    /** Whether an earlier segment has as many of the same cells in parallel. */
    private boolean saidBefore(int k) {
        Segment here = task.pack().segments().get(k);
        return task.pack().segments().subList(0, k).stream()
                .anyMatch(it -> it.cell().equals(here.cell()) && it.parallelCount() == here.parallelCount());
    }

    private void heat(Trial trial) {
        double hottestC = Temperature.cFromK(discharge.highestTemperatureK());
        trial.of(hottestC, "°C")
                .atMost(HOTTEST_C, DATA_SHEETS)
                .stop(
                        "cells-too-hot",
                        "The cells reach %.0f °C, above the %.0f °C of usual data sheets (from memory): cool the pack,"
                                + " put more cells in parallel, or draw less power.",
                        hottestC,
                        HOTTEST_C);
    }

    private void reserve(Trial trial) {
        trial.attentionIf(
                task.reserveFraction() == 0,
                "no-reserve",
                "No reserve is held back, so the time runs until the controller stops the motor: keep about %.0f %%"
                        + " (common practice).",
                USUAL_RESERVE_PERCENT);
    }
}
