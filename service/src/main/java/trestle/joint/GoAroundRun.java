package trestle.joint;

import java.util.List;
import java.util.OptionalDouble;
import trestle.battery.Cutoff;
import trestle.battery.Discharge;
import trestle.battery.DischargeEnd;
import trestle.battery.Load;
import trestle.battery.PackState;
import trestle.battery.PowerStep;
import trestle.numeric.Root;

/**
 * A pack followed through a climb at full power, in short steps: in each the power is what the motors take at the
 * voltage that the pack has under it at the step's start. A voltage below the cutoff counts from its first moment, unless
 * it has then been above it for five seconds on end: a few millivolts about the cutoff, as a cell warms, do not undo it.
 */
final class GoAroundRun {
    /** A controller's filter, as in a flight's plan; common practice, no source. */
    private static final double FILTER_S = 5;

    /** How long is looked for the cutoff. */
    static final double LONGEST_S = 600;

    /** Steps after the time asked grow by this. */
    private static final double GROWTH = 1.15;

    private static final double AT_S = 10;
    private static final double LEAST_STEP_S = 1e-6;
    private static final double ACCURACY_V = 1e-4;

    /** Shares of the voltage at rest, from which the least is a pack that has collapsed. */
    private static final double[] SHARES = {0.97, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4};

    private final FullPower power;
    private final double systemsW;
    private final Cutoff cutoff;
    private final Climbing climbing;

    private final PackState start;
    private PackState state;
    private double timeS;
    private double belowSinceS = Double.POSITIVE_INFINITY;
    private double aboveSinceS = Double.POSITIVE_INFINITY;
    private double heightM;
    private double energyJ;
    private boolean cut;

    double startPowerW;
    double startThrustN;
    double startRateMPerS;
    double heightAtCutoffM;
    double energyAtCutoffJ;
    OptionalDouble after10sV = OptionalDouble.empty();
    OptionalDouble cutoffS = OptionalDouble.empty();
    private double lowestV = Double.POSITIVE_INFINITY;
    double lowestHeldV = Double.POSITIVE_INFINITY;
    GoAroundEnd end = GoAroundEnd.HELD;

    GoAroundRun(PackState start, FullPower power, double systemsW, Cutoff cutoff, Climbing climbing) {
        this.start = start;
        this.state = start;
        this.power = power;
        this.systemsW = systemsW;
        this.cutoff = cutoff;
        this.climbing = climbing;
    }

    /** Follows the pack for a time, whether or not the cutoff is passed in it. */
    GoAroundRun hold(double untilS, double stepS) {
        while (end == GoAroundEnd.HELD && timeS < untilS - LEAST_STEP_S) {
            step(Math.min(stepS, untilS - timeS));
        }
        return this;
    }

    /** Goes on until the cutoff, or until nobody flies a go-around any more. */
    GoAroundRun untilCutoff() {
        double stepS = 1;
        while (end == GoAroundEnd.HELD && !cut && timeS < LONGEST_S - LEAST_STEP_S) {
            stepS *= GROWTH;
            step(Math.min(stepS, LONGEST_S - timeS));
        }
        if (end == GoAroundEnd.HELD && cutoffS.isPresent()) {
            end = GoAroundEnd.CUTOFF;
        }
        return this;
    }

    /** Lowest voltage until the controller has cut, V; that at rest where nothing was taken. */
    double lowestVoltageV() {
        return Double.isFinite(lowestV) ? lowestV : start.terminalVoltageV(0);
    }

    /** Height gained so far, m. */
    double heightM() {
        return heightM;
    }

    /** Whether the pack has been above its cutoff all the time. */
    boolean holds() {
        return end == GoAroundEnd.HELD && cutoffS.isEmpty();
    }

    private void step(double dtS) {
        OptionalDouble voltage = voltageV();
        if (voltage.isEmpty()) {
            ended(GoAroundEnd.POWER_LIMIT, timeS);
            return;
        }
        double voltageV = voltage.getAsDouble();
        double powerW = voltageV * power.currentA(voltageV) + systemsW;
        double thrustN = power.thrustN(voltageV);
        double rateMPerS = climbing.rateMPerS(thrustN);
        if (timeS == 0) {
            startPowerW = powerW;
            startThrustN = thrustN;
            startRateMPerS = rateMPerS;
        }
        if (!(powerW > 0)) {
            // A motor that the wind turns takes nothing from the pack.
            timeS += dtS;
            heightM += rateMPerS * dtS;
            return;
        }
        Discharge run = Discharge.of(state, new Load.Profile(List.of(new PowerStep(powerW, dtS))), cutoff);
        see(run, rateMPerS);
        timeS += run.durationS();
        heightM += rateMPerS * run.durationS();
        energyJ += run.energyJ();
        lowestHeldV = Math.min(lowestHeldV, run.lowestVoltageV());
        if (!cut) {
            lowestV = lowestHeldV;
        }
        state = run.end();
        if (after10sV.isEmpty() && timeS >= AT_S - LEAST_STEP_S) {
            after10sV = OptionalDouble.of(run.endVoltageV());
        }
        if (run.ending() == DischargeEnd.POWER_LIMIT) {
            ended(GoAroundEnd.POWER_LIMIT, timeS);
        } else if (run.ending() == DischargeEnd.OVER_DISCHARGE) {
            ended(GoAroundEnd.OVER_DISCHARGE, timeS);
        } else if (timeS - belowSinceS >= FILTER_S) {
            cut = true;
        }
    }

    /** Where the voltage is below its limit, since when. */
    private void see(Discharge run, double rateMPerS) {
        if (run.firstDipS().isEmpty()) {
            aboveSinceS = Math.min(aboveSinceS, timeS);
            if (!cut && timeS + run.durationS() - aboveSinceS >= FILTER_S) {
                belowSinceS = Double.POSITIVE_INFINITY;
                cutoffS = OptionalDouble.empty();
            }
            return;
        }
        aboveSinceS = Double.POSITIVE_INFINITY;
        if (belowSinceS == Double.POSITIVE_INFINITY) {
            double dipS = run.firstDipS().getAsDouble();
            belowSinceS = timeS + dipS;
            cutoffS = OptionalDouble.of(belowSinceS);
            heightAtCutoffM = heightM + rateMPerS * dipS;
            energyAtCutoffJ = energyJ + run.energyJ() * share(dipS, run.durationS());
        }
    }

    private static double share(double part, double whole) {
        return whole > 0 ? Math.min(1, part / whole) : 0;
    }

    private void ended(GoAroundEnd because, double atS) {
        end = because;
        if (cutoffS.isEmpty()) {
            cutoffS = OptionalDouble.of(atS);
            heightAtCutoffM = heightM;
            energyAtCutoffJ = energyJ;
        }
    }

    /**
     * The voltage at which what the pack gives and what is taken meet, the upper one of two; empty where they do not.
     */
    private OptionalDouble voltageV() {
        double restV = state.terminalVoltageV(0);
        for (double share : SHARES) {
            double lowV = share * restV;
            if (spareV(lowV) >= 0) {
                return Root.between(this::spareV, lowV, restV, ACCURACY_V);
            }
        }
        return OptionalDouble.empty();
    }

    private double spareV(double voltageV) {
        return state.terminalVoltageV(power.currentA(voltageV) + systemsW / voltageV) - voltageV;
    }
}
