package trestle.propulsion;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import trestle.numeric.Root;

/** Speeds at which full throttle meets something. */
final class FlightSpeeds {
    private static final double ACCURACY_M_PER_S = 1e-6;

    /** Steps from the fastest speed down, in search of the last one that thrust still holds. */
    private static final int STEPS = 40;

    private FlightSpeeds() {}

    /**
     * Airspeed at which thrust ends.
     *
     * @param train the drive
     * @param throttleFraction throttle, above 0 to 1
     * @return airspeed, m/s; empty where there is no thrust even at rest
     */
    static OptionalDouble zeroThrustMPerS(PowerTrain train, double throttleFraction) {
        return Root.between(
                v -> train.thrustN(throttleFraction, v).orElse(-1), 0, train.greatestAirspeedMPerS(), ACCURACY_M_PER_S);
    }

    /**
     * Fastest level flight: the last airspeed at which a throttle still holds the drag.
     *
     * <p>A drive that holds little more than cruise may do so between two steps: the cruise
     * airspeed is looked at too.
     *
     * @param train the drive
     * @param cruise cruise airspeed, and drag over airspeed
     * @param throttleFraction throttle, above 0 to 1
     * @param zeroThrustMPerS airspeed at which its thrust ends, m/s
     * @return airspeed, m/s; empty where thrust never reaches drag
     */
    static OptionalDouble topMPerS(
            PowerTrain train, CruiseDemand cruise, double throttleFraction, double zeroThrustMPerS) {
        DragCurve drag = cruise.drag();
        double fast = zeroThrustMPerS;
        double[] looked = lookedAtMPerS(zeroThrustMPerS, cruise.airspeedMPerS());
        for (int i = looked.length - 1; i >= 0; i--) {
            double slow = looked[i];
            if (excessN(train, throttleFraction, drag, slow) >= 0) {
                return Root.between(v -> excessN(train, throttleFraction, drag, v), slow, fast, ACCURACY_M_PER_S);
            }
            fast = slow;
        }
        return OptionalDouble.empty();
    }

    private static double[] lookedAtMPerS(double zeroThrustMPerS, double cruiseMPerS) {
        return DoubleStream.concat(
                        IntStream.range(1, STEPS).mapToDouble(i -> zeroThrustMPerS * i / STEPS),
                        DoubleStream.of(cruiseMPerS).filter(v -> v < zeroThrustMPerS))
                .sorted()
                .toArray();
    }

    private static double excessN(PowerTrain train, double throttleFraction, DragCurve drag, double airspeedMPerS) {
        double dragN = drag.dragN(airspeedMPerS);
        return train.thrustN(throttleFraction, airspeedMPerS).orElse(-dragN) - dragN;
    }
}
