package trestle.battery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Energy;
import trestle.units.Share;
import trestle.units.Temperature;

/** Judges a discharge: does it last, what does it leave, what does it do to the cells. */
final class PackFindings {
    /** Energy stranded under a cutoff, %, from which it is worth another setting. */
    private static final double STRANDED_PERCENT = 5;

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
        draft.ending();
        draft.dips();
        draft.stranded();
        draft.weakSegment();
        draft.ratings();
        draft.heat();
        draft.reserve();
        draft.found.addAll(CountFindings.of(task, start));
        draft.found.addAll(RangeFindings.of(task, energy));
        return draft.found;
    }

    private void ending() {
        switch (discharge.ending()) {
            case POWER_LIMIT ->
                    add(
                            Severity.STOP,
                            "pack-below-power-limit",
                            Subject.of(PackPart.LOAD),
                            discharge.durationS(),
                            text(
                                    "After %.0f s the pack cannot give the power at any voltage:"
                                            + " add cells in parallel or fly slower.",
                                    discharge.durationS()));
            case OVER_DISCHARGE -> overDischarge();
            case CUTOFF -> cutoffReached();
            case PROFILE_END -> {}
        }
    }

    private void overDischarge() {
        int k = discharge.limitingSegment();
        double cellV = task.pack().segments().get(k).cell().overDischargeV();
        found.add(
                Finding.of(
                        Severity.STOP,
                        "over-discharge",
                        Subject.of(PackPart.SEGMENT, k),
                        discharge.segments().get(k).cellVoltageV(),
                        cellV,
                        text(
                                "Segment %d falls to %.2f V a cell after %.0f s, before the cutoff"
                                        + " is reached at %.1f V: raise the cutoff or watch each"
                                        + " segment.",
                                k + 1, cellV, discharge.durationS(), discharge.endVoltageV())));
        if (energy.times().reversal()) {
            found.add(
                    Finding.of(
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
            found.add(
                    Finding.of(
                            Severity.STOP,
                            "cutoff-at-once",
                            Subject.of(PackPart.CUTOFF),
                            discharge.startVoltageV(),
                            energy.cutoffVoltageV(),
                            text(
                                    "The pack shows %.1f V as soon as the load comes on, below the"
                                            + " cutoff of %.1f V.",
                                    discharge.startVoltageV(), energy.cutoffVoltageV())));
        } else if (task.load() instanceof Load.Profile profile) {
            int step = discharge.steps().size() - 1;
            found.add(
                    Finding.of(
                            Severity.STOP,
                            "profile-not-completed",
                            Subject.of(PackPart.PROFILE_STEP, step),
                            discharge.durationS(),
                            profile.durationS(),
                            text(
                                    "The cutoff comes in step %d after %.0f s of the %.0f s"
                                            + " profile.",
                                    step + 1, discharge.durationS(), profile.durationS())));
        }
    }

    private void dips() {
        boolean profile = task.load() instanceof Load.Profile;
        if (!profile || discharge.firstDipS().isEmpty()) {
            return;
        }
        double dipS = discharge.firstDipS().getAsDouble();
        if (dipS < discharge.durationS() - DischargeRun.PROFILE_HOLD_S - 1) {
            found.add(
                    Finding.of(
                            Severity.ATTENTION,
                            "voltage-dips-below-cutoff",
                            Subject.of(PackPart.CUTOFF),
                            dipS,
                            discharge.durationS(),
                            text(
                                    "The voltage first dips below the cutoff after %.0f s and"
                                            + " recovers; a controller without a filter would cut"
                                            + " there.",
                                    dipS)));
        }
    }

    private void stranded() {
        double percent = Share.percentFromFraction(energy.budget().strandedFraction());
        if (percent >= STRANDED_PERCENT) {
            found.add(
                    Finding.of(
                            Severity.ATTENTION,
                            "cutoff-strands-energy",
                            Subject.of(PackPart.CUTOFF),
                            percent,
                            STRANDED_PERCENT,
                            text(
                                    "The cutoff of %.1f V (%.2f V a cell) leaves %.0f Wh, %.0f %%,"
                                            + " that the cells would still give at this load down"
                                            + " to their minimum voltage.",
                                    energy.cutoffVoltageV(),
                                    energy.cutoffVoltageV() / energy.ratings().seriesCount(),
                                    Energy.whFromJ(energy.budget().strandedEnergyJ()),
                                    percent)));
        }
    }

    private void weakSegment() {
        CutoffTimes times = energy.times();
        double earlyPercent = (1 - times.weakestCellS() / times.packS()) * 100;
        if (task.pack().segments().size() > 1 && earlyPercent > EARLY_PERCENT) {
            int k = discharge.limitingSegment();
            found.add(
                    Finding.of(
                            Severity.ATTENTION,
                            "weak-segment",
                            Subject.of(PackPart.SEGMENT, k),
                            earlyPercent,
                            EARLY_PERCENT,
                            text(
                                    "Segment %d is the weak one: its cells reach their share of the"
                                            + " cutoff after %.0f s, the pack as a whole only after"
                                            + " %.0f s.",
                                    k + 1, times.weakestCellS(), times.packS())));
        }
    }

    private void ratings() {
        for (int k = 0; k < task.pack().segments().size(); k++) {
            Segment segment = task.pack().segments().get(k);
            double limitA =
                    segment.cell().limits().maxContinuousCurrentA().orElse(Double.MAX_VALUE);
            double highestA = discharge.highestCurrentA() / segment.parallelCount();
            double meanA =
                    discharge.chargeC()
                            / Math.max(discharge.durationS(), 1)
                            / segment.parallelCount();
            if (highestA > limitA) {
                found.add(
                        Finding.of(
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
            found.add(
                    Finding.of(
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
            found.add(
                    Finding.of(
                            Severity.ATTENTION,
                            "no-reserve",
                            Subject.of(PackPart.RESERVE),
                            "No reserve is held back: the cutoff takes the motor away in flight;"
                                    + " plan to land before it."));
        }
    }

    private void add(
            Severity severity, String code, Subject subject, double value, String message) {
        found.add(
                new Finding(
                        severity,
                        code,
                        message,
                        subject,
                        java.util.OptionalDouble.of(value),
                        java.util.OptionalDouble.empty()));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
