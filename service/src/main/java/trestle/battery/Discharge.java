package trestle.battery;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A pack at a load, from one state to another. Takes some tens of microseconds at a constant load.
 *
 * @param ending why it ended
 * @param limitingSegment segment whose cells were nearest to harm at the end, from 0
 * @param durationS how long, s; 0 where the load cannot be fed at all
 * @param energyJ energy delivered at the end of the leads, J
 * @param chargeC charge delivered, C
 * @param heatJ heat set free in the cells, J
 * @param leadLossJ heat set free in the leads, J
 * @param startVoltageV voltage of the pack just after the load came on, V
 * @param endVoltageV voltage at the end, V
 * @param lowestVoltageV least voltage, V
 * @param highestCurrentA greatest current, A
 * @param highestTemperatureK temperature of the hottest segment at its hottest, K
 * @param firstDipS when the voltage was first below the cutoff, s; in a profile it may recover
 * @param segments each segment at the end, under load
 * @param steps what happened in each step that was begun; one step for a constant load
 * @param end the state it ended in
 */
public record Discharge(
        DischargeEnd ending,
        int limitingSegment,
        double durationS,
        double energyJ,
        double chargeC,
        double heatJ,
        double leadLossJ,
        double startVoltageV,
        double endVoltageV,
        double lowestVoltageV,
        double highestCurrentA,
        double highestTemperatureK,
        OptionalDouble firstDipS,
        List<SegmentOutcome> segments,
        List<StepOutcome> steps,
        PackState end) {

    /** Copies the lists. */
    public Discharge {
        segments = List.copyOf(segments);
        steps = List.copyOf(steps);
    }

    /**
     * Discharges from a state until the cutoff, harm, the power limit, or the end of the profile.
     *
     * @param start state to start from
     * @param load what is fed
     * @param cutoff where to end
     * @return what happened
     */
    public static Discharge of(PackState start, Load load, Cutoff cutoff) {
        return of(start, load, Limits.of(cutoff, start.pack()), Trace.NONE);
    }

    /**
     * Discharges a rested pack at a constant power; the quick way to duration and energy.
     *
     * @param pack the pack
     * @param powerW power at the end of the leads, W, above 0
     * @param cutoff where to end
     * @param surroundings air and temperature at the start
     * @return what happened
     */
    public static Discharge atConstantPower(Pack pack, double powerW, Cutoff cutoff, Surroundings surroundings) {
        return of(PackState.of(pack, surroundings), new Load.Power(powerW), cutoff);
    }

    static Discharge of(PackState start, Load load, Limits limits, Trace trace) {
        return new DischargeRun(start, limits, trace, Double.POSITIVE_INFINITY).at(load);
    }

    /** The same, cut short after a time. */
    static Discharge during(double mostS, PackState start, Load load, Limits limits) {
        return new DischargeRun(start, limits, Trace.NONE, mostS).at(load);
    }
}
