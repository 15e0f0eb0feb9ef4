package trestle.propulsion;

import java.util.Arrays;
import java.util.Optional;
import trestle.numeric.EvenCubic;
import trestle.numeric.Guard;

/**
 * Efficiency of a drive over airspeed and thrust, each node worked out once, when it is first asked for: a search for
 * the best airspeed asks some thousand times along one curve, and each answer of the {@link PowerTrain} takes roots.
 *
 * <p>What is tabulated is the power from the supply, which has no gap where thrust ends as the
 * efficiency has, over airspeed and over the root of thrust by the greatest thrust there: rotation
 * goes about with that root, power with its cube. Not thread-safe; lives inside one call.
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

    private final PowerTrain train;
    private final double endMPerS;
    private final double[] greatestN = new double[AIRSPEEDS];
    private final double[][] powerW = new double[AIRSPEEDS][];

    private EfficiencyMap(PowerTrain train) {
        this.train = train;
        endMPerS = FlightSpeeds.zeroThrustMPerS(train, 1).orElse(0);
        Arrays.fill(greatestN, Double.NaN);
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
        double mostN = EvenCubic.at(this::greatestN, AIRSPEEDS, place);
        if (!(thrustN <= mostN)) {
            return 0;
        }
        double airW = thrustN * airspeedMPerS;
        double thrustPlace = (THRUSTS - 1) * Math.sqrt(thrustN / mostN);
        double takenW = EvenCubic.at(row -> EvenCubic.at(k -> powerW(row, k), THRUSTS, thrustPlace), AIRSPEEDS, place);
        return airW / Math.max(airW, takenW);
    }

    /**
     * Thrust at full throttle.
     *
     * @param airspeedMPerS airspeed, m/s, 0 or more
     * @return thrust of all motors, N; below 0 where the propellers brake, 0 where the drive has no state
     */
    public double fullThrustN(double airspeedMPerS) {
        return airspeedMPerS < endMPerS
                ? EvenCubic.at(this::greatestN, AIRSPEEDS, (AIRSPEEDS - 1) * airspeedMPerS / endMPerS)
                : train.thrustN(airspeedMPerS).orElse(0);
    }

    private double airspeedMPerS(int row) {
        return endMPerS * row / (AIRSPEEDS - 1);
    }

    private double greatestN(int row) {
        if (Double.isNaN(greatestN[row])) {
            Optional<OperatingPoint> full = train.atFullThrottle(airspeedMPerS(row));
            powerW[row] = new double[THRUSTS];
            if (full.isPresent()) {
                Arrays.fill(powerW[row], Double.NaN);
                powerW[row][THRUSTS - 1] = full.get().electricalPowerW();
            }
            greatestN[row] = Math.max(0, full.map(OperatingPoint::thrustN).orElse(0.0));
        }
        return greatestN[row];
    }

    private double powerW(int row, int k) {
        double mostN = greatestN(row);
        if (Double.isNaN(powerW[row][k])) {
            double root = (double) k / (THRUSTS - 1);
            double thrustN = mostN * Math.max(LEAST_THRUST_RATIO, root * root);
            double fullW = powerW[row][THRUSTS - 1];
            powerW[row][k] = thrustN == 0
                    ? fullW
                    : train.holding(thrustN, airspeedMPerS(row))
                            .map(OperatingPoint::electricalPowerW)
                            .orElse(fullW);
        }
        return powerW[row][k];
    }
}
