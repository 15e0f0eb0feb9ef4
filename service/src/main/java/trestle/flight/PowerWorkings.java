package trestle.flight;

import trestle.finding.Chain;

/**
 * How the pack power of level flight at one airspeed was reached.
 *
 * @param chain where to write; it knows air, weight and the airspeed {@code V_tag}
 * @param task what was asked
 * @param tag end of the symbols of this airspeed
 * @param at what a meaning adds
 */
record PowerWorkings(Chain chain, EnduranceTask task, String tag, String at) {
    private static final String TRAUB =
            "L. W. Traub, Range and Endurance Estimates for Battery-Powered Aircraft, J. Aircraft 48(2), 2011, 703";

    /** The constants of the power source. */
    static void source(Chain chain, EnduranceTask task) {
        PowerSource power = task.power();
        if (power instanceof PolarPower polar) {
            polar(chain, task.airframe(), polar.polar());
        } else if (power instanceof CalibratedPower fit) {
            chain.given("k_3", "parasite power coefficient", fit.parasiteAreaM2(), "m²");
            chain.given("k_1", "induced power coefficient", fit.inducedFactorPerS4(), "1/s⁴");
        }
        chain.given("P_s", "power that does not go into thrust", power.systemsPowerW(), "W");
    }

    private static void polar(Chain chain, Airframe airframe, DragPolar polar) {
        double aspect = airframe.aspectRatio();
        chain.given("b", "wing span", airframe.wingSpanM(), "m");
        chain.step("A", "aspect ratio", aspect, "1", "b^2/S", EnduranceWorkings.ANDERSON);
        double oswald = 1 / (Math.PI * polar.inducedFactor() * aspect);
        chain.given("C_D0", "minimum drag coefficient", polar.leastDragCoefficient(), "1");
        chain.given("C_L0", "lift there", polar.liftCoefficientAtLeastDrag(), "1");
        chain.given("e", "Oswald's span efficiency", oswald, "1");
        double factor = polar.inducedFactor();
        chain.step("K", "induced-drag factor", factor, "1", "1/(pi*e*A)", EnduranceWorkings.ANDERSON);
    }

    /** From airspeed to pack power. */
    void write(SpeedPoint point) {
        double v = point.airspeedMPerS();
        double density = task.air().densityKgPerM3();
        double q = LevelFlight.dynamicPressurePa(density, v);
        chain.step("q_" + tag, "dynamic pressure" + at, q, "Pa", "rho*V_" + tag + "^2/2", EnduranceWorkings.ANDERSON);
        chain.step(
                "C_L" + tag,
                "lift coefficient" + at,
                point.liftCoefficient(),
                "1",
                "W/(q_" + tag + "*S)",
                EnduranceWorkings.ANDERSON);
        PowerSource power = task.power();
        if (power instanceof PolarPower polar) {
            fromPolar(polar, point, q);
        } else if (power instanceof CalibratedPower) {
            String formula = "P_s+k_3*rho*%1$s^3+k_1*m^2/(rho*%1$s)".formatted("V_" + tag);
            power(point, formula, "fit to a flight log; " + TRAUB);
        } else {
            chain.found(
                    "P_" + tag,
                    "pack power" + at,
                    point.powerW(),
                    "W",
                    "monotone cubic through the measured points, at equal lift coefficient",
                    "F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5(2), 1984, 300 (from memory)");
        }
    }

    private void fromPolar(PolarPower polar, SpeedPoint point, double q) {
        double coefficient = polar.polar().dragCoefficient(point.liftCoefficient());
        chain.step(
                "C_D" + tag,
                "drag coefficient" + at,
                coefficient,
                "1",
                "C_D0+K*(C_L" + tag + "-C_L0)^2",
                EnduranceWorkings.ANDERSON);
        double dragN = q * task.airframe().wingAreaM2() * coefficient;
        String drag = "q_%1$s*S*C_D%1$s".formatted(tag);
        chain.step("D_" + tag, "drag" + at, dragN, "N", drag, EnduranceWorkings.ANDERSON);
        chain.given(
                "eta_" + tag,
                "efficiency from pack to thrust" + at,
                polar.efficiency().fraction(point.airspeedMPerS(), dragN),
                "1",
                "product of the request's efficiencies, or the drive matched at this airspeed and" + " thrust");
        power(point, "D_%1$s*V_%1$s/eta_%1$s+P_s".formatted(tag), TRAUB);
    }

    private void power(SpeedPoint point, String formula, String source) {
        chain.step("P_" + tag, "pack power" + at, point.powerW(), "W", formula, source);
    }
}
