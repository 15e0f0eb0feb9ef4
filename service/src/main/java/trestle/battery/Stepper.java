package trestle.battery;

/**
 * Carries a pack through time at one load after another. Not thread-safe; lives inside one call.
 *
 * <p>Steps are equal in charge, so that a discharge takes some 430 of them whatever its length.
 * Against steps a twelfth of that, energy and time come out 0.03 % high.
 */
final class Stepper {
    /** Charge of a step over the segment's capacity. */
    static final double STEP_CHARGE = 0.0025;

    /** After a change of load the first steps are short, since lags and voltage move fast. */
    private static final double FIRST_STEP_S = 0.5;

    private static final int RAMP_STEPS = 20;
    private static final double RAMP_RATIO = 1.35;

    /** Steps are halved this near to a limit, where the knee is. */
    private static final double NEAR_LIMIT_V = 0.25;

    /** A step is kept until it is this much too long or too short: exponentials are then reused. */
    private static final double TOO_LONG_RATIO = 1.07;

    private static final double TOO_SHORT_RATIO = 0.8;

    /** Charge below which the tables say nothing of a real cell: it collapses through 0 V. */
    private static final double LEAST_CHARGE = -0.02;

    /** A whole discharge takes some 430 steps; this is far beyond any, and ends what would never end. */
    private static final int MOST_STEPS = 20_000;

    /** Where no current is found after a step, it is halved down to this. */
    private static final double LEAST_STEP_S = 0.05;

    private final Circuit circuit;
    private final Circuit circuitBefore;
    private final Tally tally = new Tally();
    private final Tally tallyBefore = new Tally();

    private Extremes extremes = new Extremes();
    private double powerW;
    private double fixedA;
    private double stepS;
    private double rampS;
    private double mostStepS;
    private int rampLeft;

    Stepper(PackState start) {
        circuit = new Circuit(start);
        circuitBefore = new Circuit(start);
    }

    /** Sets a power, W, not negative. */
    void feedPower(double newPowerW) {
        powerW = newPowerW;
        fixedA = 0;
    }

    /** Sets a current, A, above 0. */
    void feedCurrent(double newCurrentA) {
        fixedA = newCurrentA;
    }

    Circuit circuit() {
        return circuit;
    }

    Tally tally() {
        return tally;
    }

    /** What was seen since the last run began. */
    Extremes extremes() {
        return extremes;
    }

    /**
     * Goes on at the load that is set.
     *
     * @param untilS time at which to stop, s; may be infinite at a load above 0
     * @param limits what ends it earlier
     * @param debounce remembers since when a voltage has been below its limit
     * @param trace looks on
     * @return why it stopped; {@code PROFILE_END} for the time
     */
    DischargeEnd run(double untilS, Limits limits, Debounce debounce, Trace trace) {
        extremes = new Extremes();
        startRamp();
        boolean fed = solve();
        double marginV = circuit.marginV(limits);
        if (!fed) {
            accept(trace);
            return DischargeEnd.POWER_LIMIT;
        }
        debounce.see(marginV, tally.timeS);
        accept(trace);
        for (int step = 0; tally.timeS < Math.min(untilS, debounce.endS()); step++) {
            if (step == MOST_STEPS) {
                return DischargeEnd.POWER_LIMIT;
            }
            double dtS = nextStepS(marginV, Math.min(untilS, debounce.endS()) - tally.timeS);
            keep();
            if (!go(dtS)) {
                back();
                if (dtS <= LEAST_STEP_S) {
                    return DischargeEnd.POWER_LIMIT;
                }
                mostStepS = dtS / 2;
                continue;
            }
            double nextV = circuit.marginV(limits);
            if (circuit.leastCharge() < LEAST_CHARGE) {
                accept(trace);
                return DischargeEnd.OVER_DISCHARGE;
            }
            if (nextV < 0 && marginV >= 0) {
                double share = marginV / (marginV - nextV);
                if (debounce.isNone()) {
                    back();
                    go(share * dtS);
                    circuit.marginV(limits);
                    accept(trace);
                    return limitReached();
                }
                debounce.see(nextV, tally.timeS - (1 - share) * dtS);
                nextV = backTo(debounce.endS(), nextV, limits);
            } else {
                debounce.see(nextV, tally.timeS);
            }
            marginV = nextV;
            accept(trace);
        }
        return tally.timeS >= debounce.endS() ? limitReached() : DischargeEnd.PROFILE_END;
    }

    /** A step that outlasts the debounce is taken to its end alone. */
    private double backTo(double endS, double marginV, Limits limits) {
        if (tally.timeS <= endS) {
            return marginV;
        }
        back();
        go(endS - tally.timeS);
        return circuit.marginV(limits);
    }

    private DischargeEnd limitReached() {
        return circuit.isHarmful() ? DischargeEnd.OVER_DISCHARGE : DischargeEnd.CUTOFF;
    }

    private boolean solve() {
        if (fixedA > 0) {
            return circuit.solveFixed(fixedA);
        }
        return circuit.solvePower(powerW);
    }

    /** One step; false where the load cannot be fed at its end. */
    private boolean go(double dtS) {
        double powerBeforeW = circuit.voltageV() * circuit.currentA();
        tally.heatJ += circuit.heatW() * dtS;
        tally.leadLossJ += circuit.leadLossW() * dtS;
        tally.chargeC += circuit.currentA() * dtS;
        tally.timeS += dtS;
        circuit.advance(dtS);
        boolean fed = solve();
        double powerAfterW = circuit.voltageV() * circuit.currentA();
        tally.energyJ += (powerBeforeW + powerAfterW) / 2 * dtS;
        return fed;
    }

    private void keep() {
        circuitBefore.take(circuit);
        tallyBefore.take(tally);
    }

    /** Undoes the last step, with the voltages of its start. */
    private void back() {
        circuit.take(circuitBefore);
        tally.take(tallyBefore);
        solve();
    }

    private void accept(Trace trace) {
        extremes.see(circuit.voltageV(), circuit.currentA(), circuit.highestK());
        trace.point(this);
    }

    private void startRamp() {
        rampS = FIRST_STEP_S;
        rampLeft = RAMP_STEPS;
        stepS = 0;
        mostStepS = Double.POSITIVE_INFINITY;
    }

    private double nextStepS(double marginV, double leftS) {
        double wantedS = circuit.timeOfChargeS(STEP_CHARGE);
        if (marginV < NEAR_LIMIT_V) {
            wantedS /= 2;
        }
        if (rampLeft > 0) {
            rampLeft--;
            stepS = Math.min(wantedS, rampS);
            rampS *= RAMP_RATIO;
        } else if (stepS > wantedS * TOO_LONG_RATIO || stepS < wantedS * TOO_SHORT_RATIO) {
            stepS = wantedS;
        }
        return Math.min(Math.min(stepS, mostStepS), leftS);
    }
}
