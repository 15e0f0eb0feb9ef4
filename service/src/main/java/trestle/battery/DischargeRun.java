package trestle.battery;

import java.util.ArrayList;
import java.util.List;

/** One discharge: feeds each step of the load to the stepper and gathers what comes of it. */
final class DischargeRun {
    /** A controller's filter; common practice, no source. */
    static final double PROFILE_HOLD_S = 5;

    private final Stepper stepper;
    private final Limits limits;
    private final Trace trace;
    private final double mostS;
    private final List<StepOutcome> steps = new ArrayList<>();
    private final Extremes extremes = new Extremes();

    DischargeRun(PackState start, Limits limits, Trace trace, double mostS) {
        this.stepper = new Stepper(start);
        this.limits = limits;
        this.trace = trace;
        this.mostS = mostS;
    }

    Discharge at(Load load) {
        if (load instanceof Load.Profile profile) {
            return through(profile);
        }
        if (load instanceof Load.Power power) {
            stepper.feedPower(power.powerW());
        } else if (load instanceof Load.Current current) {
            stepper.feedCurrent(current.currentA());
        }
        Debounce debounce = Debounce.none();
        return result(step(mostS, debounce), debounce);
    }

    private Discharge through(Load.Profile profile) {
        Debounce debounce = Debounce.of(PROFILE_HOLD_S);
        DischargeEnd ending = DischargeEnd.PROFILE_END;
        double untilS = 0;
        for (PowerStep next : profile.steps()) {
            untilS = Math.min(untilS + next.durationS(), mostS);
            stepper.feedPower(next.powerW());
            ending = step(untilS, debounce);
            if (ending != DischargeEnd.PROFILE_END || untilS == mostS) {
                break;
            }
        }
        return result(ending, debounce);
    }

    private DischargeEnd step(double untilS, Debounce debounce) {
        Tally before = new Tally();
        before.take(stepper.tally());
        DischargeEnd ending = stepper.run(untilS, limits, debounce, trace);
        Tally after = stepper.tally();
        Extremes seen = stepper.extremes();
        extremes.see(seen);
        steps.add(new StepOutcome(
                before.timeS,
                after.timeS,
                seen.firstV,
                stepper.circuit().voltageV(),
                seen.lowestV,
                seen.highestA,
                after.energyJ - before.energyJ,
                after.chargeC - before.chargeC,
                ending == DischargeEnd.PROFILE_END));
        return ending;
    }

    private Discharge result(DischargeEnd ending, Debounce debounce) {
        Tally tally = stepper.tally();
        Circuit circuit = stepper.circuit();
        return new Discharge(
                ending,
                circuit.weakest(),
                tally.timeS,
                tally.energyJ,
                tally.chargeC,
                tally.heatJ,
                tally.leadLossJ,
                steps.get(0).startVoltageV(),
                circuit.voltageV(),
                extremes.lowestV,
                extremes.highestA,
                extremes.highestK,
                debounce.firstDipS(),
                circuit.outcomes(),
                steps,
                circuit.state());
    }
}
