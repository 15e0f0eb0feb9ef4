package trestle.battery;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Temperature;

/** Says where an answer leaves what the model was checked for. */
final class RangeChecks {
    /** How far the model was held against other data. */
    static final Basis CHECKED = Basis.source("the range in which this model was checked");

    /** Checked to here, and cold only to 1C, 1/h. */
    private static final double FASTEST_PER_H = 2;

    private static final double FASTEST_COLD_PER_H = 1;
    private static final double COLD_C = 10;
    private static final double FREEZING_C = 0;
    private static final double INDICATIVE_C = -10;
    private static final double WARMEST_C = 40;

    /** Below this nothing measured was at hand. */
    private static final double MEASURED_ABOVE_C = 20;

    private final PackTask task;
    private final double startC;
    private final double ratePerH;
    private final boolean runs;

    private RangeChecks(PackTask task, PackEnergy energy) {
        this.task = task;
        startC = Temperature.cFromK(task.surroundings().startK());
        ratePerH = energy.cRatePerH();
        runs = energy.discharge().durationS() > 0;
    }

    static void judge(PackTask task, PackEnergy energy, Judge judge) {
        RangeChecks checks = new RangeChecks(task, energy);
        judge.essential(
                "start-temperature",
                "cells at the start, inside the checked range",
                Subject.of(PackPart.AMBIENT),
                checks::temperature);
        judge.check("discharge-rate", "mean rate, inside the checked range", Subject.of(PackPart.LOAD), checks::rate);
    }

    private void temperature(Trial trial) {
        trial.of(startC, "°C")
                .atLeast(FREEZING_C, CHECKED)
                .attentionIf(
                        startC < INDICATIVE_C,
                        "cold-pack",
                        "The cells start at %.0f °C: the model is extrapolated below %.0f °C, and below %.0f °C the figures"
                                + " are indicative only; warm the pack.",
                        startC,
                        FREEZING_C,
                        INDICATIVE_C)
                .attention(
                        "cold-pack",
                        "The cells start at %.0f °C, and below %.0f °C the model is extrapolated: warm the pack, or keep a"
                                + " larger reserve.",
                        startC,
                        FREEZING_C)
                .atMost(WARMEST_C, CHECKED)
                .note(
                        "outside-validated-range",
                        "The cells start at %.0f °C; the model was checked to %.0f °C.",
                        startC,
                        WARMEST_C)
                .atLeast(MEASURED_ABOVE_C, CHECKED)
                .note("outside-validated-range", inTheCool(), startC, MEASURED_ABOVE_C);
    }

    private String inTheCool() {
        boolean nickel =
                task.pack().segments().stream().allMatch(it -> it.cell().dynamics() == Chemistry.LI_ION);
        return nickel
                ? "The cells start at %.0f °C: below %.0f °C cells of one kind differ, two published sets by 10 %% of the"
                        + " energy at 0 °C and C/2 and by 34 %% at 1C; a middle growth of resistance is taken."
                : "The cells start at %.0f °C: below %.0f °C the growth of resistance rests on one measured cell of each"
                        + " chemistry.";
    }

    private void rate(Trial trial) {
        boolean cold = startC < COLD_C;
        double limitPerH = cold ? FASTEST_COLD_PER_H : FASTEST_PER_H;
        trial.of(ratePerH, "1/h")
                .atMost(limitPerH, CHECKED)
                .asSaid(ratePerH > limitPerH && !runs, Severity.ATTENTION)
                .attention(
                        "outside-validated-range",
                        "The pack is emptied at %.1fC, and the model was checked to %.0fC%s: hold the answer against a"
                                + " discharge of your own.",
                        ratePerH,
                        limitPerH,
                        cold ? " below 10 °C" : "");
    }
}
