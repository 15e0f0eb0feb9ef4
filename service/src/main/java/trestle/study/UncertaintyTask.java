package trestle.study;

import java.util.List;

/**
 * What is drawn, and how often.
 *
 * @param studied the calculation with its base
 * @param uncertain numbers of the request that are not known for sure
 * @param unknowns names of what the calculation estimates and that is drawn too
 * @param samples how many draws
 * @param seed the same gives the same draws
 * @param percentiles wanted, %
 */
record UncertaintyTask(
        Studied<?, ?, ?> studied,
        List<Uncertain> uncertain,
        List<String> unknowns,
        int samples,
        long seed,
        List<Double> percentiles) {}
