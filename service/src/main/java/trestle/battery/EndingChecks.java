package trestle.battery;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Share;
import trestle.units.Time;

/** Judges how a discharge ended: whether the pack could give what was asked, and which cells suffered. */
final class EndingChecks {
    /** The weak segment may end the flight this much earlier than the pack alone would, %. */
    private static final double EARLY_PERCENT = 3;

    private final PackTask task;
    private final PackState start;
    private final PackEnergy energy;
    private final Discharge discharge;
    private final int weakest;

    private EndingChecks(PackTask task, PackState start, PackEnergy energy) {
        this.task = task;
        this.start = start;
        this.energy = energy;
        this.discharge = energy.discharge();
        this.weakest = discharge.limitingSegment();
    }

    static void judge(PackTask task, PackState start, PackEnergy energy, Judge judge) {
        EndingChecks checks = new EndingChecks(task, start, energy);
        judge.check("power-held", "power that the pack can give", Subject.of(PackPart.LOAD), checks::power);
        judge.check(
                "weakest-cells",
                "weakest cells against the rest of the pack",
                Subject.of(PackPart.SEGMENT, checks.weakest),
                checks::weakest);
    }

    private void power(Trial trial) {
        boolean limited = discharge.ending() == DischargeEnd.POWER_LIMIT;
        String when = discharge.durationS() > 0 ? "After " + Time.said(discharge.durationS()) + " the" : "The";
        if (task.load() instanceof Load.Current current) {
            trial.stopIf(
                    limited,
                    "pack-below-power-limit",
                    "%s pack cannot drive %.1f A: nothing is left of its voltage at the end of the leads; draw less"
                            + " current, or use thicker leads.",
                    when,
                    current.currentA());
        } else if (limited) {
            double askedW = askedW();
            double mostW = mostW(discharge.durationS() > 0 ? discharge.end() : start);
            trial.of(askedW, "W")
                    .atMost(mostW, Basis.COMPUTED)
                    .stopIf(
                            true,
                            "pack-below-power-limit",
                            "%s pack gives at most %.0f W of the %.0f W asked for: add cells in parallel, or draw less.",
                            when,
                            mostW,
                            askedW);
        }
    }

    private double askedW() {
        return task.load() instanceof Load.Profile profile
                ? profile.steps().get(discharge.steps().size() - 1).powerW()
                : ((Load.Power) task.load()).powerW();
    }

    /** Greatest power of a state down to no voltage at all, W. */
    private double mostW(PackState state) {
        return PowerLimit.largestW(
                state, Limits.unguarded(task.pack(), 0, Double.NEGATIVE_INFINITY), Double.POSITIVE_INFINITY);
    }

    private void weakest(Trial trial) {
        if (discharge.ending() != DischargeEnd.OVER_DISCHARGE) {
            early(trial);
            return;
        }
        double harmV = task.pack().segments().get(weakest).cell().overDischargeV();
        boolean reversal = energy.times().reversal();
        double cutoffV = energy.cutoffVoltageV();
        double neededV = Math.floor(discharge.endVoltageV() * 10 + 1) / 10;
        trial.of(discharge.segments().get(weakest).cellVoltageV(), "V")
                .atLeast(harmV, PackChecks.DATA_SHEETS)
                .asSaid(!reversal && cutoffV < energy.ratings().minimumVoltageV(), Severity.STOP)
                .stopIf(
                        reversal,
                        "segment-reversal",
                        "The cells of %s are empty after %s and would then be reverse-charged by the others, before the"
                                + " pack falls to its cutoff of %.1f V: set the cutoff to %.1f V or more, or watch each"
                                + " segment.",
                        task.pack().nameOf(weakest),
                        Time.said(discharge.durationS()),
                        cutoffV,
                        neededV)
                .stopIf(
                        true,
                        "over-discharge",
                        "The cells of %s fall to %.2f V after %s, while the pack still shows %.1f V, above its cutoff of"
                                + " %.1f V: set the cutoff to %.1f V or more, or watch each segment.",
                        task.pack().nameOf(weakest),
                        harmV,
                        Time.said(discharge.durationS()),
                        discharge.endVoltageV(),
                        cutoffV,
                        neededV);
    }

    /** Whether the run ends with the weakest cell, so that no other cutoff is of help. */
    private boolean watched() {
        return task.cutoff() instanceof Cutoff.CellVoltage || task.cutoff() instanceof Cutoff.CellMinimum;
    }

    private void early(Trial trial) {
        CutoffTimes times = energy.times();
        double earlyPercent = Share.percentFromFraction(1 - times.weakestCellS() / times.packS());
        if (task.pack().segments().size() == 1 || !Double.isFinite(earlyPercent)) {
            return;
        }
        trial.of(earlyPercent, "%")
                .atMost(EARLY_PERCENT, Basis.COMMON_PRACTICE)
                .attention(
                        "weak-segment",
                        "The cells of %s reach their share of the cutoff after %s, the pack as a whole only after %s"
                                + " (more than %.0f %% apart is weak, common practice): %s.",
                        task.pack().nameOf(weakest),
                        Time.said(times.weakestCellS()),
                        Time.said(times.packS()),
                        EARLY_PERCENT,
                        watched()
                                ? "charge them fully, or replace them"
                                : Judge.text("land by the first, or set the cutoff to %.1f V", times.packAtWeakestV()));
    }
}
