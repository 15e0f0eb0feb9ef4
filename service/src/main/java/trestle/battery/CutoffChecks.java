package trestle.battery;

import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Energy;
import trestle.units.Share;
import trestle.units.Time;

/** Judges a cutoff: when it comes, how near the voltage comes to it before, and what it leaves or asks too much. */
final class CutoffChecks {
    /** Energy below a cutoff, %, from which it is worth another setting. */
    static final double MOST_BELOW_PERCENT = 10;

    /** What a better setting would leave, %. */
    private static final double LITTLE_BELOW_PERCENT = 5;

    /** Charge left at the cutoff, % of that at the start, from which the cutoff ended the run too early. */
    private static final double MOST_LEFT_PERCENT = 50;

    /** Left in the pack, % of the charge: below this the pack is empty, above it sag ended the run. */
    private static final double EMPTY_PERCENT = 20;

    /** Less voltage above the cutoff than this, for one cell, V, hangs on a few degrees or a gust. */
    private static final double NEAR_V = 0.1;

    private final PackTask task;
    private final PackEnergy energy;
    private final Discharge discharge;
    private final CountReading count;
    private final double leftPercent;

    private CutoffChecks(PackTask task, PackState start, PackEnergy energy) {
        this.task = task;
        this.energy = energy;
        this.discharge = energy.discharge();
        this.count = CountReading.of(task, start);
        int weakest = discharge.limitingSegment();
        this.leftPercent = Share.percentFromFraction(
                Math.max(0, discharge.segments().get(weakest).stateOfChargeFraction())
                        / Math.max(1e-9, start.stateOfChargeFraction(weakest)));
    }

    static void judge(PackTask task, PackState start, PackEnergy energy, Judge judge) {
        CutoffChecks checks = new CutoffChecks(task, start, energy);
        Subject cutoff = Subject.of(PackPart.CUTOFF);
        judge.check("cutoff-reached", "when the cutoff comes, and the energy below it", cutoff, checks::reached);
        judge.check("cutoff-distance", "voltage above the cutoff on the way", cutoff, checks::distance);
        judge.essential("cutoff-against-minimum", "cutoff against the cells' minimum", cutoff, checks::minimum);
        judge.essential(
                "cell-count", "cells that the controller counts", Subject.of(PackPart.COUNTED_CELLS), checks::count);
    }

    private boolean atOnce() {
        return discharge.ending() == DischargeEnd.CUTOFF && discharge.durationS() == 0;
    }

    private boolean endsEarly() {
        return discharge.ending() == DischargeEnd.CUTOFF && leftPercent > MOST_LEFT_PERCENT;
    }

    private boolean profileCut() {
        return task.load() instanceof Load.Profile && discharge.ending() == DischargeEnd.CUTOFF;
    }

    private void reached(Trial trial) {
        if (count.misread() && endsEarly()) {
            trial.of(leftPercent, "%")
                    .atMost(MOST_LEFT_PERCENT, Basis.COMMON_PRACTICE)
                    .asSaid(true, Severity.STOP);
        } else if (atOnce()) {
            trial.of(discharge.startVoltageV(), "V")
                    .atLeast(energy.cutoffVoltageV(), Basis.REQUEST)
                    .stopIf(
                            true,
                            "cutoff-at-once",
                            "The pack shows %.2f V as soon as the load comes on, below the cutoff of %.2f V: charge it,"
                                    + " warm it, or draw less power.",
                            discharge.startVoltageV(),
                            energy.cutoffVoltageV());
        } else if (profileCut()) {
            profile(trial);
        } else {
            left(trial);
        }
    }

    private void profile(Trial trial) {
        Load.Profile profile = (Load.Profile) task.load();
        int step = discharge.steps().size() - 1;
        trial.at(Subject.of(PackPart.PROFILE_STEP, step))
                .of(discharge.durationS(), "s")
                .atLeast(profile.durationS(), Basis.REQUEST)
                .stopIf(
                        true,
                        "profile-not-completed",
                        "The cutoff of %.1f V is reached in step %d, after %s of the %s profile, %s: shorten the profile,"
                                + " draw less power, or use more cells.",
                        energy.cutoffVoltageV(),
                        step + 1,
                        Time.said(discharge.durationS()),
                        Time.said(profile.durationS()),
                        Judge.text(
                                leftPercent > EMPTY_PERCENT
                                        ? "by sag under the load with %.0f %% of the charge left"
                                        : "with the pack all but empty (%.0f %% of the charge left)",
                                leftPercent));
    }

    private void left(Trial trial) {
        if (endsEarly()) {
            trial.of(leftPercent, "%")
                    .atMost(MOST_LEFT_PERCENT, Basis.COMMON_PRACTICE)
                    .stop(
                            "cutoff-ends-flight-early",
                            "The cutoff of %.1f V ends the run after %s with %.0f %% of the charge left (over %.0f %% is too"
                                    + " early, common practice): %swarm the pack, or draw less power.",
                            energy.cutoffVoltageV(),
                            Time.said(discharge.durationS()),
                            leftPercent,
                            MOST_LEFT_PERCENT,
                            better("set it to %.1f V (%.2f V a cell), "));
            return;
        }
        double percent = Share.percentFromFraction(energy.budget().fractionBelowCutoff());
        trial.of(percent, "%")
                .atMost(MOST_BELOW_PERCENT, Basis.COMMON_PRACTICE)
                .asSaid(percent > MOST_BELOW_PERCENT && count.stated() && count.misread(), Severity.ATTENTION)
                .attention(
                        "energy-below-cutoff",
                        "The cutoff of %.1f V (%.2f V a cell) leaves %.0f Wh, %.0f %%, below it, which this load could"
                                + " still draw down to the cells' minimum%s (over %.0f %% is much, common practice).",
                        energy.cutoffVoltageV(),
                        energy.cutoffVoltageV() / energy.ratings().seriesCount(),
                        Energy.whFromJ(energy.budget().energyBelowCutoffJ()),
                        percent,
                        better(": set %.1f V (%.2f V a cell) to leave under 5 %%"),
                        MOST_BELOW_PERCENT);
    }

    /** The cutoff that leaves little, in a sentence; nothing where there is none below this one. */
    private String better(String sentence) {
        OptionalDouble cutoffV =
                BudgetDraft.cutoffLeaving(task, discharge, Share.fractionFromPercent(LITTLE_BELOW_PERCENT));
        return cutoffV.isPresent() && cutoffV.getAsDouble() < energy.cutoffVoltageV()
                ? Judge.text(
                        sentence,
                        cutoffV.getAsDouble(),
                        cutoffV.getAsDouble() / energy.ratings().seriesCount())
                : "";
    }

    private void distance(Trial trial) {
        boolean completed = discharge.ending() == DischargeEnd.PROFILE_END;
        if (!completed && discharge.ending() != DischargeEnd.CUTOFF) {
            return;
        }
        boolean dips = completed && discharge.firstDipS().isPresent();
        CurvePoint lowest = completed ? energy.lowest() : energy.lowestEarly();
        double aboveV =
                (lowest.voltageV() - energy.cutoffVoltageV()) / energy.ratings().seriesCount();
        boolean wasteful = Share.percentFromFraction(energy.budget().fractionBelowCutoff()) > MOST_BELOW_PERCENT;
        trial.of(aboveV, "V")
                .atLeast(NEAR_V, Basis.COMMON_PRACTICE)
                .asSaid(atOnce() || endsEarly() || profileCut() && aboveV < 0, Severity.STOP)
                .attentionIf(
                        dips,
                        "voltage-dips-below-cutoff",
                        "The voltage first falls below the cutoff of %.1f V after %s and recovers; a controller that does"
                                + " not filter stops the motor there: draw less power in that step, or warm the pack.",
                        energy.cutoffVoltageV(),
                        Time.said(discharge.firstDipS().orElse(0)))
                .asSaid(!completed && aboveV < NEAR_V && wasteful, Severity.ATTENTION)
                .attention(
                        "voltage-near-cutoff",
                        "After %s the pack falls to %.1f V, only %.2f V a cell above its cutoff of %.1f V: colder or older"
                                + " cells, or a longer climb, would stop the motor there; warm the pack or draw less power"
                                + " (0.1 V a cell is common practice).",
                        Time.said(lowest.timeS()),
                        lowest.voltageV(),
                        aboveV,
                        energy.cutoffVoltageV());
    }

    private void minimum(Trial trial) {
        if (task.cutoff() instanceof Cutoff.CellMinimum) {
            trial.notJudged(Subject.of(PackPart.CUTOFF));
            return;
        }
        double minimumV = energy.ratings().minimumVoltageV();
        double cutoffV = energy.cutoffVoltageV();
        boolean falls = discharge.ending() == DischargeEnd.OVER_DISCHARGE;
        boolean stated = task.pack().segments().stream()
                .allMatch(it -> it.cell().limits().minimumVoltageV().isPresent());
        String sentence = "The cutoff of %.1f V (%.2f V a cell) is below the cells' minimum of %.1f V: %sset %.1f V or"
                + " more.";
        double perCellV = cutoffV / energy.ratings().seriesCount();
        trial.of(cutoffV, "V")
                .atLeast(minimumV, stated ? Basis.REQUEST : PackChecks.DATA_SHEETS)
                .asSaid(
                        cutoffV < minimumV && count.misread() && count.stated(),
                        falls ? Severity.STOP : Severity.ATTENTION)
                .stopIf(
                        cutoffV < minimumV && falls,
                        "cutoff-below-minimum",
                        sentence,
                        cutoffV,
                        perCellV,
                        minimumV,
                        "the run takes them to where they are harmed, after " + Time.said(discharge.durationS()) + "; ",
                        minimumV)
                .attention(
                        "cutoff-below-minimum",
                        sentence,
                        cutoffV,
                        perCellV,
                        minimumV,
                        "a weak cell is harmed and the rest wear fast; ",
                        minimumV);
    }

    private void count(Trial trial) {
        count.judge(trial, endsEarly(), Time.said(discharge.durationS()), leftPercent);
    }
}
