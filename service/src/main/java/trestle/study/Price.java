package trestle.study;

import java.util.Locale;
import java.util.Map;
import trestle.endpoint.ImpossibleRequest;

/**
 * What a study costs before it runs: the CPU time of its calculations by a fixed table, so that the same request is always
 * taken or always refused. What is dearer than one answer should be is for a stream, or for fewer points.
 */
final class Price {
    /** One answer may take so much, s of CPU. */
    private static final double MOST_S = 60;

    /** Of one run, ms; generous, so that a slow machine keeps the limit too. */
    private static final Map<String, Double> RUN_MS = Map.of(
            "build-review", 20.0,
            "endurance", 4.0,
            "propulsion-match", 4.0,
            "pack-energy", 3.0);

    private static final double OTHER_MS = 1;

    /** A figure with a band takes its sample at each point. */
    private static final double BANDED = 70;

    private Price() {}

    /**
     * Refuses what costs more than one answer should.
     *
     * @param studied what is run
     * @param runs how often
     * @param at JSON Pointer of what makes it so often
     * @throws ImpossibleRequest with what it would cost
     */
    static void check(Studied<?, ?, ?> studied, double runs, String at) {
        double runMs = RUN_MS.getOrDefault(studied.calculation().name(), OTHER_MS) * (studied.banded() ? BANDED : 1);
        double costS = runs * runMs / 1000;
        if (costS > MOST_S) {
            throw Setup.fault(
                    at,
                    "too_dear",
                    String.format(
                            Locale.ROOT,
                            "%.0f runs of %s are reckoned at %.0f s of computing, and one answer may take %.0f s: ask for fewer, or"
                                    + " for a trade study as=csv",
                            runs,
                            studied.calculation().name(),
                            costS,
                            MOST_S));
        }
    }
}
