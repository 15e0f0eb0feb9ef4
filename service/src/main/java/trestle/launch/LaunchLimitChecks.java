package trestle.launch;

import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Mass;

/** The checks of what a launch does to the aircraft, to its hook and to whoever throws it. */
final class LaunchLimitChecks {
    /** What an airframe is good for where nobody has said: common practice, no source. */
    private static final double USUAL_LOAD_FACTOR = 5;

    /** The same in a hand that holds it: common practice, no source. */
    private static final double USUAL_LOAD_FACTOR_OF_A_THROW = 3;

    private static final double FAR_BEYOND = 2;

    /** A cord with more than this maims: common practice, no source. */
    private static final double HIGH_CORD_ENERGY_J = 1000;

    /** A release faster than this many stall speeds helps nobody: common practice, no source. */
    private static final double FAST_IN_STALL_SPEEDS = 2;

    /** Throws: 10 m/s at 5 kg, 8 m/s at 10 kg at best; common practice, no source. */
    private static final double LIGHT_KG = 5;

    private static final double LIGHT_THROW_M_PER_S = 10;
    private static final double HEAVY_KG = 10;
    private static final double HEAVY_THROW_M_PER_S = 8;

    private final LaunchAndClimbTask task;
    private final LaunchAndClimbResult result;
    private final LaunchLoads loads;

    private LaunchLimitChecks(LaunchAndClimbTask task, LaunchAndClimbResult result) {
        this.task = task;
        this.result = result;
        this.loads = result.launch().loads();
    }

    static void judge(LaunchAndClimbTask task, LaunchAndClimbResult result, Judge judge) {
        LaunchLimitChecks checks = new LaunchLimitChecks(task, result);
        Subject release = Subject.of(LaunchPart.RELEASE_SPEED);
        judge.essential("launch-acceleration", "peak acceleration of the launch", release, checks::acceleration);
        if (checks.loads.hookForceN().isPresent()) {
            judge.essential("hook-force", "force on the hook", release, checks::hook);
        }
        if (checks.loads.cordEnergyJ().isPresent()) {
            judge.check("cord-energy", "energy in the stretched cord", release, checks::cord);
        }
        judge.check("release-speed", "airspeed at release against its maximum", release, checks::fast);
        if (task.launch() instanceof Launch.Hand hand) {
            judge.check("throwing-speed", "speed of the throw", release, trial -> checks.speed(trial, hand));
            judge.check("throwing-mass", "mass to throw", Subject.of(LaunchPart.TAKEOFF_MASS), checks::mass);
        }
    }

    private void acceleration(Trial trial) {
        boolean thrown = task.launch() instanceof Launch.Hand;
        double usual = thrown ? USUAL_LOAD_FACTOR_OF_A_THROW : USUAL_LOAD_FACTOR;
        OptionalDouble given = task.limits().maxLoadFactor();
        Basis basis = given.isPresent() ? Basis.REQUEST : Basis.COMMON_PRACTICE;
        double limit = given.orElse(usual);
        double peak = loads.peakLoadFactor();
        String sentence = "The launch pulls %.1f g at its peak, above %.1f g%s: %s.";
        String from = given.isPresent() ? "" : " (common practice)";
        String remedy = Remedy.forLoadFactor(task, limit);
        // A throw that nobody throws is one cause, and is said of its speed.
        boolean unthrown = task.launch() instanceof Launch.Hand hand && hand.releaseSpeedMPerS() > armMPerS();
        trial.of(peak, "g")
                .atMost(limit, basis)
                .stopIf(peak > FAR_BEYOND * limit, "launch-acceleration-high", sentence, peak, limit, from, remedy)
                .asSaid(peak > limit && unthrown, Severity.ATTENTION)
                .attention("launch-acceleration-high", sentence, peak, limit, from, remedy);
    }

    private void hook(Trial trial) {
        double forceN = loads.hookForceN().orElseThrow();
        trial.of(forceN, "N");
        OptionalDouble limit = task.limits().maxHookForceN();
        if (limit.isEmpty()) {
            trial.notJudged(Subject.of(LaunchPart.MAX_HOOK_FORCE));
            return;
        }
        trial.atMost(limit.getAsDouble(), Basis.REQUEST)
                .stop(
                        "hook-force-high",
                        "The hook takes %.0f N at the peak of the pull and is good for %.0f N: %s.",
                        forceN,
                        limit.getAsDouble(),
                        Remedy.forHookForce(task, limit.getAsDouble()));
    }

    private void cord(Trial trial) {
        double energyJ = loads.cordEnergyJ().orElseThrow();
        trial.of(energyJ, "J")
                .atMost(HIGH_CORD_ENERGY_J, Basis.COMMON_PRACTICE)
                .attention(
                        "cord-energy-high",
                        "The stretched cord holds %.0f J, above %.0f J (common practice): keep everyone out of its line,"
                                + " tether the hook, and stretch it no more than the launch needs.",
                        energyJ,
                        HIGH_CORD_ENERGY_J);
    }

    private void fast(Trial trial) {
        double stall = result.stallSpeedMPerS();
        OptionalDouble neverExceed = task.limits().neverExceedMPerS();
        // Without that airspeed it is the launch that is judged, not a strong wind.
        double released = neverExceed.isPresent()
                ? result.launch().releaseAirspeedMPerS()
                : result.launch().stillAirspeedMPerS();
        trial.of(released, "m/s");
        if (neverExceed.isPresent()) {
            trial.atMost(neverExceed.getAsDouble(), Basis.REQUEST)
                    .stop(
                            "launch-too-fast",
                            "It is released at an airspeed of %.1f m/s, above the %.1f m/s that it must never exceed: %s.",
                            released,
                            neverExceed.getAsDouble(),
                            Remedy.enough(task, result.launch().needed()));
            return;
        }
        trial.atMost(FAST_IN_STALL_SPEEDS * stall, Basis.COMMON_PRACTICE)
                .attention(
                        "launch-too-fast",
                        "It is released at an airspeed of %.1f m/s, above twice the stall speed, %.1f m/s (common"
                                + " practice): %s, or give never_exceed_airspeed_m_per_s.",
                        released,
                        FAST_IN_STALL_SPEEDS * stall,
                        Remedy.enough(task, result.launch().needed()));
    }

    private void speed(Trial trial, Launch.Hand hand) {
        double armMPerS = armMPerS();
        trial.of(hand.releaseSpeedMPerS(), "m/s")
                .atMost(armMPerS, Basis.COMMON_PRACTICE)
                .attention(
                        "throw-too-fast",
                        "A throw of %.1f m/s is more than the %.1f m/s that a person can usually give this mass (common"
                                + " practice): measure yours, or use a bungee or a dolly.",
                        hand.releaseSpeedMPerS(),
                        armMPerS);
    }

    private double armMPerS() {
        double massKg = task.airframe().massKg();
        double slope = (HEAVY_THROW_M_PER_S - LIGHT_THROW_M_PER_S) / (HEAVY_KG - LIGHT_KG);
        return LIGHT_THROW_M_PER_S + slope * (Math.max(LIGHT_KG, Math.min(HEAVY_KG, massKg)) - LIGHT_KG);
    }

    private void mass(Trial trial) {
        double massG = Mass.gFromKg(task.airframe().massKg());
        double heavyG = Mass.gFromKg(HEAVY_KG);
        trial.of(massG, "g")
                .atMost(heavyG, Basis.COMMON_PRACTICE)
                .attention(
                        "heavy-for-hand",
                        "%.0f g is more than the %.0f g that a person can usually throw (common practice): use a dolly or"
                                + " a bungee.",
                        massG,
                        heavyG);
    }
}
