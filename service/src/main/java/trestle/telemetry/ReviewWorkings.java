package trestle.telemetry;

import java.util.List;
import trestle.finding.Chain;
import trestle.finding.Working;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Length;

/** How the numbers of a review were reached, from its sums on. */
public final class ReviewWorkings {
    private static final String TRAPEZIUM = "trapezium rule over the rows, gaps left out, or as written down";
    private static final String REGRESSION =
            "P. Huber, Robust Statistics (from memory), or one mean power and the wing";

    private ReviewWorkings() {}

    /**
     * The workings of a review.
     *
     * @param task what was asked
     * @param review what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(ReviewTask task, FlightReview review) {
        Chain chain = new Chain();
        FlightSums sums = review.sums();
        chain.given("t", "time that the sums are over", sums.coveredS(), "s", TRAPEZIUM);
        sums.chargeC().ifPresent(q -> chain.given("Q", "charge used", Charge.ahFromC(q), "Ah", TRAPEZIUM));
        sums.energyJ().ifPresent(e -> chain.given("E", "energy used", Energy.whFromJ(e), "Wh", TRAPEZIUM));
        sums.meanPowerW().ifPresent(p -> chain.step("P_m", "mean power", p, "W", "E*3600/t", Chain.ARITHMETIC));
        sums.groundDistanceM()
                .ifPresent(d -> chain.given(
                        "d",
                        "way over the ground",
                        Length.kmFromM(d),
                        "km",
                        "geodesics on WGS 84, or as written down"));
        sums.energyPerGroundMJ()
                .ifPresent(e -> chain.step(
                        "e_d",
                        "energy over the way",
                        Energy.whFromJ(e * Length.mFromKm(1)),
                        "Wh/km",
                        "E/d",
                        Chain.ARITHMETIC));
        review.contradiction().ifPresent(found -> {
            chain.given(
                    "Q_v",
                    "charge that the rest voltage shows",
                    Charge.ahFromC(found.chargeShownC()),
                    "Ah",
                    "rest curve of the pack");
            chain.step("f_q", "true over counted charge", found.chargeFactor(), "1", "Q_v/Q", Chain.ARITHMETIC);
        });
        review.calibration().ifPresent(fit -> power(chain, task, review, fit));
        return chain.lines();
    }

    private static void power(Chain chain, ReviewTask task, FlightReview review, PowerFit fit) {
        double density = task.flown().densityKgPerM3();
        double v = review.steadyPower().map(PowerAtSpeed::airspeedMPerS).orElse(fit.leastMPerS());
        chain.given("P_0", "systems power", fit.systemsPowerW(), "W");
        chain.given("k_3", "parasite power coefficient", fit.parasiteAreaM2(), "m²", REGRESSION);
        chain.given("k_1", "induced power coefficient", fit.inducedFactorPerS4(), "1/s⁴", REGRESSION);
        chain.given("m", "mass", fit.massKg(), "kg");
        chain.given("rho", "density of the air", density, "kg/m³");
        chain.given("V", "mean airspeed of steady flight", v, "m/s", "this flight");
        chain.step(
                "P_V",
                "power of the fit at that airspeed",
                fit.powerW(v, density),
                "W",
                "P_0+k_3*rho*V^3+k_1*m^2/(rho*V)",
                "level flight on a parabolic polar");
    }
}
