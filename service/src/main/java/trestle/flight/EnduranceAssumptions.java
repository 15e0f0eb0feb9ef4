package trestle.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Assumption;
import trestle.finding.Subject;

/** The model choices behind the numbers of {@link Endurance}. */
final class EnduranceAssumptions {
    private EnduranceAssumptions() {}

    static List<Assumption> of(EnduranceTask task, SteadyFlight flight, EnduranceResult result) {
        List<Assumption> all = new ArrayList<>();
        add(
                all,
                FlightPart.MAX_LIFT_COEFFICIENT,
                text("recommended airspeeds are %.1f m/s or more, 1.2 times the stall speed", flight.floorMPerS()),
                "common practice: gusts and turns need the margin");
        add(
                all,
                FlightPart.CONDITIONS,
                text("%.4f kg/m³ on every leg", flight.densityKgPerM3()),
                "a leg is flown in the air of the conditions; 300 m of height change it by 3 %");
        all.add(source(task));
        if (task.reserveFraction() > 0) {
            add(
                    all,
                    FlightPart.RESERVE,
                    text("%.0f %% of the energy usable at each power is kept", 100 * task.reserveFraction()),
                    "what a pack gives depends on the power it is drawn at");
        }
        if (result.radiusOfActionM().isPresent() && task.headwindMPerS() != 0) {
            add(
                    all,
                    FlightPart.HEADWIND,
                    "radius of action: each way at its own best airspeed; shares of the discharge" + " add up",
                    "the powers of the two ways are close");
        }
        if (!task.legs().isEmpty()) {
            add(
                    all,
                    FlightPart.ENERGY,
                    "what is left after the legs is counted at best-endurance power",
                    "that is how a pilot would use it");
        }
        legs(all, result);
        if (result.batteryOptimum().isPresent()) {
            add(
                    all,
                    FlightPart.BATTERY,
                    "specific energy, rest mass, drag and wing stay the same as the battery grows",
                    "structure and power per cell change little near the optimum");
        }
        return all;
    }

    private static Assumption source(EnduranceTask task) {
        if (task.power() instanceof MeasuredPower) {
            return new Assumption(
                    Subject.of(FlightPart.POWER_CURVE),
                    "the measured powers are pack powers, systems included, carried to this mass"
                            + " and density at equal lift coefficient",
                    "speed goes with the root of weight over density, thrust power with weight to"
                            + " the 3/2 over the root of density");
        }
        if (task.power() instanceof CalibratedPower) {
            return new Assumption(
                    Subject.of(FlightPart.CALIBRATION),
                    "k3 and k1 hold at this mass and density",
                    "they contain drag, wing and efficiency only");
        }
        return new Assumption(
                Subject.of(FlightPart.DRAG),
                "parabolic drag polar at every airspeed",
                "holds between the stall and the end of laminar low drag; Reynolds number effects" + " are left out");
    }

    private static void legs(List<Assumption> all, EnduranceResult result) {
        List<LegResult> legs = result.energy().legs();
        for (int i = 0; i < legs.size(); i++) {
            LegResult leg = legs.get(i);
            if (leg.leg().airspeedMPerS().isEmpty() && leg.status() != LegStatus.NOT_FLYABLE) {
                all.add(new Assumption(
                        Subject.of(FlightPart.LEG, i),
                        text("airspeed %.1f m/s", leg.airspeedMPerS()),
                        because(leg.leg())));
            }
        }
    }

    private static String because(Leg leg) {
        if (leg instanceof Leg.Climb) {
            return "the airspeed of least power, at least 1.3 times the stall speed";
        }
        return leg instanceof Leg.Loiter ? "the airspeed of least power" : "the airspeed of best range in the wind";
    }

    private static void add(List<Assumption> all, FlightPart part, String assumed, String because) {
        all.add(new Assumption(Subject.of(part), assumed, because));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
