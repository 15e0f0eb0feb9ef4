package trestle.battery;

import java.util.List;
import java.util.function.ToDoubleFunction;
import trestle.finding.Chain;
import trestle.finding.Chain.Term;
import trestle.finding.Working;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Mass;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.units.Time;

/**
 * How a pack's numbers were reached. The discharge itself is an integration in time: its start is
 * taken apart here, the rest is cited.
 */
public final class PackWorkings {
    private static final String STEPPING = "time integration: steps of "
            + Chain.number(Share.percentFromFraction(Stepper.STEP_CHARGE))
            + " % of the charge at most, shorter at the start and near the cutoff";
    private static final String MODEL =
            "J. Crank, The Mathematics of Diffusion, chapter 6 (from memory); parameters fitted to published"
                    + " cells, /v1/reference/cell-chemistries";
    private static final String PRACTICE = "common practice, no source";

    private final PackTask task;
    private final PackEnergy result;
    private final Chain chain = new Chain();

    private PackWorkings(PackTask task, PackEnergy result) {
        this.task = task;
        this.result = result;
    }

    /**
     * The workings of a pack.
     *
     * @param task what was asked
     * @param result what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(PackTask task, PackEnergy result) {
        PackWorkings workings = new PackWorkings(task, result);
        workings.ratings();
        workings.cutoff();
        new StartWorkings(workings.chain, task, result).write();
        workings.given();
        workings.rates();
        return workings.chain.lines();
    }

    private void ratings() {
        PackRatings ratings = result.ratings();
        String how = Chain.ARITHMETIC;
        sum("N", "cells in series", "1", "%s", Segment::seriesCount, s -> 1, how);
        sum(
                "V_nom",
                "nominal voltage",
                "V",
                "%s*%s",
                Segment::seriesCount,
                s -> s.cell().nominalVoltageV(),
                how);
        sum(
                "V_full",
                "full voltage",
                "V",
                "%s*%s",
                Segment::seriesCount,
                s -> s.cell().fullVoltageV(),
                how);
        String least = "";
        for (int k = 0; k < task.pack().segments().size(); k++) {
            Segment segment = task.pack().segments().get(k);
            String symbol = "Q_" + (k + 1);
            String product = segment.parallelCount()
                    + "*"
                    + Chain.number(Charge.ahFromC(segment.cell().capacityC()))
                    + "*"
                    + Chain.number(segment.healthFraction());
            double chargeAh = Charge.ahFromC(segment.capacityC());
            String meaning = "cells in parallel times capacity times health, segment " + (k + 1);
            chain.step(symbol, meaning, chargeAh, "Ah", product, how);
            least += (k == 0 ? "" : ",") + symbol;
        }
        double capacityAh = Charge.ahFromC(ratings.capacityC());
        chain.step("Q", "capacity of the pack", capacityAh, "Ah", "min(" + least + ")", how);
        sum(
                "E_nom",
                "nominal energy, as new",
                "Wh",
                "%s*%s",
                Segment::cellCount,
                s -> Energy.whFromJ(s.cell().nominalEnergyJ()),
                how);
        List<Term> blocks = task.pack().segments().stream()
                .map(s -> new Term(massOf(s), Mass.gFromKg(s.blockMassKg())))
                .toList();
        chain.sum("m", "pack with strips, leads and wrap", "g", blocks, PRACTICE);
    }

    /** A block's mass as given, or its cells and a tenth. */
    private static String massOf(Segment segment) {
        return segment.massKg().isPresent()
                ? Chain.number(Mass.gFromKg(segment.blockMassKg()))
                : "%d*%s*(1+%s)"
                        .formatted(
                                segment.cellCount(),
                                Chain.number(Mass.gFromKg(segment.cellMassKg())),
                                Chain.number(Segment.OVERHEAD_FRACTION));
    }

    private void sum(
            String symbol,
            String meaning,
            String unit,
            String form,
            ToDoubleFunction<Segment> count,
            ToDoubleFunction<Segment> each,
            String source) {
        List<Term> terms = task.pack().segments().stream()
                .map(s -> term(form, count.applyAsDouble(s), each.applyAsDouble(s)))
                .toList();
        chain.sum(symbol, meaning, unit, terms, source);
    }

    private static Term term(String form, double count, double each) {
        return new Term(form.formatted(Chain.number(count), Chain.number(each)), count * each);
    }

    private void cutoff() {
        String meaning = "cutoff of the pack, all cells alike";
        Cutoff cutoff = task.cutoff();
        double voltageV = result.cutoffVoltageV();
        if (cutoff instanceof Cutoff.PackVoltage) {
            chain.given("V_c", meaning, voltageV, "V");
        } else if (cutoff instanceof Cutoff.CellVoltage cell) {
            String formula = Chain.number(cell.voltageV()) + "*N";
            chain.step("V_c", meaning, voltageV, "V", formula, Chain.ARITHMETIC);
        } else if (cutoff instanceof Cutoff.CountedCells counted) {
            String formula = Chain.number(counted.voltageV()) + "*" + counted.cellCount();
            chain.step("V_c", meaning + ", as counted", voltageV, "V", formula, Chain.ARITHMETIC);
        } else {
            sum(
                    "V_c",
                    meaning,
                    "V",
                    "%s*%s",
                    Segment::seriesCount,
                    s -> s.cell().minimumVoltageV(),
                    Chain.ARITHMETIC);
        }
    }

    private void given() {
        Discharge discharge = result.discharge();
        EnergyBudget budget = result.budget();
        chain.found("t", "duration", discharge.durationS(), "s", STEPPING, MODEL);
        double usableWh = Energy.whFromJ(budget.usableEnergyJ());
        chain.found("E", "usable energy", usableWh, "Wh", "sum of V*I*dt to the cutoff", MODEL);
        double usableAh = Charge.ahFromC(budget.usableChargeC());
        chain.found("Q_u", "usable charge", usableAh, "Ah", "sum of I*dt to the cutoff", MODEL);
        double heatWh = Energy.whFromJ(discharge.heatJ());
        chain.found("E_h", "heat", heatWh, "Wh", "sum of the cells' heat times dt", MODEL);
        chain.found("V_low", "lowest voltage", discharge.lowestVoltageV(), "V", "on the way", MODEL);
        chain.found(
                "T_high",
                "highest cell temperature",
                Temperature.cFromK(discharge.highestTemperatureK()),
                "°C",
                "heat against the cooling of the pack's surface, on the way",
                "C.-H. Chen et al., J. Electrochem. Soc. 167 (2020) 080534: heat transfer");
        double belowWh = Energy.whFromJ(budget.energyBelowCutoffJ());
        String below = "the discharge goes on from the cutoff to the cells' minimum voltage";
        chain.found("E_s", "energy below the cutoff", belowWh, "Wh", below, MODEL);
        chain.given("r", "reserve, share of the usable energy", task.reserveFraction(), "1");
        double reserveWh = Energy.whFromJ(budget.reserveEnergyJ());
        chain.step("E_r", "reserve", reserveWh, "Wh", "r*E", Chain.ARITHMETIC);
        String reached = "time at which E-E_r is given, between two steps by proportion";
        chain.found("t_r", "time to the reserve", budget.durationToReserveS(), "s", reached, MODEL);
        double specific = usableWh / Mass.gFromKg(result.ratings().massKg()) * 1000;
        String perMass = "E/m*1000";
        chain.step("e", "usable over mass", specific, "Wh/kg", perMass, Chain.ARITHMETIC);
    }

    private void rates() {
        Discharge discharge = result.discharge();
        if (discharge.durationS() > 0) {
            double drawnAh = Charge.ahFromC(discharge.chargeC());
            chain.found("Q_t", "charge drawn in t", drawnAh, "Ah", "sum of I*dt over t", MODEL);
            String rate = "Q_t/(t/3600)/Q";
            chain.step("C", "C rate, mean", result.cRatePerH(), "1/h", rate, Chain.ARITHMETIC);
        } else {
            double meanW = BudgetDraft.meanPowerW(task);
            chain.given("P_m", "mean power of the load", meanW, "W");
            chain.step("C", "C rate", result.cRatePerH(), "1/h", "P_m/V_nom/Q", Chain.ARITHMETIC);
        }
        chain.given(
                "I_ch",
                "charging current",
                result.ratings().chargeCurrentA(),
                "A",
                "least over the segments of the cells' limit, or typical of the chemistry");
        result.chargeTimeS()
                .ifPresent(timeS -> chain.found(
                        "t_ch",
                        "time to charge back, in the same air",
                        Time.hFromS(timeS),
                        "h",
                        "stepped at constant current, then at constant voltage; see pack-charge",
                        MODEL));
        result.allowed()
                .ifPresent(allowed -> chain.found(
                        "P_max",
                        "greatest power at the start",
                        allowed.startW(),
                        "W",
                        "power at which the first limit is met: cutoff, rating or the pack's summit",
                        MODEL));
    }
}
