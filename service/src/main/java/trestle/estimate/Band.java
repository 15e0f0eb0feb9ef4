package trestle.estimate;

/**
 * Where a number lies in eight cases out of ten.
 *
 * @param p10 one in ten is below
 * @param p50 half are below
 * @param p90 one in ten is above
 */
public record Band(double p10, double p50, double p90) {}
