package trestle.battery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Temperature;

/** Says where an answer leaves what the model was checked for, or rests on typical data. */
final class RangeFindings {
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

    private final List<Finding> found = new ArrayList<>();

    private RangeFindings() {}

    static List<Finding> of(PackTask task, PackEnergy energy) {
        RangeFindings draft = new RangeFindings();
        double startC = Temperature.cFromK(task.surroundings().startK());
        draft.temperature(startC);
        draft.rate(energy.cRatePerH(), startC);
        double cutoffCellV = energy.cutoffVoltageV() / energy.ratings().seriesCount();
        List<Segment> segments = task.pack().segments();
        for (int k = 0; k < segments.size(); k++) {
            draft.cell(k, segments.get(k).cell(), energy.cRatePerH(), startC, cutoffCellV);
        }
        return draft.found;
    }

    private void temperature(double startC) {
        if (startC < INDICATIVE_C) {
            add(
                    Severity.ATTENTION,
                    "cold-pack",
                    Subject.of(PackPart.AMBIENT),
                    startC,
                    INDICATIVE_C,
                    "The cells start at %.0f °C, below %.0f °C: the figures are indicative only;" + " warm the pack.");
        } else if (startC < FREEZING_C) {
            add(
                    Severity.ATTENTION,
                    "cold-pack",
                    Subject.of(PackPart.AMBIENT),
                    startC,
                    FREEZING_C,
                    "The cells start at %.0f °C; below %.0f °C the model is extrapolated: warm the"
                            + " pack or keep a larger reserve.");
        } else if (startC > WARMEST_C) {
            add(
                    Severity.NOTE,
                    "outside-validated-range",
                    Subject.of(PackPart.AMBIENT),
                    startC,
                    WARMEST_C,
                    "The cells start at %.0f °C; the model was checked to %.0f °C.");
        }
    }

    private void rate(double ratePerH, double startC) {
        boolean cold = startC < COLD_C;
        double limit = cold ? FASTEST_COLD_PER_H : FASTEST_PER_H;
        if (ratePerH > limit) {
            add(
                    Severity.ATTENTION,
                    "outside-validated-range",
                    Subject.of(PackPart.LOAD),
                    ratePerH,
                    limit,
                    cold
                            ? "The pack is emptied at %.1fC; below 10 °C the model was checked to" + " %.0fC only."
                            : "The pack is emptied at %.1fC; the model was checked to %.0fC.");
        }
    }

    private void cell(int k, Cell cell, double ratePerH, double startC, double cutoffCellV) {
        boolean borrowed = cell.chemistry() == Chemistry.LIPO || cell.chemistry() == Chemistry.LFP;
        if (borrowed && startC < BORROWED_BELOW_C) {
            add(
                    Severity.NOTE,
                    "outside-validated-range",
                    Subject.of(PackPart.CHEMISTRY, k),
                    startC,
                    BORROWED_BELOW_C,
                    "The cells start at %.0f °C; below %.0f °C no measurement of this chemistry"
                            + " backs the model, and it may be optimistic.");
        }
        knowledge(k, cell, ratePerH, cutoffCellV);
        fullVoltage(k, cell);
    }

    private void knowledge(int k, Cell cell, double ratePerH, double cutoffCellV) {
        boolean ownCurve = !cell.openCircuitCurve().isEmpty();
        if (cell.resistance() instanceof InternalResistance.Typical && !ownCurve) {
            generic(k, cell, cutoffCellV);
        } else if (cell.resistance() instanceof InternalResistance.Ac) {
            found.add(Finding.of(
                    Severity.NOTE,
                    "resistance-from-ac",
                    Subject.of(PackPart.AC_RESISTANCE, k),
                    "The resistance is guessed from a 1 kHz figure, to about a third either"
                            + " way; measure the drop after 10 s at 1C instead."));
        } else if (!ownCurve && ratePerH > RESISTANCE_ALONE_PER_H) {
            add(
                    Severity.NOTE,
                    "resistance-alone",
                    Subject.of(PackPart.DC_RESISTANCE, k),
                    ratePerH,
                    RESISTANCE_ALONE_PER_H,
                    "At %.2fC the cell's own lag counts, which its resistance does not tell; alone"
                            + " it is good to about %.2fC.");
        }
        if (cell.resistance() instanceof InternalResistance.Dc dc
                && PulseResistance.factor(cell.chemistry().set(), cell.capacityC(), dc.resistanceOhm())
                        .isEmpty()) {
            found.add(Finding.of(
                    Severity.ATTENTION,
                    "resistance-not-credible",
                    Subject.of(PackPart.DC_RESISTANCE, k),
                    "No cell of this chemistry and capacity has such a resistance; check"
                            + " its unit and that it is of one cell."));
        }
    }

    private void generic(int k, Cell cell, double cutoffCellV) {
        if (cell.chemistry() == Chemistry.LI_ION && cutoffCellV > MAKES_DIFFER_ABOVE_V) {
            add(
                    Severity.ATTENTION,
                    "generic-cell",
                    Subject.of(PackPart.CELL, k),
                    cutoffCellV,
                    MAKES_DIFFER_ABOVE_V,
                    "Only chemistry and capacity are known of these cells; at a cutoff of %.2f V, above %.1f V, makes"
                            + " differ by 12 %% of the energy and more: give a measured curve.");
            return;
        }
        found.add(Finding.of(
                Severity.NOTE,
                "generic-cell",
                Subject.of(PackPart.CELL, k),
                "Only chemistry and capacity are known of these cells; a measured"
                        + " resistance or discharge curve makes the answer theirs."));
    }

    private void fullVoltage(int k, Cell cell) {
        double curveFullV = CellModel.of(cell, 1).set().electrodes().openCircuitV(1);
        if (cell.limits().fullVoltageV().isPresent() && cell.fullVoltageV() > curveFullV + FULL_TOLERANCE_V) {
            add(
                    Severity.NOTE,
                    "outside-validated-range",
                    Subject.of(PackPart.FULL_VOLTAGE, k),
                    cell.fullVoltageV(),
                    curveFullV,
                    "No data for cells charged to %.2f V: energy is counted as if they held their capacity at %.2f V.");
        }
    }

    /** A format that takes the value and the limit. */
    private void add(Severity severity, String code, Subject subject, double value, double limit, String format) {
        String message = String.format(Locale.ROOT, format, value, limit);
        found.add(Finding.of(severity, code, subject, value, limit, message));
    }
}
