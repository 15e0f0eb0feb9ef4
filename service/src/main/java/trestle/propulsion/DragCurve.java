package trestle.propulsion;

import trestle.numeric.Guard;

/** Drag of the aircraft in level flight, which is the thrust that flight takes. */
@FunctionalInterface
public interface DragCurve {
    /**
     * Drag.
     *
     * @param airspeedMPerS airspeed, m/s, above 0
     * @return drag, N, 0 or more
     */
    double dragN(double airspeedMPerS);

    /**
     * A curve through one known point: drag goes with the square of airspeed. Above that airspeed
     * it is fair, since induced drag is then small; below it, it is too low.
     *
     * @param dragN drag, N, above 0
     * @param airspeedMPerS airspeed of that drag, m/s, above 0
     * @return the curve
     */
    static DragCurve through(double dragN, double airspeedMPerS) {
        Guard.positive("dragN", dragN);
        Guard.positive("airspeedMPerS", airspeedMPerS);
        double factor = dragN / (airspeedMPerS * airspeedMPerS);
        return airspeed -> factor * airspeed * airspeed;
    }
}
