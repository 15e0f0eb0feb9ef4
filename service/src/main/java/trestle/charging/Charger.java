package trestle.charging;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import trestle.numeric.Guard;

/**
 * A charger, by output.
 *
 * @param maxCurrentA greatest current, A; empty: more than the cells take
 * @param maxPowerW greatest power at the output, W; empty: more than they take
 * @param maxVoltageV greatest voltage, V; empty where it is not known
 * @param maxSeriesCells most cells in series; empty where it is not known
 * @param channels outputs that work at the same time, 1 or more
 * @param efficiencyFraction power at the outputs over power from the supply, above 0 to 1
 * @param balances whether it sees and balances each cell
 * @param balanceCurrentA current of the balancer, A, above 0
 */
public record Charger(
        OptionalDouble maxCurrentA,
        OptionalDouble maxPowerW,
        OptionalDouble maxVoltageV,
        OptionalInt maxSeriesCells,
        int channels,
        double efficiencyFraction,
        boolean balances,
        double balanceCurrentA) {
    /** A usual charger with a switching converter; common practice, no source. */
    public static final double USUAL_EFFICIENCY = 0.85;

    /** Checks the physics. */
    public Charger {
        maxCurrentA.ifPresent(it -> Guard.positive("maxCurrentA", it));
        maxPowerW.ifPresent(it -> Guard.positive("maxPowerW", it));
        maxVoltageV.ifPresent(it -> Guard.positive("maxVoltageV", it));
        Guard.within("channels", channels, 1, 100);
        Guard.within("efficiencyFraction", efficiencyFraction, 0.01, 1);
        Guard.positive("balanceCurrentA", balanceCurrentA);
    }
}
