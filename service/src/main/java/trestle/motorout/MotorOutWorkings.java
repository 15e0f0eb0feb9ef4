package trestle.motorout;

import java.util.List;
import trestle.finding.Chain;
import trestle.finding.Working;
import trestle.units.Angle;

/** How it was reached what one of several motors leaves behind when it stops. */
public final class MotorOutWorkings {
    private static final String RAYMER = "D. Raymer, Aircraft Design (from memory)";
    private static final String HELMBOLD = "H. B. Helmbold's lift slope, section 0.95 of a thin one (from memory)";
    private static final String RUDDER =
            "E. Houghton and P. Carpenter, Aerodynamics for Engineering Students, equation 4.57";
    private static final String MODEL = "the drive on the packs as at take-off, with the motors that go on";

    private MotorOutWorkings() {}

    /**
     * The workings.
     *
     * @param task what was asked
     * @param out what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(MotorOutTask task, MotorOut out) {
        Chain chain = new Chain();
        fin(chain, task);
        control(chain, task, out);
        yaw(chain, task, out);
        climb(chain, task, out);
        return chain.lines();
    }

    private static void fin(Chain chain, MotorOutTask task) {
        Fin fin = task.fin();
        chain.given("S_v", "area of one fin", fin.areaM2(), "m²");
        chain.given("h", "its height", fin.heightM(), "m");
        chain.given("n", "fins", fin.count(), "1");
        chain.given("l", "from the centre of gravity to the fin", task.finArmM(), "m", "mass balance");
        chain.step(
                "A",
                fin.count() == 1 ? "its aspect ratio, one end closed by the tailplane" : "its aspect ratio",
                fin.aspectRatio(),
                "1",
                fin.count() == 1 ? "1.55*h^2/S_v" : "h^2/S_v",
                RAYMER);
        chain.step("a_v", "its lift slope", fin.liftSlopePerRad(), "1/rad", "2*pi*A/(2+sqrt(4+(A/0.95)^2))", HELMBOLD);
    }

    private static void control(Chain chain, MotorOutTask task, MotorOut out) {
        Fin fin = task.fin();
        chain.given("V", "safe climb speed", out.airspeedMPerS(), "m/s", "1.3 stall speeds");
        chain.given("rho", "density of the air", task.densityKgPerM3(), "kg/m³", "standard atmosphere");
        chain.step("q", "dynamic pressure", task.pressurePa(out.airspeedMPerS()), "Pa", "rho*V^2/2", "mechanics");
        chain.given("eta", "dynamic pressure at the fin over that", fin.efficiencyRatio(), "1");
        if (fin.rudderChordFraction().isEmpty()) {
            chain.step(
                    "N_R",
                    "what the fin holds at 10° of sideslip",
                    out.controlNm(),
                    "N m",
                    "q*eta*n*S_v*l*a_v*10*pi/180",
                    "moment; 10° is common practice, no source");
            return;
        }
        double share = fin.rudderChordFraction().getAsDouble();
        chain.given("E", "chord of the rudder over that of the fin", share, "1");
        chain.step("theta", "where its hinge lies", Math.acos(2 * share - 1), "rad", "acos(2*E-1)", RUDDER);
        chain.step("tau", "worth of its deflection", fin.rudderEffect(), "1", "1-(theta-sin(theta))/pi", RUDDER);
        chain.given("delta", "its greatest deflection", Angle.degFromRad(fin.rudderDeflectionRad()), "°");
        chain.step(
                "N_R",
                "what full rudder holds",
                out.controlNm(),
                "N m",
                "q*eta*n*S_v*l*a_v*0.8*tau*delta*pi/180",
                "moment; 0.8 for gap, thickness and angle is common practice, no source");
    }

    private static void yaw(Chain chain, MotorOutTask task, MotorOut out) {
        chain.found("T", "thrust of the motor opposite at full throttle", out.thrustN(), "N", "at V", MODEL);
        chain.found(
                "D_d",
                "drag of the dead propeller",
                out.deadDragN(),
                "N",
                "at V",
                "blade elements carried on to a propeller that the wind turns, or its solidity (Raymer, from memory)");
        chain.given("y", "from the centre line to the outermost motor", task.lateralM(), "m");
        chain.step("N_T", "what both yaw with", out.yawNm(), "N m", "(T+D_d)*y", "moment");
        out.rudderNeededRad()
                .ifPresent(rad -> chain.step(
                        "delta_n",
                        "deflection that holds full throttle",
                        Angle.degFromRad(rad),
                        "°",
                        "delta*N_T/N_R",
                        "proportion"));
        out.minimumControlMPerS()
                .ifPresent(speed -> chain.found(
                        "V_MC",
                        "airspeed from which full throttle is held",
                        speed,
                        "m/s",
                        "where N_R and N_T meet, both over airspeed",
                        "root of both"));
        chain.step("T_m", "largest thrust that is held", out.largestThrustN(), "N", "max(0,N_R/y-D_d)", "moment");
    }

    private static void climb(Chain chain, MotorOutTask task, MotorOut out) {
        chain.given("W", "weight", task.weightN(), "N", "mass balance");
        chain.given("D", "drag of level flight at V", task.dragN(), "N", "drag polar");
        chain.given("m", "motors that go on", task.turningCount(), "1");
        chain.step(
                "phi",
                "bank that carries the side force",
                Angle.degFromRad(out.bankNeededRad()),
                "°",
                "asin(min(1,min(N_T,N_R)/(l*W)))*180/pi",
                "equilibrium");
        chain.step(
                "D_t",
                "drag of the side force",
                out.trimDragN(),
                "N",
                "(min(N_T,N_R)/l)^2/(q*pi*0.8*n*h^2)",
                "induced drag, span efficiency 0.8: common practice, no source");
        chain.step(
                "c",
                "rate of climb",
                out.climbRateMPerS(),
                "m/s",
                "V*max(-1,min(1,(m*min(T,T_m)-D-D_d-D_t)/W))",
                "J. Anderson, Introduction to Flight, section 6.8 (from memory)");
    }
}
