package trestle.launch;

import trestle.finding.Chain;

/**
 * How the loads of a launch were reached.
 *
 * @param task what was asked
 * @param launch what came of it
 * @param chain where to write; it knows the weight {@code W}, the speed {@code V_g} and the angle {@code g}
 */
record LoadWorkings(LaunchAndClimbTask task, LaunchFlight launch, Chain chain) {
    private static final String MECHANICS = "mechanics";
    private static final String PRACTICE = "common practice, no source";

    void write() {
        LaunchLoads loads = launch.loads();
        if (task.launch() instanceof Launch.Hand) {
            chain.given("s", "way of the hand", LaunchLoads.STROKE_M, "m", PRACTICE);
            even(loads, "s");
            peak(loads, "n_m");
        } else if (task.launch() instanceof Launch.Catapult catapult) {
            chain.given("s", "length of the rail", catapult.railLengthM(), "m");
            even(loads, "s");
            peak(loads, Chain.number(LaunchLoads.CATAPULT_PEAK_RATIO) + "*n_m");
            hook(loads, "W*(n_p+sin(g*pi/180))");
        } else {
            double acceleration = launch.meanAccelerationMPerS2().orElse(0);
            chain.found("a_m", "mean acceleration", acceleration, "m/s²", "V_g over the time of the run", MECHANICS);
            chain.step("n_m", "mean load factor", loads.meanLoadFactor(), "1", "a_m/9.80665", MECHANICS);
            pulled(loads);
        }
        needed();
    }

    private void pulled(LaunchLoads loads) {
        if (task.launch() instanceof Launch.Bungee bungee) {
            chain.given("k_c", "stiffness of the cord", bungee.stiffnessNPerM(), "N/m");
            chain.given("x_c", "stretch of the cord", bungee.stretchM(), "m");
            hook(loads, "k_c*x_c");
            peak(loads, "F_h/W");
            double energyJ = loads.cordEnergyJ().orElseThrow();
            chain.step("E_c", "energy in the cord", energyJ, "J", "k_c*x_c^2/2", MECHANICS);
        } else if (task.launch() instanceof Launch.Dolly dolly) {
            String thrust = "the request's thrust curve or static thrust, or the drive's";
            chain.given("F_0", "thrust at rest", task.thrust().thrustN(0), "N", thrust);
            chain.given("m_d", "mass of the dolly", dolly.dollyMassKg(), "kg");
            chain.given("mu", "rolling resistance", dolly.rollingResistance(), "1");
            peak(loads, "max(n_m,F_0/(W+m_d*9.80665)-mu)");
        }
    }

    private void even(LaunchLoads loads, String way) {
        String formula = "V_g^2/(2*" + way + "*9.80665)";
        chain.step("n_m", "mean load factor", loads.meanLoadFactor(), "1", formula, MECHANICS);
    }

    private void peak(LaunchLoads loads, String formula) {
        chain.step("n_p", "peak load factor", loads.peakLoadFactor(), "1", formula, MECHANICS + "; " + PRACTICE);
    }

    private void hook(LaunchLoads loads, String formula) {
        chain.step("F_h", "force on the hook", loads.hookForceN().orElseThrow(), "N", formula, MECHANICS);
    }

    private void needed() {
        String how = "minimum that has V_0 at 1.1 stall speeds, the rest as asked";
        String search = "bracketed root of the same run; the margin is common practice, no source";
        Needed needed = launch.needed();
        needed.releaseSpeedMPerS().ifPresent(v -> chain.found("V_n", "speed needed at release", v, "m/s", how, search));
        needed.stretchM().ifPresent(x -> chain.found("x_n", "stretch needed", x, "m", how, search));
        needed.windMPerS().ifPresent(u -> chain.found("u_n", "mean wind needed", u, "m/s", how, search));
    }
}
