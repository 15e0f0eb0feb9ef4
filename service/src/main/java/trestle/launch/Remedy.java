package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import trestle.finding.Judge;

/** What to change to what, in the words of each kind of launch. */
final class Remedy {
    /** A wind above this is no advice. */
    private static final double STRONG_WIND_M_PER_S = 12;

    /** Nobody throws an aircraft faster: common practice, no source. */
    private static final double FASTEST_THROW_M_PER_S = 12;

    private Remedy() {}

    /** How to leave 10 % over the stall, as the end of a sentence. */
    static String forSpeed(LaunchAndClimbTask task, Needed needed) {
        String faster = faster(task.launch(), needed);
        double heightM = task.launch().releaseHeightM();
        return needed.windMPerS().stream()
                .filter(wind -> wind <= STRONG_WIND_M_PER_S)
                .mapToObj(wind -> faster
                        + Judge.text(", or wait for %.1f m/s of wind at %.1f m above the ground", up(wind), heightM))
                .findFirst()
                .orElse(faster);
    }

    private static String faster(Launch launch, Needed needed) {
        if (launch instanceof Launch.Bungee) {
            return needed.stretchM().isPresent()
                    ? Judge.text(
                            "stretch the cord by %.1f m", up(needed.stretchM().getAsDouble()))
                    : "take a stronger cord";
        }
        String verb = "release";
        if (launch instanceof Launch.Hand) {
            boolean throwable = needed.releaseSpeedMPerS().orElse(0) <= FASTEST_THROW_M_PER_S;
            verb = throwable ? "throw" : "launch it by bungee or dolly";
        } else if (launch instanceof Launch.Dolly) {
            verb = "let it leave the dolly";
        }
        return needed.releaseSpeedMPerS().isPresent()
                ? verb
                        + Judge.text(
                                " at %.1f m/s", up(needed.releaseSpeedMPerS().getAsDouble()))
                : "launch faster";
    }

    /** What does without any wind, as the end of a sentence. */
    static String inStillAir(LaunchAndClimbTask task, double stallMPerS) {
        return faster(task.launch(), Needed.of(task.with(LaunchWind.STILL), stallMPerS));
    }

    /** The least that does, for a launch that does too much. */
    static String enough(LaunchAndClimbTask task, Needed needed) {
        return faster(task.launch(), needed) + ", which leaves 10 % over the stall";
    }

    /** How to keep to a force on the hook, as the end of a sentence. */
    static String forHookForce(LaunchAndClimbTask task, double forceN) {
        if (task.launch() instanceof Launch.Bungee bungee) {
            return Judge.text("stretch the cord by no more than %.1f m", down(forceN / bungee.stiffnessNPerM()));
        }
        double weightN = task.airframe().massKg() * GRAVITY_M_PER_S2;
        double loadFactor = forceN / weightN - Math.sin(task.launch().angleRad());
        return loadFactor > 0 ? forLoadFactor(task, loadFactor) : "take a stronger hook";
    }

    /** How to keep to a load factor, as the end of a sentence. */
    static String forLoadFactor(LaunchAndClimbTask task, double loadFactor) {
        Launch launch = task.launch();
        double limitMPerS2 = loadFactor * GRAVITY_M_PER_S2;
        if (launch instanceof Launch.Bungee bungee) {
            double stretchM = task.airframe().massKg() * limitMPerS2 / bungee.stiffnessNPerM();
            return Judge.text("stretch the cord by no more than %.1f m", down(stretchM));
        }
        if (launch instanceof Launch.Catapult catapult) {
            double evenMPerS2 = limitMPerS2 / LaunchLoads.CATAPULT_PEAK_RATIO;
            double v = catapult.releaseSpeedMPerS();
            return Judge.text(
                    "take %.1f m of rail, or release at %.1f m/s",
                    up(v * v / (2 * evenMPerS2)), down(Math.sqrt(2 * evenMPerS2 * catapult.railLengthM())));
        }
        if (launch instanceof Launch.Hand) {
            return Judge.text(
                    "throw at no more than %.1f m/s", down(Math.sqrt(2 * limitMPerS2 * LaunchLoads.STROKE_M)));
        }
        return "begin the roll on less power";
    }

    /** To a tenth, so that what is printed is enough. */
    private static double up(double number) {
        return Math.ceil(10 * number - 1e-6) / 10;
    }

    private static double down(double number) {
        return Math.floor(10 * number + 1e-6) / 10;
    }
}
