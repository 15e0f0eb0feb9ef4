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
 * @param comparison how it compares with the general form of its size; without a part where its table is measured
 */
public record Propeller(
        double diameterM,
        double pitchM,
        int bladeCount,
        BladeType bladeType,
        PropellerData data,
        OptionalDouble maxRotationRadPerS,
        Comparison comparison) {
    private static final int MOST_BLADES = 8;

    /** Checks the physics. */
    public Propeller {
        Guard.positive("diameterM", diameterM);
        Guard.positive("pitchM", pitchM);
        Guard.within("bladeCount", bladeCount, 1, MOST_BLADES);
        Guard.present("bladeType", bladeType);
        Guard.present("data", data);
        Guard.present("comparison", comparison);
        maxRotationRadPerS.ifPresent(limit -> Guard.positive("maxRotationRadPerS", limit));
    }

    /**
     * A propeller that is as the general form of its size, but for what was measured of it.
     *
     * @param diameterM diameter, m, above 0
     * @param pitchM printed pitch, m, above 0
     * @param bladeCount blades, 1 to 8
     * @param bladeType kind of blade
     * @param data what was measured of it
     * @param maxRotationRadPerS fastest rotation its maker allows, rad/s; empty where none is stated
     */
    public Propeller(
            double diameterM,
            double pitchM,
            int bladeCount,
            BladeType bladeType,
            PropellerData data,
            OptionalDouble maxRotationRadPerS) {
        this(diameterM, pitchM, bladeCount, bladeType, data, maxRotationRadPerS, Comparison.EQUAL);
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
