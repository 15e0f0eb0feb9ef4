package trestle.structure;

import java.util.List;
import trestle.finding.Chain;
import trestle.finding.Working;

/** How loads were reached. */
public final class LoadsWorkings {
    private static final String VLA = "CS-VLA 341";
    private static final String BEAM = "integrated along the span; O. Schrenk, NACA TM 948, 1940";

    private LoadsWorkings() {}

    /**
     * The workings of loads.
     *
     * @param task what was asked
     * @param result what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(LoadsTask task, LoadsResult result) {
        Chain chain = new Chain();
        HalfWing wing = task.wing();
        chain.given("m", "take-off mass", task.massKg(), "kg")
                .given("C_Lmax", "greatest lift coefficient", task.maxLift(), "1")
                .given("rho", "density of the air", task.densityKgPerM3(), "kg/m³")
                .given("V_C", "planned airspeed", task.cruiseMPerS(), "m/s")
                .given("n_d", "design load factor", task.designLoadFactor(), "1")
                .given("j", "factor of safety", task.factorOfSafety(), "1")
                .given("U", "derived gust", task.gustMPerS(), "m/s")
                .given("a", "lift slope", task.liftSlopePerRad(), "1/rad")
                .found("S", "wing area", wing.areaM2(), "m²", "sum of the panels", Chain.ARITHMETIC)
                .found("b", "span", 2 * wing.halfSpanM(), "m", "sum of the panels", Chain.ARITHMETIC)
                .step("W", "weight", task.weightN(), "N", "m*9.80665", Chain.ARITHMETIC)
                .step("V_S", "stall speed", result.stallMPerS(), "m/s", "sqrt(2*W/(1.225*S*C_Lmax))", "lift equation")
                .step("mu", "mass ratio", result.gust().massRatio(), "1", "2*m/S/(rho*(S/b)*a)", VLA)
                .step("K_g", "alleviation", result.gust().alleviation(), "1", "0.88*mu/(5.3+mu)", VLA)
                .step(
                        "n_g",
                        "gust load factor at the planned airspeed, stall not counted",
                        1 + result.gust().increment(task.cruiseMPerS()),
                        "1",
                        "1+K_g*0.5*1.225*U*V_C*a/(W/S)",
                        VLA);
        StationLoad root = result.stations().get(0);
        chain.found("V_r", "shear at the root at the design load", root.shearN(), "N", "lift less mass", BEAM)
                .found("M_r", "bending there", root.bendingNm(), "N m", "shear added up from the tip", BEAM);
        result.weakest().ifPresent(w -> weakest(chain, w));
        chain.given("n_1", "limit load factor", result.limitLoadFactor(), "1", "see limit_load_factor_from")
                .step("V_A", "manoeuvring speed", result.manoeuvreMPerS(), "m/s", "V_S*sqrt(n_1)", "stall at the limit")
                .given("y_p", "where half the lift stands", result.proof().lateralM(), "m", BEAM)
                .given("m_w", "mass of the wing and what is in it", task.wingMassKg(), "kg")
                .step(
                        "F_p",
                        "test load on each half wing",
                        result.proof().halfWingLoadN(),
                        "N",
                        "n_1*max(0,m-m_w)/2*9.80665",
                        Chain.ARITHMETIC)
                .step("M_p", "what it bends the root with", result.proof().rootBendingNm(), "N m", "F_p*y_p", "lever");
        return chain.lines();
    }

    private static void weakest(Chain chain, Weakest w) {
        chain.found(
                        "R",
                        "least reserve factor, " + w.part(),
                        w.reserve(),
                        "1",
                        "least of what each part may bear over what it bears",
                        "beam theory with the strengths as assumed")
                .step("n_l", "load factor that it may bear", w.limitLoadFactor(), "1", "n_d*R", Chain.ARITHMETIC)
                .step(
                        "n_f",
                        "load factor at which it gives way",
                        w.failureLoadFactor(),
                        "1",
                        "n_l*j",
                        Chain.ARITHMETIC);
    }
}
