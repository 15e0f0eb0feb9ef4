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

    private static final String ROUGHNESS =
            "classes of A. G. Davenport and J. Wieringa, course notes after R. B. Stull";
    private static final String TURBULENCE =
            "the request, or 1/ln(h/z0): H. A. Panofsky, J. A. Dutton, Atmospheric Turbulence, 1984 (from memory)";

    private final LaunchAndClimbTask task;
    private final LaunchAndClimbResult result;
    private final Chain chain = new Chain();

    private LaunchWorkings(LaunchAndClimbTask task, LaunchAndClimbResult result) {
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
    public static List<Working> of(LaunchAndClimbTask task, LaunchAndClimbResult result) {
        LaunchWorkings workings = new LaunchWorkings(task, result);
        workings.stall();
        workings.wind();
        workings.release();
        new LoadWorkings(task, result.launch(), workings.chain).write();
        workings.climb();
        workings.glide();
        workings.turn();
        return workings.chain.lines();
    }

    private void stall() {
        AircraftWorkings aircraft = new AircraftWorkings(chain, task.airframe(), task.air());
        aircraft.surroundings();
        aircraft.stall();
        double climb = result.climbSpeedMPerS();
        String margin = Chain.number(LaunchAndClimb.CLIMB_IN_STALL_SPEEDS) + "*V_s";
        chain.step("V_c", "climb speed", climb, "m/s", margin, PRACTICE);
        chain.step("E", "kinetic energy at the climb speed", result.kineticEnergyJ(), "J", "m*V_c^2/2", "mechanics");
    }

    private void wind() {
        LaunchWind wind = task.wind();
        double heightM = task.launch().releaseHeightM();
        double mean = result.launch().meanWindMPerS();
        chain.given("U", "wind as measured", wind.speedMPerS(), "m/s");
        boolean law = wind.speedMPerS() != 0
                && heightM != wind.heightM()
                && wind.holds(heightM)
                && wind.holds(wind.heightM());
        if (law) {
            chain.given("h_U", "height of that", wind.heightM(), "m");
            chain.given("h_0", "height of release", heightM, "m");
            chain.given("z_0", "roughness of the terrain", wind.terrain().roughnessM(), "m", ROUGHNESS);
            String profile = "U*ln(h_0/z_0)/ln(h_U/z_0)";
            chain.step("u", "mean wind at release", mean, "m/s", profile, ROUGHNESS);
        } else {
            String as = "as measured; a headwind counts as none where the law does not hold";
            chain.found("u", "mean wind at release", mean, "m/s", as, ROUGHNESS);
        }
        double spread = wind.spreadFraction(heightM);
        chain.given("J", "lull under the mean wind, share of it", spread, "1", TURBULENCE);
        String sign = mean < 0 ? "+" : "-";
        chain.step("w", "wind in a lull", result.launch().lullMPerS(), "m/s", "u*(1" + sign + "J)", TURBULENCE);
    }

    private void release() {
        LaunchFlight launch = result.launch();
        double angleRad = task.launch().angleRad();
        double speed = launch.releaseGroundSpeedMPerS();
        if (task.launch() instanceof Launch.Hand || task.launch() instanceof Launch.Catapult) {
            chain.given("V_g", "speed over the ground at release", speed, "m/s");
        } else {
            String how = "thrust or pull less drag and friction, integrated along the run";
            chain.found("V_g", "speed over the ground at release", speed, "m/s", how, PATH);
        }
        chain.given("g", "angle of release", Angle.degFromRad(angleRad), "°");
        chain.step(
                "V_0",
                "airspeed at release in a lull",
                launch.releaseAirspeedInLullMPerS(),
                "m/s",
                "sqrt(max(0,V_g*cos(g*pi/180)+w)^2+(V_g*sin(g*pi/180))^2)",
                "geometry");
        chain.step(
                "M",
                "over the stall speed",
                Share.percentFromFraction(launch.marginFraction()),
                "%",
                "100*(V_0/V_s-1)",
                Chain.ARITHMETIC);
        launch.groundRunM().ifPresent(run -> chain.found("X", "run", run, "m", "way until release", PATH));
        String sunk = "release height less the lowest point of the integrated path";
        chain.found("H", "height lost", launch.heightLostM(), "m", sunk, PATH);
        launch.timeToClimbSpeedS()
                .ifPresent(t -> chain.found(
                        "t",
                        "time to climb speed",
                        t,
                        "s",
                        "when the integrated path has V_c and does not sink",
                        PATH));
    }

    private void climb() {
        DragPolar polar = task.polar();
        double climb = result.climbSpeedMPerS();
        chain.given("C_D0", "minimum drag coefficient", polar.leastDragCoefficient(), "1");
        chain.given("C_L0", "lift there", polar.liftCoefficientAtLeastDrag(), "1");
        chain.given("b", "wing span", task.airframe().wingSpanM(), "m");
        double aspect = task.airframe().aspectRatio();
        double oswald = 1 / (Math.PI * aspect * polar.inducedFactor());
        chain.given("e", "Oswald's span efficiency", oswald, "1");
        double factor = polar.inducedFactor();
        chain.step("K", "induced-drag factor", factor, "1", "S/(pi*e*b^2)", ANDERSON);
        double q = LevelFlight.dynamicPressurePa(result.densityKgPerM3(), climb);
        chain.step("q", "dynamic pressure at V_c", q, "Pa", "rho*V_c^2/2", ANDERSON);
        double lift = task.airframe().liftCoefficient(result.densityKgPerM3(), climb);
        chain.step("C_L", "lift coefficient at V_c", lift, "1", "W/(q*S)", ANDERSON);
        double dragN = LaunchAndClimb.dragN(task, climb);
        chain.step("D", "drag at V_c", dragN, "N", "q*S*(C_D0+K*(C_L-C_L0)^2)", ANDERSON);
        double thrustN = task.thrust().thrustN(climb);
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
        lift("k", "minimum sink", slowest, "-C_L0+sqrt(4*C_L0^2+3*C_D0/K)");
        double slow = glide.leastSinkAirspeedMPerS();
        chain.step("V_k", "airspeed of minimum sink", slow, "m/s", "sqrt(2*W/(rho*S*C_k))", ANDERSON);
        chain.step("Y", "minimum sink", glide.leastSinkMPerS(), "m/s", "V_k*(C_D0+K*(C_k-C_L0)^2)/C_k", ANDERSON);
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
