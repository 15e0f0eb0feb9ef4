package trestle.propulsion;

import java.util.OptionalDouble;
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
     * Lift coefficient that carries the aircraft.
     *
     * @param airspeedMPerS airspeed, m/s, above 0
     * @return lift coefficient; empty where weight or wing is not known
     */
    default OptionalDouble liftCoefficient(double airspeedMPerS) {
        return OptionalDouble.empty();
    }

    /**
     * Whether drag is known below the cruise airspeed too.
     *
     * @return whether a climb can be told from it
     */
    default boolean holdsInSlowFlight() {
        return true;
    }

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
        return new DragCurve() {
            @Override
            public double dragN(double airspeed) {
                return factor * airspeed * airspeed;
            }

            @Override
            public boolean holdsInSlowFlight() {
                return false;
            }
        };
    }
}
