package trestle.structure;

/**
 * A test that proves the wing.
 *
 * @param loadFactor to hold
 * @param halfWingLoadN to hang on each half, N
 * @param lateralM where, m from the plane of symmetry
 * @param rootBendingNm what that bends the root with, N m
 */
public record ProofTest(double loadFactor, double halfWingLoadN, double lateralM, double rootBendingNm) {}
