package trestle.charging;

import java.util.List;
import trestle.battery.Segment;
import trestle.finding.Chain;
import trestle.finding.Working;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.units.Time;

/** How a charge was reached: the currents that limit it, and what it takes from the supply. */
public final class ChargeWorkings {
    private static final String MODEL = "the cell model, step by step (see the models)";
    private static final String COLD =
            "largest rate without plating of published parameter sets (O'Kane et al. 2022; Chen et al. 2020)";

    private ChargeWorkings() {}

    /**
     * The workings of a charge.
     *
     * @param task what was asked
     * @param charge what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(ChargeTask task, PackCharge charge) {
        Chain chain = new Chain();
        double startK = task.surroundings().startK();
        chain.given("T", "temperature of the cells at the start", startK, "K");
        chain.given(
                "T_r",
                "temperature that the rating holds for",
                task.coldRatingK().orElse(CellCare.RATED_K),
                "K");
        double share = CellCare.coldFraction(startK, task.coldRatingK());
        if (share > 0) {
            chain.step("f", "share of the rating in the cold", share, "1", "min(1,exp(-3200*(1/T-1/T_r)))", COLD);
        }
        for (SegmentCharge segment : charge.segments()) {
            segment(task, segment, chain);
        }
        StringCharge slowest = charge.slowest();
        chain.found("I", "current at the start", slowest.startA(), "A", "the least of all limits", MODEL);
        charge.timeTo80S().stream()
                .map(Time::hFromS)
                .forEach(h -> chain.found("t_80", "time to 80 %", h, "h", "stepped", MODEL));
        charge.timeToFullS().stream()
                .map(Time::hFromS)
                .forEach(h -> chain.found("t_full", "time to full", h, "h", "stepped", MODEL));
        double energyWh = Energy.whFromJ(charge.energyJ());
        chain.found("E", "energy at the outputs of the charger", energyWh, "Wh", "stepped", MODEL);
        chain.given("eta", "efficiency of the charger", task.charger().efficiencyFraction(), "1");
        chain.step(
                "E_s",
                "energy from the supply",
                Energy.whFromJ(charge.supply().energyJ()),
                "Wh",
                "E/eta",
                Chain.ARITHMETIC);
        battery(task, charge, chain);
        balance(task, charge, chain);
        return chain.lines();
    }

    private static void segment(ChargeTask task, SegmentCharge charged, Chain chain) {
        Segment segment = task.pack().segments().get(charged.index());
        int n = charged.index() + 1;
        String of = " of " + task.pack().nameOf(charged.index());
        double ratedA = CellCare.ratedA(segment);
        chain.given("n_" + n, "cells in parallel" + of, segment.parallelCount(), "1");
        chain.given("r_" + n, "charge current of a cell" + of, ratedA / segment.parallelCount(), "A");
        boolean cold = charged.allowedBecause() == LimitedBy.COLD && charged.allowedA() > 0;
        if (cold || charged.allowedBecause() == LimitedBy.CELL_RATING) {
            chain.step(
                    "a_" + n,
                    "current allowed" + of,
                    charged.allowedA(),
                    "A",
                    "n_" + n + "*r_" + n + (cold ? "*f" : ""),
                    Chain.ARITHMETIC);
        }
    }

    private static void battery(ChargeTask task, PackCharge charge, Chain chain) {
        var battery = task.supply().flatMap(ChargeSupply::battery);
        if (battery.isEmpty() || charge.supply().chargeC().isEmpty()) {
            return;
        }
        chain.given("U", "voltage of the field battery", battery.get().nominalVoltageV(), "V");
        chain.step(
                "Q_s",
                "charge from it",
                Charge.ahFromC(charge.supply().chargeC().getAsDouble()),
                "Ah",
                "E_s/U",
                Chain.ARITHMETIC);
    }

    private static void balance(ChargeTask task, PackCharge charge, Chain chain) {
        double balanceA = task.charger().balanceCurrentA();
        double capacityAh = Charge.ahFromC(task.pack().capacityC());
        chain.given("Q", "capacity of the smallest segment as it is now", capacityAh, "Ah");
        chain.given(
                "d",
                "spread of the states of charge",
                Share.percentFromFraction(
                        charge.balanceS() * balanceA / task.pack().capacityC()),
                "%",
                "the larger of that of the cells and that of the segments of a string");
        chain.given("I_b", "current of the balancer", balanceA, "A");
        chain.step("t_b", "time of the balancer", Time.hFromS(charge.balanceS()), "h", "d/100*Q/I_b", Chain.ARITHMETIC);
        chain.found(
                "T_max",
                "highest temperature of a cell",
                Temperature.cFromK(charge.highestK()),
                "°C",
                "stepped",
                MODEL);
    }
}
