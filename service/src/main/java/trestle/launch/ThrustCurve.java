package trestle.launch;

import java.util.List;
import trestle.numeric.ImpossibleValue;

/**
 * Thrust by straight lines between points. Before the first point its value is held; beyond the
 * last the last line goes on if it falls, down to nothing, and is held otherwise.
 *
 * @param points at least one, airspeeds rising
 */
public record ThrustCurve(List<ThrustPoint> points) implements Thrust {
    /** Checks the order. */
    public ThrustCurve {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new ImpossibleValue("points", "a thrust curve needs at least one point");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).airspeedMPerS() > points.get(i - 1).airspeedMPerS())) {
                throw new ImpossibleValue(
                        "points",
                        "the airspeeds of a thrust curve must rise: "
                                + points.get(i - 1).airspeedMPerS()
                                + ", "
                                + points.get(i).airspeedMPerS()
                                + " m/s");
            }
        }
    }

    @Override
    public double thrustN(double airspeedMPerS) {
        int last = points.size() - 1;
        if (last == 0 || airspeedMPerS <= points.get(0).airspeedMPerS()) {
            return points.get(0).thrustN();
        }
        int i = 0;
        while (i < last - 1 && airspeedMPerS > points.get(i + 1).airspeedMPerS()) {
            i++;
        }
        ThrustPoint below = points.get(i);
        ThrustPoint above = points.get(i + 1);
        double slope = (above.thrustN() - below.thrustN()) / (above.airspeedMPerS() - below.airspeedMPerS());
        if (airspeedMPerS > above.airspeedMPerS()) {
            slope = Math.min(0, slope);
        }
        return Math.max(0, above.thrustN() + slope * (airspeedMPerS - above.airspeedMPerS()));
    }

    /**
     * The airspeed where the points end.
     *
     * @return airspeed, m/s
     */
    public double lastAirspeedMPerS() {
        return points.get(points.size() - 1).airspeedMPerS();
    }
}
