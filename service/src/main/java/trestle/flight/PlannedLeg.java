package trestle.flight;

import java.util.OptionalDouble;

/**
 * A leg with its numbers before the energy is asked.
 *
 * @param leg the leg
 * @param flyable false below the stall, against too much wind, or beyond the propulsion
 * @param airspeedMPerS airspeed, m/s
 * @param powerW pack power, W; 0 where not flyable
 * @param durationS duration, s; 0 where not flyable
 * @param groundSpeedMPerS speed over the ground along the way, m/s; 0 for a loiter
 */
record PlannedLeg(
        Leg leg, boolean flyable, double airspeedMPerS, double powerW, double durationS, double groundSpeedMPerS) {

    static PlannedLeg notFlyable(Leg leg, double airspeedMPerS) {
        return new PlannedLeg(leg, false, airspeedMPerS, 0, 0, 0);
    }

    double energyJ() {
        return powerW * durationS;
    }

    LegResult flown(FlownStep step, LegStatus status) {
        double flownS = step.endS() - step.startS();
        return new LegResult(
                leg,
                status,
                airspeedMPerS,
                powerW,
                durationS,
                energyJ(),
                step.startS(),
                step.endS(),
                step.energyJ(),
                groundSpeedMPerS * flownS,
                step.lowestVoltageV(),
                step.meanCurrentA());
    }

    LegResult notFlown(double atS, LegStatus status) {
        FlownStep nothing = new FlownStep(atS, atS, 0, OptionalDouble.empty(), OptionalDouble.empty());
        return flown(nothing, status);
    }
}
