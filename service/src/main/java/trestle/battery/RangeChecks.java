package trestle.battery;

import java.util.List;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Temperature;

/** Says where an answer leaves what the model was checked for, or rests on typical data. */
final class RangeChecks {
    /** Checked to here, and cold only to 1C, 1/h. */
    private static final double FASTEST_PER_H = 2;

    private static final double FASTEST_COLD_PER_H = 1;
    private static final double COLD_C = 10;
    private static final double FREEZING_C = 0;
    private static final double INDICATIVE_C = -10;
    private static final double WARMEST_C = 40;

    /** No cold data: the pouch set's temperature laws are borrowed, phosphate's are optimistic. */
    private static final double BORROWED_BELOW_C = 20;

    /** A resistance by itself was found good to this rate, 1/h, on two measured cells that cannot be cited. */
    private static final double RESISTANCE_ALONE_PER_H = 0.25;

    /**
     * Cells of one kind part ways above this, V: the set of Ecker et al. 2015 against the NMC set differs
     * at 25 °C by 4 % of the energy at 3.2 V, 12 % at 3.5 V.
     */
    private static final double MAKES_DIFFER_ABOVE_V = 3.2;

    /** Charged above the curve's own full end by this much, V: no data. */
    private static final double FULL_TOLERANCE_V = 0.06;

    /** How far the model was held against other data. */
    private static final Basis CHECKED = Basis.source("the range in which this model was checked");

    private static final Basis ECKER = Basis.source("M. Ecker et al., J. Electrochem. Soc. 162 (2015) A1836");

    private final double startC;
    private final double ratePerH;
    private final double cutoffCellV;

    private RangeChecks(PackTask task, PackEnergy energy) {
        startC = Temperature.cFromK(task.surroundings().startK());
        ratePerH = energy.cRatePerH();
        cutoffCellV = energy.cutoffVoltageV() / energy.ratings().seriesCount();
    }

    static void judge(PackTask task, PackEnergy energy, Judge judge) {
        RangeChecks checks = new RangeChecks(task, energy);
        judge.essential(
                "start-temperature",
                "cells at the start, inside the checked range",
                Subject.of(PackPart.AMBIENT),
                checks::temperature);
        judge.check("discharge-rate", "mean rate, inside the checked range", Subject.of(PackPart.LOAD), checks::rate);
        List<Segment> segments = task.pack().segments();
        for (int k = 0; k < segments.size(); k++) {
            checks.cell(k, segments.get(k).cell(), judge);
        }
    }

    private void temperature(Trial trial) {
        trial.of(startC, "°C")
                .atLeast(INDICATIVE_C, CHECKED)
                .attention(
                        "cold-pack",
                        "The cells start at %.0f °C, below %.0f °C: the figures are indicative only; warm the pack.",
                        startC,
                        INDICATIVE_C)
                .atLeast(FREEZING_C, CHECKED)
                .attention(
                        "cold-pack",
                        "The cells start at %.0f °C; below %.0f °C the model is extrapolated: warm the"
                                + " pack or keep a larger reserve.",
                        startC,
                        FREEZING_C)
                .atMost(WARMEST_C, CHECKED)
                .note(
                        "outside-validated-range",
                        "The cells start at %.0f °C; the model was checked to %.0f °C.",
                        startC,
                        WARMEST_C);
    }

    private void rate(Trial trial) {
        boolean cold = startC < COLD_C;
        double limitPerH = cold ? FASTEST_COLD_PER_H : FASTEST_PER_H;
        trial.of(ratePerH, "1/h")
                .atMost(limitPerH, CHECKED)
                .attention(
                        "outside-validated-range",
                        cold
                                ? "The pack is emptied at %.1fC; below 10 °C the model was checked to %.0fC only."
                                : "The pack is emptied at %.1fC; the model was checked to %.0fC.",
                        ratePerH,
                        limitPerH);
    }

    private void cell(int k, Cell cell, Judge judge) {
        String of = " of segment " + (k + 1);
        judge.check(
                "chemistry-cold",
                "cold behaviour of the cells" + of,
                Subject.of(PackPart.CHEMISTRY, k),
                trial -> borrowed(trial, cell));
        judge.check(
                "cell-data",
                "what is known of the cells" + of,
                Subject.of(PackPart.CELL, k),
                trial -> knowledge(trial, k, cell));
        judge.check(
                "cell-resistance",
                "resistance of the cells" + of,
                Subject.of(PackPart.DC_RESISTANCE, k),
                trial -> credible(trial, k, cell));
        judge.check(
                "full-voltage-data",
                "full voltage of the cells" + of,
                Subject.of(PackPart.FULL_VOLTAGE, k),
                trial -> fullVoltage(trial, cell));
    }

    private void borrowed(Trial trial, Cell cell) {
        if (cell.chemistry() == Chemistry.LIPO || cell.chemistry() == Chemistry.LFP) {
            trial.of(startC, "°C")
                    .atLeast(BORROWED_BELOW_C, CHECKED)
                    .note(
                            "outside-validated-range",
                            "The cells start at %.0f °C; below %.0f °C no measurement of this chemistry"
                                    + " backs the model, and it may be optimistic.",
                            startC,
                            BORROWED_BELOW_C);
        }
    }

    private void knowledge(Trial trial, int k, Cell cell) {
        boolean ownCurve = !cell.openCircuitCurve().isEmpty();
        if (cell.resistance() instanceof InternalResistance.Typical && !ownCurve) {
            generic(trial, cell);
        } else if (cell.resistance() instanceof InternalResistance.Ac) {
            trial.at(Subject.of(PackPart.AC_RESISTANCE, k))
                    .noteIf(
                            true,
                            "resistance-from-ac",
                            "The resistance is guessed from a 1 kHz figure, to about a third either"
                                    + " way; measure the drop after 10 s at 1C instead.");
        } else if (!ownCurve) {
            trial.at(Subject.of(PackPart.DC_RESISTANCE, k))
                    .of(ratePerH, "1/h")
                    .atMost(RESISTANCE_ALONE_PER_H, Basis.source("two measured cells that cannot be cited"))
                    .note(
                            "resistance-alone",
                            "At %.2fC the cell's own lag counts, which its resistance does not tell; alone"
                                    + " it is good to about %.2fC.",
                            ratePerH,
                            RESISTANCE_ALONE_PER_H);
        }
    }

    private void generic(Trial trial, Cell cell) {
        if (cell.chemistry() == Chemistry.LI_ION && cutoffCellV > MAKES_DIFFER_ABOVE_V) {
            trial.of(cutoffCellV, "V")
                    .atMost(MAKES_DIFFER_ABOVE_V, ECKER)
                    .attention(
                            "generic-cell",
                            "Only chemistry and capacity are known of these cells; at a cutoff of %.2f V, above %.1f V,"
                                    + " makes differ by 12 %% of the energy and more: give a measured curve.",
                            cutoffCellV,
                            MAKES_DIFFER_ABOVE_V);
        }
        trial.noteIf(
                true,
                "generic-cell",
                "Only chemistry and capacity are known of these cells; a measured"
                        + " resistance or discharge curve makes the answer theirs.");
    }

    private void credible(Trial trial, int k, Cell cell) {
        if (cell.resistance() instanceof InternalResistance.Dc dc) {
            trial.attentionIf(
                    PulseResistance.factor(cell.chemistry().set(), cell.capacityC(), dc.resistanceOhm())
                            .isEmpty(),
                    "resistance-not-credible",
                    "No cell of this chemistry and capacity has such a resistance; check"
                            + " its unit and that it is of one cell.");
        } else {
            trial.notJudged(Subject.of(PackPart.DC_RESISTANCE, k));
        }
    }

    private void fullVoltage(Trial trial, Cell cell) {
        double curveFullV = CellModel.of(cell, 1).set().electrodes().openCircuitV(1);
        double fullV = cell.fullVoltageV();
        trial.of(fullV, "V")
                .atMost(curveFullV, CHECKED)
                .noteIf(
                        cell.limits().fullVoltageV().isPresent() && fullV > curveFullV + FULL_TOLERANCE_V,
                        "outside-validated-range",
                        "No data for cells charged to %.2f V: energy is counted as if they held their capacity at"
                                + " %.2f V.",
                        fullV,
                        curveFullV);
    }
}
