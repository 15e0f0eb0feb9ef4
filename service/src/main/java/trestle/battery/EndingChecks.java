package trestle.battery;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** Judges how a discharge ended, and whether it came near to ending before. */
final class EndingChecks {
    /** A dip that began this much before the hold ran out is another one, s. */
    private static final double SAME_DIP_S = 0.001;

    private final PackTask task;
    private final PackEnergy energy;
    private final Discharge discharge;
    private final int weakest;

    private EndingChecks(PackTask task, PackEnergy energy) {
        this.task = task;
        this.energy = energy;
        this.discharge = energy.discharge();
        this.weakest = discharge.limitingSegment();
    }

    static void judge(PackTask task, PackEnergy energy, Judge judge) {
        EndingChecks checks = new EndingChecks(task, energy);
        Subject segment = Subject.of(PackPart.SEGMENT, checks.weakest);
        judge.check("power-held", "power that the pack can give", Subject.of(PackPart.LOAD), checks::power);
        judge.check("over-discharge", "voltage of the weakest cell at the end", segment, checks::overDischarge);
        judge.check("segment-reversal", "weakest segment under a pack cutoff", segment, checks::reversal);
        judge.check("start-voltage", "voltage under load at the start", Subject.of(PackPart.CUTOFF), checks::atOnce);
        judge.check("profile-completed", "length of the profile", Subject.of(PackPart.LOAD), checks::profile);
        judge.check("voltage-dips", "dips below the cutoff", Subject.of(PackPart.CUTOFF), checks::dips);
    }

    private void power(Trial trial) {
        trial.stopIf(
                discharge.ending() == DischargeEnd.POWER_LIMIT,
                "pack-below-power-limit",
                "After %.0f s the pack cannot give the power at any voltage: add cells in parallel or fly slower.",
                discharge.durationS());
    }

    private void overDischarge(Trial trial) {
        double cellV = task.pack().segments().get(weakest).cell().overDischargeV();
        trial.of(discharge.segments().get(weakest).cellVoltageV(), "V")
                .atLeast(cellV, PackChecks.DATA_SHEETS)
                .stopIf(
                        discharge.ending() == DischargeEnd.OVER_DISCHARGE,
                        "over-discharge",
                        "Segment %d falls to %.2f V a cell after %.0f s, before the cutoff is reached at %.1f V: raise"
                                + " the cutoff or watch each segment.",
                        weakest + 1,
                        cellV,
                        discharge.durationS(),
                        discharge.endVoltageV());
    }

    private void reversal(Trial trial) {
        trial.stopIf(
                discharge.ending() == DischargeEnd.OVER_DISCHARGE
                        && energy.times().reversal(),
                "segment-reversal",
                "Segment %d would be emptied and driven backwards by the others"
                        + " before the pack shows its cutoff of %.1f V.",
                weakest + 1,
                energy.cutoffVoltageV());
    }

    private void atOnce(Trial trial) {
        trial.of(discharge.startVoltageV(), "V")
                .atLeast(energy.cutoffVoltageV(), Basis.REQUEST)
                .stopIf(
                        discharge.ending() == DischargeEnd.CUTOFF && discharge.durationS() == 0,
                        "cutoff-at-once",
                        "The pack shows %.1f V as soon as the load comes on, below the cutoff of %.1f V.",
                        discharge.startVoltageV(),
                        energy.cutoffVoltageV());
    }

    private void profile(Trial trial) {
        if (task.load() instanceof Load.Profile profile) {
            int step = discharge.steps().size() - 1;
            boolean cut = discharge.ending() == DischargeEnd.CUTOFF && discharge.durationS() > 0;
            trial.at(cut ? Subject.of(PackPart.PROFILE_STEP, step) : Subject.of(PackPart.LOAD))
                    .of(discharge.durationS(), "s")
                    .atLeast(profile.durationS(), Basis.REQUEST)
                    .stopIf(
                            cut,
                            "profile-not-completed",
                            "The cutoff comes in step %d after %.0f s of the %.0f s profile.",
                            step + 1,
                            discharge.durationS(),
                            profile.durationS());
        } else {
            trial.notJudged(Subject.of(PackPart.PROFILE));
        }
    }

    private void dips(Trial trial) {
        if (!(task.load() instanceof Load.Profile)) {
            trial.notJudged(Subject.of(PackPart.PROFILE));
            return;
        }
        if (discharge.firstDipS().isEmpty()) {
            return;
        }
        double dipS = discharge.firstDipS().getAsDouble();
        double lastS = discharge.durationS() - DischargeRun.PROFILE_HOLD_S - SAME_DIP_S;
        trial.of(dipS, "s")
                .atLeast(discharge.durationS(), Basis.COMPUTED)
                .attentionIf(
                        discharge.ending() != DischargeEnd.CUTOFF || dipS < lastS,
                        "voltage-dips-below-cutoff",
                        "The voltage first dips below the cutoff after %.0f s and recovers; a controller without a"
                                + " filter would cut there.",
                        dipS);
    }
}
