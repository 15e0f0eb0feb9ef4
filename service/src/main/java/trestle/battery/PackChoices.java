package trestle.battery;

import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.units.Charge;
import trestle.units.Mass;
import trestle.units.Resistance;
import trestle.units.Share;

/** The model choices that touched a pack's numbers. */
final class PackChoices {
    private final PackTask task;
    private final Judge judge;

    private PackChoices(PackTask task, Judge judge) {
        this.task = task;
        this.judge = judge;
    }

    static void note(PackTask task, Judge judge) {
        PackChoices choices = new PackChoices(task, judge);
        for (int k = 0; k < task.pack().segments().size(); k++) {
            choices.ofSegment(k, task.pack().segments().get(k));
        }
        choices.ofPack();
        choices.ofLoad();
    }

    private void ofSegment(int k, Segment segment) {
        Cell cell = segment.cell();
        if (cell.chemistry() == Chemistry.CUSTOM) {
            judge.assume(
                    Subject.of(PackPart.CHEMISTRY, k),
                    "resistance, lags and laws of temperature of " + words(cell.dynamics()),
                    "a custom cell brings its open-circuit curve only");
        }
        ofResistance(k, cell);
        ofData(k, segment);
    }

    private void ofResistance(int k, Cell cell) {
        if (cell.resistance() instanceof InternalResistance.Typical) {
            double ohm = PulseResistance.ohm(cell.dynamics().set(), cell.capacityC(), 1);
            judge.assume(
                    Subject.of(PackPart.DC_RESISTANCE, k),
                    Judge.text("%.3g mΩ a cell at 25 °C", Resistance.milliohmFromOhm(ohm)),
                    "typical of the chemistry and the capacity");
        } else if (cell.resistance() instanceof InternalResistance.Ac ac) {
            double ohm = ac.resistanceOhm() / InternalResistance.Ac.SHARE_OF_DC;
            judge.assume(
                    Subject.of(PackPart.AC_RESISTANCE, k),
                    Judge.text("direct-current resistance %.3g mΩ a cell", Resistance.milliohmFromOhm(ohm)),
                    "the 1 kHz figure is usually 0.4 to 0.7 of it; 0.55 taken");
        }
    }

    private void ofData(int k, Segment segment) {
        Cell cell = segment.cell();
        if (segment.knownCellMassKg().isEmpty()) {
            judge.assume(
                    Subject.of(PackPart.CELL_MASS, k),
                    Judge.text("%.3g g a cell", Mass.gFromKg(cell.massOrTypicalKg())),
                    "typical specific energy of the chemistry");
        }
        if (cell.limits().maxChargeCurrentA().isEmpty()) {
            judge.assume(
                    Subject.of(PackPart.MAX_CHARGE_CURRENT, k),
                    Judge.text(
                            "%.3g A a cell",
                            Charge.ahFromC(cell.capacityC()) * cell.dynamics().chargeRatePerH()),
                    "usual charging rate of the chemistry");
        }
        if (segment.healthFraction() < 1) {
            judge.assume(
                    Subject.of(PackPart.HEALTH, k),
                    Judge.text("%.2f times the resistance", CellModel.growthRatio(segment.healthFraction())),
                    "resistance grows as capacity fades: 1.5 times at 80 %");
        }
        double full = CellModel.of(cell, segment.healthFraction()).fullFraction();
        if (cell.limits().fullVoltageV().isPresent() && full < 1) {
            judge.assume(
                    Subject.of(PackPart.FULL_VOLTAGE, k),
                    Judge.text(
                            "a full cell at %.2f V holds %.0f %% of its capacity",
                            cell.fullVoltageV(), Share.percentFromFraction(full)),
                    "read from the open-circuit curve");
        }
    }

    private static String words(Chemistry chemistry) {
        return switch (chemistry) {
            case LIPO -> "a lithium polymer pouch";
            case LFP -> "an iron phosphate cell";
            case LI_ION, CUSTOM -> "a high-energy nickel cylinder";
        };
    }

    private void ofPack() {
        Pack pack = task.pack();
        Covering covering = task.surroundings().covering();
        judge.assume(
                Subject.of(PackPart.COVERING),
                Judge.text(
                        "%.1f W/(m² K) over %.1f dm² of outside: %.0f mW/K for each cell",
                        covering.transferWPerM2K(),
                        Cooling.surfaceM2(pack) * 100,
                        Cooling.perCellWPerK(pack, covering) * 1000),
                "still air; all cells in one block of proportions 3 : 2 : 1");
        if (pack.segments().stream().anyMatch(it -> it.massKg().isEmpty())) {
            judge.assume(
                    Subject.of(PackPart.PACK),
                    "a tenth of the cells' mass for strips, leads and wrap",
                    "5 to 15 % is usual, from memory");
        }
        if (task.surroundings().startK() < CellModel.REFERENCE_K) {
            judge.assume(
                    Subject.of(PackPart.AMBIENT),
                    "below 25 °C the ohmic and kinetic drop grows as one measured cell of each chemistry shows",
                    "measured resistance grows faster in the cold than the fitted sets");
        }
        judge.assume(
                Subject.of(PackPart.PACK),
                "heat of entropy left out; cells in parallel share the current evenly",
                "a few percent of the heat at 1C; cells of one segment are alike");
    }

    private void ofLoad() {
        if (task.load() instanceof Load.Profile) {
            judge.assume(
                    Subject.of(PackPart.CUTOFF),
                    Judge.text("counts once the voltage stays below it for %.0f s", DischargeRun.PROFILE_HOLD_S),
                    "controllers filter; a dip that recovers is reported, not obeyed");
            judge.assume(
                    Subject.of(PackPart.LOAD),
                    "the mean power of the profile, for what is left after it or under the cutoff",
                    "a profile stops at its end");
        }
    }
}
