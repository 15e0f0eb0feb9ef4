package trestle.launch;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * The wind that a launch is judged in, as it was measured or is known from the flight.
 *
 * @param speedMPerS mean wind against the launch at its height, m/s; below 0 for a tailwind
 * @param heightM height that it blows at, m
 * @param terrain the ground that it has blown over
 * @param gustSpreadFraction how far the lulls lie below the mean, as a share of it; empty for what turbulence makes
 * @param fromFlight whether it is the flight's headwind, and not one for the launch
 */
public record LaunchWind(
        double speedMPerS, double heightM, Terrain terrain, OptionalDouble gustSpreadFraction, boolean fromFlight) {
    /** No wind. */
    public static final LaunchWind STILL = new LaunchWind(0, 10, Terrain.OPEN, OptionalDouble.empty(), false);

    /** The logarithmic law means nothing among what makes the roughness, [4]. */
    private static final double LOWEST_IN_ROUGHNESS = 10;

    /** Above this the wind knows little of the ground below. */
    private static final double HIGHEST_M = 150;

    /** Checks the physics. */
    public LaunchWind {
        Guard.within("speedMPerS", speedMPerS, -60, 60);
        Guard.positive("heightM", heightM);
        Guard.present("terrain", terrain);
        gustSpreadFraction.ifPresent(share -> Guard.within("gustSpreadFraction", share, 0, 1));
    }

    /**
     * The mean wind at another height. Where the law does not hold, no headwind is credited and a tailwind counts
     * whole.
     *
     * @param releaseHeightM height, m
     * @return mean wind, m/s
     */
    public double meanMPerS(double releaseHeightM) {
        if (speedMPerS == 0 || releaseHeightM == heightM) {
            return speedMPerS;
        }
        if (!holds(releaseHeightM) || !holds(heightM)) {
            return Math.min(0, speedMPerS);
        }
        return speedMPerS * WindProfile.logarithmicShare(releaseHeightM, heightM, terrain.roughnessM());
    }

    /**
     * The wind in a lull: what is left of a headwind, or a tailwind with its gust.
     *
     * @param releaseHeightM height, m
     * @return wind, m/s, not above the mean
     */
    public double lullMPerS(double releaseHeightM) {
        double meanMPerS = meanMPerS(releaseHeightM);
        return meanMPerS - Math.abs(meanMPerS) * spreadFraction(releaseHeightM);
    }

    /**
     * How far a lull lies below the mean, as a share of it.
     *
     * @param releaseHeightM height, m
     * @return share, 0 to 1; 1 where the law does not hold
     */
    public double spreadFraction(double releaseHeightM) {
        double byTurbulence =
                holds(releaseHeightM) ? WindProfile.turbulenceIntensity(releaseHeightM, terrain.roughnessM()) : 1;
        return gustSpreadFraction.orElse(byTurbulence);
    }

    /**
     * Whether the logarithmic law holds at a height.
     *
     * @param atM height, m
     * @return true inside its range
     */
    public boolean holds(double atM) {
        return atM >= LOWEST_IN_ROUGHNESS * terrain.roughnessM() && atM <= HIGHEST_M;
    }
}
