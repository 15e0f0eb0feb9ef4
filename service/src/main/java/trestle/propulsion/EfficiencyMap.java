package trestle.propulsion;

import trestle.numeric.EvenCubic;
import trestle.numeric.Guard;

/**
 * Efficiency of a drive over airspeed and thrust, worked out once: a search for the best airspeed
 * asks some thousand times, and each answer of the {@link PowerTrain} takes roots.
 *
 * <p>What is tabulated is the power from the supply, which has no gap where thrust ends as the
 * efficiency has, over airspeed and over the root of thrust by the greatest thrust there: rotation
 * goes about with that root, power with its cube. Instances do not change and may be shared.
 */
public final class EfficiencyMap {
    /**
     * Grid in airspeed and in the root of thrust: power within 0.25 %, near full throttle within
     * 0.7 %, see the test.
     */
    private static final int AIRSPEEDS = 25;

    private static final int THRUSTS = 17;

    /** Next to no thrust, over the greatest. */
    private static final double LEAST_THRUST_RATIO = 1e-4;

    private final double endMPerS;
    private final double[] greatestN = new double[AIRSPEEDS];
    private final double[][] powerW = new double[AIRSPEEDS][THRUSTS];

    private EfficiencyMap(PowerTrain train) {
        endMPerS = FlightSpeeds.zeroThrustMPerS(train, 1).orElse(0);
        for (int i = 0; i < AIRSPEEDS; i++) {
            int row = i;
            train.atFullThrottle(endMPerS * i / (AIRSPEEDS - 1)).ifPresent(full -> fill(train, full, row));
        }
    }

    /**
     * Works out the map of a drive.
     *
     * @param train the drive in its air
     * @return its map
     */
    public static EfficiencyMap of(PowerTrain train) {
        return new EfficiencyMap(Guard.present("train", train));
    }

    private void fill(PowerTrain train, OperatingPoint full, int row) {
        greatestN[row] = Math.max(0, full.thrustN());
        for (int k = 0; k < THRUSTS; k++) {
            double root = (double) k / (THRUSTS - 1);
            double thrustN = greatestN[row] * Math.max(LEAST_THRUST_RATIO, root * root);
            powerW[row][k] = k == THRUSTS - 1 || thrustN == 0
                    ? full.electricalPowerW()
                    : train.holding(thrustN, full.airspeedMPerS()).orElse(full).electricalPowerW();
        }
    }

    /**
     * Thrust times airspeed over the power from the supply.
     *
     * @param airspeedMPerS airspeed, m/s, 0 or more
     * @param thrustN thrust of all motors, N, above 0
     * @return efficiency, 0 to 1; 0 where full throttle gives less thrust
     */
    public double total(double airspeedMPerS, double thrustN) {
        if (airspeedMPerS >= endMPerS) {
            return 0;
        }
        double place = (AIRSPEEDS - 1) * airspeedMPerS / endMPerS;
        double mostN = EvenCubic.at(greatestN, place);
        if (!(thrustN <= mostN)) {
            return 0;
        }
        double airW = thrustN * airspeedMPerS;
        return airW / Math.max(airW, powerW(place, Math.sqrt(thrustN / mostN)));
    }

    private double powerW(double airspeedPlace, double thrustRoot) {
        double place = (THRUSTS - 1) * thrustRoot;
        int row = EvenCubic.node(AIRSPEEDS, airspeedPlace);
        double from = EvenCubic.at(powerW[row], place);
        double to = EvenCubic.at(powerW[row + 1], place);
        double before = row > 0 ? EvenCubic.at(powerW[row - 1], place) : 2 * from - to;
        double after = row < AIRSPEEDS - 2 ? EvenCubic.at(powerW[row + 2], place) : 2 * to - from;
        return EvenCubic.between(before, from, to, after, airspeedPlace - row);
    }
}
