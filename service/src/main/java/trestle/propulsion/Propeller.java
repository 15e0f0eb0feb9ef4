package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A propeller.
 *
 * @param diameterM diameter, m, above 0
 * @param pitchM printed pitch, m, above 0
 * @param bladeCount blades, 1 to 8
 * @param bladeType kind of blade
 * @param data what was measured of it
 * @param maxRotationRadPerS fastest rotation its maker allows, rad/s; empty where none is stated
 */
public record Propeller(
        double diameterM,
        double pitchM,
        int bladeCount,
        BladeType bladeType,
        PropellerData data,
        OptionalDouble maxRotationRadPerS) {
    private static final int MOST_BLADES = 8;

    /** Checks the physics. */
    public Propeller {
        Guard.positive("diameterM", diameterM);
        Guard.positive("pitchM", pitchM);
        Guard.within("bladeCount", bladeCount, 1, MOST_BLADES);
        Guard.present("bladeType", bladeType);
        Guard.present("data", data);
        maxRotationRadPerS.ifPresent(limit -> Guard.positive("maxRotationRadPerS", limit));
    }

    /**
     * A propeller of which only the size is known.
     *
     * @param diameterM diameter, m, above 0
     * @param pitchM printed pitch, m, above 0
     * @param bladeCount blades, 1 to 8
     * @param bladeType kind of blade
     * @return the propeller
     */
    public static Propeller ofSize(double diameterM, double pitchM, int bladeCount, BladeType bladeType) {
        return new Propeller(diameterM, pitchM, bladeCount, bladeType, new GeometryOnly(), OptionalDouble.empty());
    }

    /** {@code D⁴}, m⁴. */
    double diameterToTheFourthM4() {
        return diameterM * diameterM * diameterM * diameterM;
    }
}
