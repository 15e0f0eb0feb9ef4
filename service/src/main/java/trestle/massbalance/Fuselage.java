package trestle.massbalance;

import trestle.numeric.Guard;

/**
 * The body that carries wing and tail, as far as it moves the neutral point.
 *
 * @param lengthM length, m, above 0
 * @param widthM largest width, m, above 0
 * @param noseArmM its nose, m aft of the datum
 */
public record Fuselage(double lengthM, double widthM, double noseArmM) {
    /** Place of the wing's quarter root chord along the body for each of the factors, [5]. */
    private static final double FIRST_PLACE = 0.1;

    private static final double PLACE_STEP = 0.1;
    private static final double[] FACTORS = {0.115, 0.172, 0.344, 0.487, 0.688, 0.888, 1.146};

    /** Checks the physics. */
    public Fuselage {
        Guard.positive("lengthM", lengthM);
        Guard.positive("widthM", widthM);
        Guard.finite("noseArmM", noseArmM);
    }

    /**
     * How far a body takes the neutral point of a wing forward: {@code Kf w² L / (S a)}, [5].
     *
     * @param rootQuarterChordArmM the wing's quarter chord at the root, m aft of the datum
     * @param wingAreaM2 S, m², above 0
     * @param wingLiftSlopePerRad a, per rad, above 0
     * @return shift, m, 0 or more
     */
    double forwardShiftM(double rootQuarterChordArmM, double wingAreaM2, double wingLiftSlopePerRad) {
        return momentFactor(place(rootQuarterChordArmM))
                * widthM
                * widthM
                * lengthM
                / (wingAreaM2 * wingLiftSlopePerRad);
    }

    /**
     * Where along the body an arm lies.
     *
     * @param armM m aft of the datum
     * @return 0 at the nose, 1 at the tail end
     */
    double place(double armM) {
        return (armM - noseArmM) / lengthM;
    }

    /**
     * Pitching-moment factor of a body, linear between the points of [5] and constant beyond them.
     *
     * @param place of the wing's quarter root chord along the body
     * @return the factor Kf, per rad
     */
    static double momentFactor(double place) {
        double step = (place - FIRST_PLACE) / PLACE_STEP;
        int below = (int) Math.max(0, Math.min(FACTORS.length - 2, Math.floor(step)));
        double share = Math.max(0, Math.min(1, step - below));
        return FACTORS[below] + share * (FACTORS[below + 1] - FACTORS[below]);
    }
}
