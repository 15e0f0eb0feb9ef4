package trestle.flight;

import java.util.List;
import trestle.finding.Chain;
import trestle.finding.Working;
import trestle.units.Energy;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Time;

/** How endurance and range were reached, in SI up to the answer's hours and kilometres. */
public final class EnduranceWorkings {
    static final String ANDERSON = AircraftWorkings.ANDERSON;
    private static final String SEARCH =
            "search: a grid, then R. P. Brent, Algorithms for Minimization Without Derivatives,"
                    + " chapter 5 (from memory)";
    private static final String FLOOR = "1.2 stall speeds, common practice, no source";

    private final EnduranceTask task;
    private final EnduranceResult result;
    private final Chain chain = new Chain();

    private EnduranceWorkings(EnduranceTask task, EnduranceResult result) {
        this.task = task;
        this.result = result;
    }

    /**
     * The workings of an endurance.
     *
     * @param task what was asked
     * @param result what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(EnduranceTask task, EnduranceResult result) {
        EnduranceWorkings workings = new EnduranceWorkings(task, result);
        workings.aircraft();
        workings.speeds();
        workings.energy();
        return workings.chain.lines();
    }

    private void aircraft() {
        AircraftWorkings aircraft = new AircraftWorkings(chain, task.airframe(), task.air());
        aircraft.surroundings();
        chain.given("w", "headwind", task.headwindMPerS(), "m/s");
        chain.given("r", "reserve, share of the energy", task.reserveFraction(), "1");
        aircraft.stall();
        chain.step(
                "V_f",
                "minimum recommended airspeed",
                result.leastRecommendedAirspeedMPerS(),
                "m/s",
                Chain.number(SteadyFlight.FLOOR_IN_STALL_SPEEDS) + "*V_s",
                FLOOR);
        PowerWorkings.source(chain, task);
    }

    private void speeds() {
        String least = "minimum pack power P(V) at or above V_f";
        result.bestEndurance().ifPresent(p -> point(p, "e", "best endurance", least, SEARCH));
        String furthest = "minimum of P(V)/((V-w)*E(P)) at or above V_f and w: furthest over ground";
        result.bestRange().ifPresent(p -> point(p, "r", "best range", furthest, SEARCH));
        String asked = "as asked for";
        result.atAirspeed().ifPresent(p -> point(p, "a", "the airspeed asked for", asked, Chain.REQUEST));
    }

    private void point(SpeedPoint point, String tag, String called, String how, String source) {
        String v = "V_" + tag;
        String at = " at " + called;
        chain.found(v, "airspeed" + at, point.airspeedMPerS(), "m/s", how, source);
        new PowerWorkings(chain, task, tag, at).write(point);
        hold(point, tag, at);
        double hours = Time.hFromS(point.enduranceS());
        String endurance = "(1-r)*t_" + tag;
        chain.step("h_" + tag, "endurance" + at, hours, "h", endurance, Chain.ARITHMETIC);
        double airKm = Length.kmFromM(point.stillAirRangeM());
        String still = "h_" + tag + "*" + v + "*3.6";
        chain.step("X_" + tag, "still-air range" + at, airKm, "km", still, Chain.ARITHMETIC);
        double groundKm = Length.kmFromM(point.groundRangeM());
        String ground = "h_" + tag + "*max(0," + v + "-w)*3.6";
        chain.step("G_" + tag, "ground range" + at, groundKm, "km", ground, Chain.ARITHMETIC);
        if (point.energyPerGroundMJ().isPresent()) {
            chain.step(
                    "c_" + tag,
                    "energy over ground distance" + at,
                    Energy.whFromJ(point.energyPerGroundMJ().getAsDouble() * Length.mFromKm(1)),
                    "Wh/km",
                    "P_" + tag + "/((" + v + "-w)*3.6)",
                    Chain.ARITHMETIC);
        }
    }

    /** How long the store holds the power, down to its end. */
    private void hold(SpeedPoint point, String tag, String at) {
        double hours = Time.hFromS(point.enduranceS() / (1 - task.reserveFraction()));
        String symbol = "t_" + tag;
        String meaning = "time to the end of the energy" + at;
        if (task.store() instanceof FixedEnergy fixed) {
            double storedWh = Energy.whFromJ(fixed.usableEnergyJ());
            String formula = Chain.number(storedWh) + "/P_" + tag;
            chain.step(symbol, meaning, hours, "h", formula, Chain.ARITHMETIC);
            return;
        }
        String how = "the pack is discharged at constant P_"
                + tag
                + " to its cutoff, step by step in time; pack-energy with this power_w shows it";
        String method = "time integration of the pack model; compare L. W. Traub, J. Aircraft 48(2)," + " 2011, 703";
        chain.found(symbol, meaning, hours, "h", how, method);
        point.currentA()
                .ifPresent(amps -> chain.found(
                        "I_" + tag,
                        "mean current" + at,
                        amps,
                        "A",
                        "charge given in that discharge over its time",
                        method));
    }

    private void energy() {
        result.radiusOfActionM()
                .ifPresent(radiusM -> chain.found(
                        "R",
                        "radius of action",
                        Length.kmFromM(radiusM),
                        "km",
                        "(1-r) over the shares of the discharge that a kilometre out against |w| and one back take,"
                                + " each at its own best airspeed",
                        SEARCH));
        double availableWh = Energy.whFromJ(result.energy().availableJ());
        if (result.bestEndurance().isPresent() && task.store() instanceof FixedEnergy) {
            chain.given("E", "usable energy", availableWh, "Wh");
        } else {
            String how = "what the legs take, and what is then left at best-endurance power; flown as a"
                    + " profile, which may dip under the cutoff for some seconds";
            chain.found("E", "usable energy", availableWh, "Wh", how, "sum over the legs");
        }
        double reserveWh = Energy.whFromJ(result.energy().reserveJ());
        chain.step("E_r", "energy kept", reserveWh, "Wh", "r*E", Chain.ARITHMETIC);
        for (int i = 0; i < result.energy().legs().size(); i++) {
            leg(result.energy().legs().get(i), i + 1);
        }
        result.packOptimum()
                .ifPresent(best -> chain.found(
                        "m_b",
                        "pack mass for the longest endurance under the mass limit",
                        Mass.gFromKg(best.packMassKg()),
                        "g",
                        "maximum of e*m_b/P_min(m_0+m_b), energy per pack mass e and the rest m_0 held",
                        "L. W. Traub, J. Aircraft 48(2), 2011, 703"));
    }

    private void leg(LegResult leg, int n) {
        String of = " of leg " + n;
        chain.found("P_" + n, "pack power" + of, leg.powerW(), "W", "power at its airspeed", ANDERSON);
        chain.given("t_" + n, "planned time" + of, leg.plannedDurationS(), "s", Chain.ARITHMETIC);
        chain.step(
                "E_" + n,
                "planned energy" + of,
                Energy.whFromJ(leg.plannedEnergyJ()),
                "Wh",
                "P_" + n + "*t_" + n + "/3600",
                Chain.ARITHMETIC);
    }
}
