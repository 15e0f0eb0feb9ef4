package trestle.structure;

/**
 * A force at a station.
 *
 * @param lateralM from the root, m
 * @param forceN up positive, N
 */
public record PointLoad(double lateralM, double forceN) {}
