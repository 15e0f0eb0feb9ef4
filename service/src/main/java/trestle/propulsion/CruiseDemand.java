package trestle.propulsion;

import trestle.numeric.Guard;

/**
 * What cruise asks of the drive.
 *
 * @param airspeedMPerS airspeed, m/s, above 0
 * @param drag drag over airspeed
 */
public record CruiseDemand(double airspeedMPerS, DragCurve drag) {
    /** Checks the physics. */
    public CruiseDemand {
        Guard.positive("airspeedMPerS", airspeedMPerS);
        Guard.present("drag", drag);
        Guard.positive("drag at the cruise airspeed, N", drag.dragN(airspeedMPerS));
    }

    /**
     * Thrust that holds the airspeed.
     *
     * @return thrust, N
     */
    public double thrustN() {
        return drag.dragN(airspeedMPerS);
    }
}
