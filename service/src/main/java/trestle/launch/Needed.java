package trestle.launch;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trestle.numeric.Root;

/**
 * The least that leaves 10 % over the stall at release, in a lull: each alone, the rest as asked.
 *
 * @param releaseSpeedMPerS speed over the ground by hand or catapult, lift-off airspeed of a dolly, m/s; empty for a
 *     cord
 * @param stretchM stretch of a cord, m; empty without one, or where no stretch does
 * @param windMPerS mean wind at the height of release, m/s; empty where none helps
 */
public record Needed(OptionalDouble releaseSpeedMPerS, OptionalDouble stretchM, OptionalDouble windMPerS) {
    /** Over the stall at release: common practice, no source. */
    static final double USUAL_MARGIN_FRACTION = 0.1;

    /** Longest stretch that is looked at, m. */
    private static final double LONGEST_STRETCH_M = 100;

    private static final double SHORTEST_STRETCH_M = 0.05;

    /** Strongest wind that is looked at, m/s: nobody launches in more. */
    private static final double STRONGEST_WIND_M_PER_S = 30;

    private static final double ACCURACY = 1e-6;

    static Needed of(LaunchAndClimbTask task, double stallMPerS) {
        double lullMPerS = task.wind().lullMPerS(task.launch().releaseHeightM());
        return of(task, stallMPerS, new GroundRun(task, lullMPerS).release());
    }

    static Needed of(LaunchAndClimbTask task, double stallMPerS, Release inLull) {
        double wantedMPerS = (1 + USUAL_MARGIN_FRACTION) * stallMPerS;
        double lullMPerS = task.wind().lullMPerS(task.launch().releaseHeightM());
        double shortMPerS = wantedMPerS - inLull.airspeedMPerS();
        Launch launch = task.launch();
        if (launch instanceof Launch.Bungee bungee) {
            return new Needed(
                    OptionalDouble.empty(),
                    least(
                            stretch -> released(task.with(bungee.withStretchM(stretch)), lullMPerS) - wantedMPerS,
                            // A cord's speed grows with its stretch.
                            bungee.stretchM() * (1 + shortMPerS / Math.max(1, inLull.groundSpeedMPerS())),
                            SHORTEST_STRETCH_M,
                            LONGEST_STRETCH_M),
                    wind(task, wantedMPerS, lullMPerS + shortMPerS));
        }
        if (launch instanceof Launch.Dolly) {
            return new Needed(OptionalDouble.of(wantedMPerS), OptionalDouble.empty(), OptionalDouble.empty());
        }
        return new Needed(
                speed(launch, lullMPerS, wantedMPerS),
                OptionalDouble.empty(),
                wind(task, wantedMPerS, lullMPerS + shortMPerS));
    }

    private static OptionalDouble speed(Launch launch, double lullMPerS, double wantedMPerS) {
        double angleRad = launch.angleRad();
        double enoughMPerS = (wantedMPerS + Math.abs(lullMPerS)) / Math.cos(angleRad);
        return least(v -> airspeed(v, angleRad, lullMPerS) - wantedMPerS, wantedMPerS, 0, enoughMPerS);
    }

    private static double airspeed(double groundSpeedMPerS, double angleRad, double windMPerS) {
        return Release.along(true, groundSpeedMPerS, angleRad, windMPerS, OptionalDouble.empty(), 0)
                .airspeedMPerS();
    }

    /** The lull that is needed, and the mean wind that has it. */
    private static OptionalDouble wind(LaunchAndClimbTask task, double wantedMPerS, double guessMPerS) {
        double spread = task.wind().spreadFraction(task.launch().releaseHeightM());
        OptionalDouble lull = least(w -> released(task, w) - wantedMPerS, guessMPerS, 0, STRONGEST_WIND_M_PER_S);
        return lull.isEmpty() || spread >= 1
                ? OptionalDouble.empty()
                : OptionalDouble.of(lull.getAsDouble() / (1 - spread));
    }

    private static double released(LaunchAndClimbTask task, double windMPerS) {
        Release release = new GroundRun(task, windMPerS).release();
        return release.left() ? release.airspeedMPerS() : 0;
    }

    /** The least argument at which a rising function is not below 0. */
    private static OptionalDouble least(DoubleUnaryOperator over, double guess, double from, double to) {
        OptionalDouble root = Root.near(over, guess, from, to, ACCURACY);
        return root.isEmpty() && over.applyAsDouble(from) >= 0 ? OptionalDouble.of(from) : root;
    }
}
