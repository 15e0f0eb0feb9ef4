package trestle.flight;

import java.util.List;
import trestle.finding.Judge;
import trestle.finding.Subject;

/** The model choices behind the numbers of {@link Endurance}. */
final class EnduranceAssumptions {
    private EnduranceAssumptions() {}

    static void assume(EnduranceTask task, SteadyFlight flight, EnduranceResult result, Judge judge) {
        judge.assume(
                Subject.of(FlightPart.MAX_LIFT_COEFFICIENT),
                Judge.text(
                        "recommended airspeeds are %.1f m/s or more, 1.2 times the stall speed", flight.floorMPerS()),
                "common practice: gusts and turns need the margin");
        judge.assume(
                Subject.of(FlightPart.CONDITIONS),
                Judge.text("%.4f kg/m³ on every leg", flight.densityKgPerM3()),
                "a leg is flown in the air of the conditions; 300 m of height change it by 3 %");
        source(task, judge);
        if (task.reserveFraction() > 0) {
            judge.assume(
                    Subject.of(FlightPart.RESERVE),
                    Judge.text("%.0f %% of the energy usable at each power is kept", 100 * task.reserveFraction()),
                    "what a pack gives depends on the power it is drawn at");
        }
        if (result.radiusOfActionM().isPresent() && task.headwindMPerS() != 0) {
            judge.assume(
                    Subject.of(FlightPart.HEADWIND),
                    "radius of action: each way at its own best airspeed; shares of the discharge add up",
                    "the powers of the two ways are close");
        }
        if (!task.legs().isEmpty()) {
            judge.assume(
                    Subject.of(FlightPart.ENERGY),
                    "what is left after the legs is counted at best-endurance power",
                    "that is how a pilot would use it");
        }
        legs(result, judge);
        if (result.packOptimum().isPresent()) {
            judge.assume(
                    Subject.of(FlightPart.PACK_MASS),
                    "specific energy, rest mass, drag and wing stay the same as the pack grows",
                    "structure and power per cell change little near the optimum");
        }
    }

    private static void source(EnduranceTask task, Judge judge) {
        if (task.power() instanceof MeasuredPower) {
            judge.assume(
                    Subject.of(FlightPart.POWER_CURVE),
                    "the measured powers are pack powers, systems included, carried to this mass"
                            + " and density at equal lift coefficient",
                    "speed goes with the root of weight over density, thrust power with weight to"
                            + " the 3/2 over the root of density");
        } else if (task.power() instanceof CalibratedPower) {
            judge.assume(
                    Subject.of(FlightPart.CALIBRATION),
                    "both power coefficients hold at this mass and density",
                    "they contain drag, wing and efficiency only");
        } else {
            judge.assume(
                    Subject.of(FlightPart.DRAG),
                    "parabolic drag polar at every airspeed",
                    "holds between the stall and the end of laminar low drag; Reynolds number effects are left out");
        }
    }

    private static void legs(EnduranceResult result, Judge judge) {
        List<LegResult> legs = result.energy().legs();
        for (int i = 0; i < legs.size(); i++) {
            LegResult leg = legs.get(i);
            if (leg.leg().airspeedMPerS().isEmpty() && leg.status() != LegStatus.NOT_FLYABLE) {
                judge.assume(
                        Subject.of(FlightPart.LEG, i),
                        Judge.text("airspeed %.1f m/s", leg.airspeedMPerS()),
                        because(leg.leg()));
            }
        }
    }

    private static String because(Leg leg) {
        if (leg instanceof Leg.Climb) {
            return "the airspeed of minimum power, at least 1.3 times the stall speed";
        }
        return leg instanceof Leg.Loiter ? "the airspeed of minimum power" : "the airspeed of best range in the wind";
    }
}
