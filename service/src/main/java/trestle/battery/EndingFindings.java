package trestle.battery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;

/** Judges how a discharge ended, and whether it came near to ending before. */
final class EndingFindings {
    /** A dip that began this much before the hold ran out is another one, s. */
    private static final double SAME_DIP_S = 0.001;

    private final PackTask task;
    private final PackEnergy energy;
    private final Discharge discharge;
    private final List<Finding> found = new ArrayList<>();

    private EndingFindings(PackTask task, PackEnergy energy) {
        this.task = task;
        this.energy = energy;
        this.discharge = energy.discharge();
    }

    static List<Finding> of(PackTask task, PackEnergy energy) {
        EndingFindings draft = new EndingFindings(task, energy);
        draft.ending();
        draft.dips();
        return draft.found;
    }

    private void ending() {
        switch (discharge.ending()) {
            case POWER_LIMIT ->
                found.add(Finding.of(
                        Severity.STOP,
                        "pack-below-power-limit",
                        Subject.of(PackPart.LOAD),
                        text(
                                "After %.0f s the pack cannot give the power at any"
                                        + " voltage: add cells in parallel or fly slower.",
                                discharge.durationS())));
            case OVER_DISCHARGE -> overDischarge();
            case CUTOFF -> cutoffReached();
            case PROFILE_END -> {}
        }
    }

    private void overDischarge() {
        int k = discharge.limitingSegment();
        double cellV = task.pack().segments().get(k).cell().overDischargeV();
        found.add(Finding.of(
                Severity.STOP,
                "over-discharge",
                Subject.of(PackPart.SEGMENT, k),
                discharge.segments().get(k).cellVoltageV(),
                cellV,
                text(
                        "Segment %d falls to %.2f V a cell after %.0f s, before the cutoff is reached at %.1f V: raise"
                                + " the cutoff or watch each segment.",
                        k + 1, cellV, discharge.durationS(), discharge.endVoltageV())));
        if (energy.times().reversal()) {
            found.add(Finding.of(
                    Severity.STOP,
                    "segment-reversal",
                    Subject.of(PackPart.SEGMENT, k),
                    text(
                            "Segment %d would be emptied and driven backwards by the others"
                                    + " before the pack shows its cutoff of %.1f V.",
                            k + 1, energy.cutoffVoltageV())));
        }
    }

    private void cutoffReached() {
        if (discharge.durationS() == 0) {
            found.add(Finding.of(
                    Severity.STOP,
                    "cutoff-at-once",
                    Subject.of(PackPart.CUTOFF),
                    discharge.startVoltageV(),
                    energy.cutoffVoltageV(),
                    text(
                            "The pack shows %.1f V as soon as the load comes on, below the" + " cutoff of %.1f V.",
                            discharge.startVoltageV(), energy.cutoffVoltageV())));
        } else if (task.load() instanceof Load.Profile profile) {
            int step = discharge.steps().size() - 1;
            found.add(Finding.of(
                    Severity.STOP,
                    "profile-not-completed",
                    Subject.of(PackPart.PROFILE_STEP, step),
                    discharge.durationS(),
                    profile.durationS(),
                    text(
                            "The cutoff comes in step %d after %.0f s of the %.0f s" + " profile.",
                            step + 1, discharge.durationS(), profile.durationS())));
        }
    }

    private void dips() {
        boolean profile = task.load() instanceof Load.Profile;
        if (!profile || discharge.firstDipS().isEmpty()) {
            return;
        }
        double dipS = discharge.firstDipS().getAsDouble();
        double lastS = discharge.durationS() - DischargeRun.PROFILE_HOLD_S - SAME_DIP_S;
        if (discharge.ending() != DischargeEnd.CUTOFF || dipS < lastS) {
            found.add(Finding.of(
                    Severity.ATTENTION,
                    "voltage-dips-below-cutoff",
                    Subject.of(PackPart.CUTOFF),
                    dipS,
                    discharge.durationS(),
                    text(
                            "The voltage first dips below the cutoff after %.0f s and recovers; a controller without a"
                                    + " filter would cut there.",
                            dipS)));
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
