package trestle.launch;

import java.util.List;
import trestle.finding.Chain;
import trestle.finding.Working;
import trestle.flight.AircraftWorkings;
import trestle.flight.DragPolar;
import trestle.flight.LevelFlight;
import trestle.units.Angle;
import trestle.units.Share;

/** How stall, launch, climb, glide and turn were reached, in SI. */
public final class LaunchWorkings {
    private static final String ANDERSON = "J. D. Anderson, Introduction to Flight, chapter 6 (from memory)";
    private static final String PRACTICE = "common practice, no source";
    private static final String PATH =
            "classical Runge-Kutta, steps of 10 ms, on the equations of motion of a point mass; " + ANDERSON;

    private final LaunchStallTask task;
    private final LaunchStallResult result;
    private final Chain chain = new Chain();

    private LaunchWorkings(LaunchStallTask task, LaunchStallResult result) {
        this.task = task;
        this.result = result;
    }

    /**
     * The workings of a launch.
     *
     * @param task what was asked
     * @param result what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(LaunchStallTask task, LaunchStallResult result) {
        LaunchWorkings workings = new LaunchWorkings(task, result);
        workings.stall();
        workings.release();
        workings.climb();
        workings.glide();
        workings.turn();
        return workings.chain.lines();
    }

    private void stall() {
        AircraftWorkings aircraft = new AircraftWorkings(chain, task.airframe(), task.air());
        aircraft.air(task.headwindMPerS());
        aircraft.stall();
        double safe = result.safeClimbSpeedMPerS();
        String margin = Chain.number(LaunchStall.CLIMB_IN_STALL_SPEEDS) + "*V_s";
        chain.step("V_c", "safe climb speed", safe, "m/s", margin, PRACTICE);
        chain.step(
                "E", "kinetic energy at the safe climb speed", result.kineticEnergyJ(), "J", "m*V_c^2/2", "mechanics");
    }

    private void release() {
        Release release = new GroundRun(task).release();
        double angleRad = angleRad();
        double speed = release.groundSpeedMPerS();
        if (task.launch() instanceof Launch.Hand || task.launch() instanceof Launch.Catapult) {
            chain.given("V_g", "speed over the ground at release", speed, "m/s");
        } else {
            String how = "thrust or pull less drag and friction, integrated along the run";
            chain.found("V_g", "speed over the ground at release", speed, "m/s", how, PATH);
        }
        chain.given("g", "angle of release", Angle.degFromRad(angleRad), "°");
        chain.step(
                "V_0",
                "airspeed at release",
                result.launch().releaseAirspeedMPerS(),
                "m/s",
                "sqrt(max(0,V_g*cos(g*pi/180)+w)^2+(V_g*sin(g*pi/180))^2)",
                "geometry");
        chain.step(
                "M",
                "over the stall speed",
                Share.percentFromFraction(result.launch().marginFraction()),
                "%",
                "100*(V_0/V_s-1)",
                Chain.ARITHMETIC);
        result.launch().groundRunM().ifPresent(run -> chain.found("X", "run", run, "m", "way until release", PATH));
        double lost = result.launch().heightLostM();
        String sunk = "release height less the lowest point of the integrated path";
        chain.found("H", "height lost", lost, "m", sunk, PATH);
        result.launch()
                .timeToSafeSpeedS()
                .ifPresent(t -> chain.found(
                        "t",
                        "time to safe climb speed",
                        t,
                        "s",
                        "when the integrated path has V_c and does not sink",
                        PATH));
    }

    private double angleRad() {
        if (task.launch() instanceof Launch.Hand hand) {
            return hand.angleRad();
        }
        if (task.launch() instanceof Launch.Catapult catapult) {
            return catapult.railAngleRad();
        }
        return task.launch() instanceof Launch.Bungee bungee ? bungee.rampAngleRad() : 0;
    }

    private void climb() {
        DragPolar polar = task.polar();
        double safe = result.safeClimbSpeedMPerS();
        chain.given("C_D0", "least drag coefficient", polar.leastDragCoefficient(), "1");
        chain.given("C_L0", "lift there", polar.liftCoefficientAtLeastDrag(), "1");
        chain.given("b", "wing span", task.airframe().wingSpanM(), "m");
        double aspect = task.airframe().aspectRatio();
        double oswald = 1 / (Math.PI * aspect * polar.inducedFactor());
        chain.given("e", "Oswald's span efficiency", oswald, "1");
        double factor = polar.inducedFactor();
        chain.step("K", "induced-drag factor", factor, "1", "S/(pi*e*b^2)", ANDERSON);
        double q = LevelFlight.dynamicPressurePa(result.densityKgPerM3(), safe);
        chain.step("q", "dynamic pressure at V_c", q, "Pa", "rho*V_c^2/2", ANDERSON);
        double lift = task.airframe().liftCoefficient(result.densityKgPerM3(), safe);
        chain.step("C_L", "lift coefficient at V_c", lift, "1", "W/(q*S)", ANDERSON);
        double dragN = LaunchStall.dragN(task, safe);
        chain.step("D", "drag at V_c", dragN, "N", "q*S*(C_D0+K*(C_L-C_L0)^2)", ANDERSON);
        double thrustN = task.thrust().thrustN(safe);
        String thrust = "the request's thrust curve or static thrust at V_c, or the drive's";
        chain.given("F", "thrust at V_c", thrustN, "N", thrust);
        String sine = "max(-1,min(1,(F-D)/W))";
        double angleDeg = Angle.degFromRad(result.climb().angleRad());
        chain.step("G", "angle of climb", angleDeg, "°", "asin(" + sine + ")*180/pi", ANDERSON);
        double rate = result.climb().rateMPerS();
        chain.step("R", "rate of climb", rate, "m/s", "V_c*" + sine, ANDERSON);
    }

    private void glide() {
        Glide glide = result.glide();
        double density = result.densityKgPerM3();
        double flattest = task.airframe().liftCoefficient(density, glide.bestRatioAirspeedMPerS());
        double slowest = task.airframe().liftCoefficient(density, glide.leastSinkAirspeedMPerS());
        lift("f", "flattest glide", flattest, "sqrt(C_D0/K+C_L0^2)");
        double fast = glide.bestRatioAirspeedMPerS();
        String speed = "sqrt(2*W/(rho*S*C_f))";
        chain.step("V_f", "airspeed of the flattest glide", fast, "m/s", speed, ANDERSON);
        chain.step("Z", "best glide ratio", glide.bestRatio(), "1", "C_f/(C_D0+K*(C_f-C_L0)^2)", ANDERSON);
        lift("k", "least sink", slowest, "-C_L0+sqrt(4*C_L0^2+3*C_D0/K)");
        double slow = glide.leastSinkAirspeedMPerS();
        chain.step("V_k", "airspeed of least sink", slow, "m/s", "sqrt(2*W/(rho*S*C_k))", ANDERSON);
        chain.step("Y", "least sink", glide.leastSinkMPerS(), "m/s", "V_k*(C_D0+K*(C_k-C_L0)^2)/C_k", ANDERSON);
    }

    private void lift(String tag, String called, double value, String free) {
        String meaning = "lift coefficient of " + called + ", held to that of 1.2 stall speeds";
        String formula = "min(" + free + ",C_Lmax/1.2^2)";
        chain.step("C_" + tag, meaning, value, "1", formula, ANDERSON);
    }

    private void turn() {
        chain.given("n", "load factor of the turn", task.turn().loadFactor(), "1");
        double stall = result.stallSpeedTurningMPerS();
        chain.step("V_st", "stall speed in the turn", stall, "m/s", "V_s*sqrt(n)", ANDERSON);
        double airspeed = result.turnAirspeedMPerS();
        if (task.turnAirspeedMPerS().isPresent()) {
            chain.given("V_t", "airspeed of the turn", airspeed, "m/s");
        } else {
            chain.step("V_t", "airspeed of the turn", airspeed, "m/s", "1.3*V_st", PRACTICE);
        }
        result.turnRadiusM()
                .ifPresent(radius ->
                        chain.step("B", "radius of the turn", radius, "m", "V_t^2/(9.80665*sqrt(n^2-1))", ANDERSON));
    }
}
