package trestle.joint;

import java.util.List;
import trestle.finding.Chain;
import trestle.finding.Working;
import trestle.units.Energy;
import trestle.units.Share;

/** How a go-around was followed. */
public final class GoAroundWorkings {
    private static final String CELLS = "the cell model of the packs, from the state that the flight leaves";
    private static final String HELD =
            "full power on the voltage as it sags, in steps of a quarter of a second until the time is over";

    private GoAroundWorkings() {}

    /**
     * The workings.
     *
     * @param task what was asked
     * @param go what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(GoAroundTask task, GoAround go) {
        Chain chain = new Chain();
        chain.found(
                "s",
                "charge left",
                Share.percentFromFraction(go.chargeFraction()),
                "%",
                task.chargeFraction().isPresent() ? "come down to at cruise power" : "after the plan of the flight",
                CELLS);
        chain.given("V", "safe climb speed", task.climbing().airspeedMPerS(), "m/s", "1.3 stall speeds");
        chain.given("D", "drag of level flight there", task.climbing().dragN(), "N", "drag polar");
        chain.given("W", "weight", task.climbing().weightN(), "N", "mass balance");
        chain.given("t", "time asked", task.holdS(), "s");
        chain.found("P", "power at its start", go.powerW(), "W", "where what packs give and motors take meet", CELLS);
        if (go.powerW() > 0) {
            chain.found("T", "thrust at its start", go.thrustN(), "N", "of the motors at that voltage", "the drive");
            chain.step(
                    "c",
                    "rate of climb at its start",
                    go.climbRateMPerS(),
                    "m/s",
                    "V*max(-1,min(1,(T-D)/W))",
                    "J. Anderson, Introduction to Flight, section 6.8 (from memory)");
        }
        chain.found("U", "lowest voltage", go.lowestVoltageV(), "V", HELD, CELLS);
        go.timeToCutoffS().ifPresent(at -> chain.found("t_c", "cutoff", at, "s", HELD, CELLS));
        go.energyToCutoffJ()
                .ifPresent(it -> chain.found("E_c", "energy until then", Energy.whFromJ(it), "Wh", HELD, CELLS));
        chain.found("h", "height gained", go.heightM(), "m", HELD, "rate of climb over time");
        chain.found(
                "P_a",
                "greatest constant power that lasts",
                go.powerAllowedW(),
                "W",
                "eleven bisections up to twice the power",
                CELLS);
        return chain.lines();
    }
}
