package trestle.battery;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Mass;
import trestle.units.Resistance;

/** Judges what was said of the cells of one segment: whether it can be so, and how much it tells. */
final class CellChecks {
    /** What cells hold, from memory. */
    private static final Basis USUAL_CELLS = Basis.source("what cells of this kind hold, from memory");

    /** A resistance is credible between these multiples of the typical one, and absurd beyond the others. */
    private static final double LEAST_RATIO = 0.1;

    private static final double GREATEST_RATIO = 8;
    private static final double ABSURDLY_SMALL = 0.005;
    private static final double ABSURDLY_GREAT = 100;

    /** A resistance by itself was found good to this rate, 1/h, on two measured cells that cannot be cited. */
    private static final double RESISTANCE_ALONE_PER_H = 0.25;

    /**
     * Cells of one kind part ways above this, V: the set of Ecker et al. 2015 against the NMC set differs
     * at 25 °C by 4 % of the energy at 3.2 V, 12 % at 3.5 V.
     */
    private static final double MAKES_DIFFER_ABOVE_V = 3.2;

    /** Charged above the curve's own full end by this much, V: no data. */
    private static final double FULL_TOLERANCE_V = 0.06;

    private static final Basis ECKER = Basis.source("M. Ecker et al., J. Electrochem. Soc. 162 (2015) A1836");

    private final Segment segment;
    private final Cell cell;
    private final int index;
    private final String name;
    private final double ratePerH;
    private final double cutoffCellV;
    private final boolean runs;

    /** Whether an earlier segment has the same cells, of which all was said there. */
    private final boolean saidBefore;

    private CellChecks(PackTask task, PackEnergy energy, int index) {
        this.segment = task.pack().segments().get(index);
        this.cell = segment.cell();
        this.index = index;
        this.name = task.pack().nameOf(index);
        this.ratePerH = energy.cRatePerH();
        this.cutoffCellV = energy.cutoffVoltageV() / energy.ratings().seriesCount();
        this.runs = energy.discharge().durationS() > 0;
        this.saidBefore = task.pack().segments().subList(0, index).stream()
                .anyMatch(it -> it.cell().equals(cell));
    }

    static void judge(PackTask task, PackEnergy energy, int index, Judge judge) {
        CellChecks checks = new CellChecks(task, energy, index);
        String of = " of the cells of " + checks.name;
        judge.essential(
                "cell-specific-energy",
                "energy over mass" + of,
                Subject.of(PackPart.CAPACITY, index),
                checks::specificEnergy);
        judge.check("cell-resistance", "resistance" + of, checks.at(PackPart.DC_RESISTANCE), checks::resistance);
        judge.check("cell-data", "what is known" + of, checks.at(PackPart.CELL), checks::knowledge);
        judge.check("full-voltage", "full voltage" + of, checks.at(PackPart.FULL_VOLTAGE), checks::fullVoltage);
    }

    private Subject at(PackPart part) {
        return Subject.of(part, index);
    }

    private void specificEnergy(Trial trial) {
        OptionalDouble massKg = segment.knownCellMassKg();
        if (massKg.isEmpty()) {
            trial.notJudged(at(PackPart.CELL_MASS));
            return;
        }
        PlausibleEnergy plausible = PlausibleEnergy.of(cell.chemistry());
        double whPerKg = Energy.whFromJ(cell.nominalEnergyJ()) / massKg.getAsDouble();
        boolean high = whPerKg > plausible.mostWhPerKg();
        boolean broken = high || whPerKg < plausible.leastWhPerKg();
        boolean absurd = whPerKg > plausible.absurdlyHighWhPerKg() || whPerKg < plausible.absurdlyLowWhPerKg();
        String sentence = "A cell of %s Ah and %s g in %s is %.0f Wh/kg, and cells of its kind hold %.0f to %.0f (from"
                + " memory): check whether %s.";
        Object[] values = {
            digits(Charge.ahFromC(cell.capacityC())),
            digits(Mass.gFromKg(massKg.getAsDouble())),
            name,
            whPerKg,
            plausible.leastWhPerKg(),
            plausible.mostWhPerKg(),
            high
                    ? "the capacity is that of several cells in parallel, or the mass too small"
                    : "the mass is that of several cells or of the whole pack, or the capacity too small"
        };
        trial.of(whPerKg, "Wh/kg");
        Trial held = high
                ? trial.atMost(plausible.mostWhPerKg(), USUAL_CELLS)
                : trial.atLeast(plausible.leastWhPerKg(), USUAL_CELLS);
        held.asSaid(broken && saidBefore, absurd ? Severity.STOP : Severity.ATTENTION)
                .stopIf(absurd, "specific-energy-implausible", sentence, values)
                .attentionIf(broken, "specific-energy-implausible", sentence, values);
    }

    private void resistance(Trial trial) {
        OptionalDouble given = givenOhm();
        if (given.isEmpty()) {
            trial.notJudged(at(PackPart.DC_RESISTANCE));
            return;
        }
        double typicalOhm = PulseResistance.ohm(cell.dynamics().set(), cell.capacityC(), 1);
        double ratio = given.getAsDouble() / typicalOhm;
        boolean high = ratio > GREATEST_RATIO;
        boolean broken = high || ratio < LEAST_RATIO;
        boolean absurd = ratio > ABSURDLY_GREAT || ratio < ABSURDLY_SMALL;
        double typicalMilliohm = Resistance.milliohmFromOhm(typicalOhm);
        String sentence = "%s mΩ a cell in %s is far from the %s mΩ typical of its chemistry and capacity (%s to %s"
                + " mΩ are credible, common practice): check whether it %s.";
        Object[] values = {
            digits(Resistance.milliohmFromOhm(given.getAsDouble())),
            name,
            digits(typicalMilliohm),
            digits(LEAST_RATIO * typicalMilliohm),
            digits(GREATEST_RATIO * typicalMilliohm),
            high ? "is that of the whole pack" : absurd ? "was given in ohms" : "is that of cells in parallel"
        };
        trial.at(at(
                        cell.resistance() instanceof InternalResistance.Ac
                                ? PackPart.AC_RESISTANCE
                                : PackPart.DC_RESISTANCE))
                .of(Resistance.milliohmFromOhm(given.getAsDouble()), "mΩ");
        Trial held = high
                ? trial.atMost(GREATEST_RATIO * typicalMilliohm, Basis.COMMON_PRACTICE)
                : trial.atLeast(LEAST_RATIO * typicalMilliohm, Basis.COMMON_PRACTICE);
        held.asSaid(broken && saidBefore, absurd ? Severity.STOP : Severity.ATTENTION)
                .stopIf(absurd, "resistance-not-credible", sentence, values)
                .attentionIf(broken, "resistance-not-credible", sentence, values);
    }

    /** Three digits, without an exponent. */
    private static String digits(double value) {
        return new BigDecimal(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    private OptionalDouble givenOhm() {
        if (cell.resistance() instanceof InternalResistance.Dc dc) {
            return OptionalDouble.of(dc.resistanceOhm());
        }
        return cell.resistance() instanceof InternalResistance.Ac ac
                ? OptionalDouble.of(ac.resistanceOhm() / InternalResistance.Ac.SHARE_OF_DC)
                : OptionalDouble.empty();
    }

    private void knowledge(Trial trial) {
        boolean ownCurve = !cell.openCircuitCurve().isEmpty();
        if (cell.resistance() instanceof InternalResistance.Typical && !ownCurve) {
            generic(trial);
        } else if (cell.resistance() instanceof InternalResistance.Ac) {
            trial.at(at(PackPart.AC_RESISTANCE))
                    .noteIf(
                            !saidBefore,
                            "resistance-from-ac",
                            "The resistance is estimated from a 1 kHz figure, to about a third either way: measure the drop"
                                    + " after 10 s at 1C instead.");
        } else if (!ownCurve) {
            trial.at(at(PackPart.DC_RESISTANCE))
                    .of(ratePerH, "1/h")
                    .atMost(RESISTANCE_ALONE_PER_H, Basis.source("two measured cells that cannot be cited"))
                    .noteIf(
                            !saidBefore && runs && ratePerH > RESISTANCE_ALONE_PER_H,
                            "resistance-alone",
                            "Above about %.2fC a resistance alone does not describe the voltage drop, and this run is at"
                                    + " %.2fC: give a measured discharge curve (open_circuit_curve).",
                            RESISTANCE_ALONE_PER_H,
                            ratePerH);
        }
    }

    private void generic(Trial trial) {
        if (cell.chemistry() == Chemistry.LI_ION && cutoffCellV > MAKES_DIFFER_ABOVE_V) {
            trial.of(cutoffCellV, "V")
                    .atMost(MAKES_DIFFER_ABOVE_V, ECKER)
                    .asSaid(saidBefore, Severity.ATTENTION)
                    .attention(
                            "generic-cell",
                            "Only chemistry and capacity of the cells are given; at a cutoff of %.2f V a cell, above %.1f V,"
                                    + " cells of different makers differ by 12 %% of the energy and more: give a measured"
                                    + " discharge curve (open_circuit_curve).",
                            cutoffCellV,
                            MAKES_DIFFER_ABOVE_V);
        }
        trial.noteIf(
                !saidBefore,
                "generic-cell",
                "Only chemistry and capacity of the cells are given: give a measured resistance or discharge curve for an"
                        + " answer specific to your cells.");
    }

    private void fullVoltage(Trial trial) {
        double curveFullV = CellModel.of(cell, 1).set().electrodes().openCircuitV(1);
        double fullV = cell.fullVoltageV();
        trial.of(fullV, "V")
                .atMost(curveFullV + FULL_TOLERANCE_V, RangeChecks.CHECKED)
                .noteIf(
                        !saidBefore
                                && cell.limits().fullVoltageV().isPresent()
                                && fullV > curveFullV + FULL_TOLERANCE_V,
                        "outside-validated-range",
                        "No data for cells charged to %.2f V: their energy is counted as if they held their capacity at"
                                + " %.2f V.",
                        fullV,
                        curveFullV);
    }
}
