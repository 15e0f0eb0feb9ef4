package trestle.propulsion;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Chain;
import trestle.finding.Working;
import trestle.units.Rotation;

/** How a match was reached, in SI: the drive at rest, in cruise, and its speeds. */
public final class PropulsionWorkings {
    private static final String SPEEDS = "bracketed root over airspeed of full-throttle states";

    private final PropulsionTask task;
    private final DrivePerformance drive;
    private final Chain chain = new Chain();

    private PropulsionWorkings(PropulsionTask task, DrivePerformance drive) {
        this.task = task;
        this.drive = drive;
    }

    /**
     * The workings of a match.
     *
     * @param task what was asked
     * @param match what came of it
     * @return lines in order of computation
     */
    public static List<Working> of(PropulsionTask task, PropulsionMatch match) {
        PropulsionWorkings workings = new PropulsionWorkings(task, match.performance());
        workings.parts();
        workings.points();
        workings.speeds();
        workings.limits(match);
        return workings.chain.lines();
    }

    private void parts() {
        PropulsionSystem system = task.system();
        Motor motor = system.motor();
        String air = "the request, or the U.S. Standard Atmosphere, 1976, at its altitude";
        double density = task.air().densityKgPerM3();
        chain.given("T_air", "air temperature", task.air().temperatureK(), "K", air);
        chain.given("p", "air pressure", task.air().pressurePa(), "Pa", air);
        String gas = "U.S. Standard Atmosphere, 1976, equation 42";
        chain.step("rho", "air density", density, "kg/m³", "p*28.9644/(8314.32*T_air)", gas);
        chain.given("N", "motors", system.motorCount(), "1");
        chain.given("D", "propeller diameter", system.propeller().diameterM(), "m");
        chain.given("H", "propeller pitch", system.propeller().pitchM(), "m");
        double constant = motor.speedConstantRadPerSPerV();
        chain.given("k_v", "speed constant", Rotation.rpmFromRadPerS(constant), "rpm/V");
        chain.step("K", "speed constant", constant, "rad/s/V", "k_v*2*pi/60", Chain.ARITHMETIC);
        chain.given("R_m", "winding resistance", motor.resistanceOhm(), "Ω");
        chain.given("I_0", "no-load current", motor.noLoadCurrentA(), "A");
        motor.noLoadVoltageV().ifPresent(v -> chain.given("V_n", "its voltage", v, "V"));
        chain.given("R_c", "controller's switches", system.controller().resistanceOhm(), "Ω");
        chain.given("V_r", "supply at rest", system.supply().restVoltageV(), "V");
    }

    private void points() {
        String full = "bracketed root: the motor's voltage at full throttle is what the supply has";
        drive.atRest().ifPresent(p -> new PointWorkings(chain, task, p, "s", " at rest").write(full));
        if (drive.cruise().isPresent()) {
            double neededN = task.cruise().orElseThrow().thrustN();
            String needed = "the request's, or drag at the cruise airspeed";
            chain.given("F", "thrust needed in cruise", neededN, "N", needed);
            String held = "bracketed root: thrust is F";
            OperatingPoint point = drive.cruise().get();
            new PointWorkings(chain, task, point, "c", " in cruise").write(held);
        }
    }

    private void speeds() {
        if (drive.thrustToWeightRatio().isPresent()) {
            double massKg = task.takeoffMassKg().orElseThrow();
            chain.given("m", "take-off mass", massKg, "kg");
            String ratio = "T_s/(m*" + Chain.number(StandardAtmosphere.GRAVITY_M_PER_S2) + ")";
            double value = drive.thrustToWeightRatio().getAsDouble();
            chain.step("TW", "static thrust over weight", value, "1", ratio, Chain.ARITHMETIC);
        }
        drive.pitchSpeedMPerS()
                .ifPresent(v -> chain.step("V_p", "pitch speed", v, "m/s", "n_s*H", "common practice, no source"));
        found(drive.zeroThrustSpeedMPerS(), "V_z", "airspeed at which thrust ends", "thrust is 0");
        found(drive.topSpeedMPerS(), "V_t", "top speed", "thrust is drag, from the fast side");
        drive.tipMachRatio()
                .ifPresent(mach -> chain.found(
                        "M",
                        "maximum Mach number of the tips",
                        mach,
                        "1",
                        "maximum of sqrt((pi*n*D)^2+V^2)/a over all full-throttle states",
                        "geometry"));
    }

    private void limits(PropulsionMatch match) {
        String how = "root over throttle: what the rating limits is at its limit, at rest, at the climb speed or at top"
                + " speed; 1 where full throttle keeps it";
        match.limits()
                .forEach(limit -> chain.found(
                        "d_" + limit.rating().name().toLowerCase(Locale.ROOT),
                        "highest throttle for the " + limit.rating().label(),
                        limit.throttleFraction(),
                        "1",
                        how,
                        "search, bracketed root"));
    }

    private void found(OptionalDouble speedMPerS, String symbol, String meaning, String how) {
        speedMPerS.ifPresent(v -> chain.found(symbol, meaning, v, "m/s", how, SPEEDS));
    }
}
