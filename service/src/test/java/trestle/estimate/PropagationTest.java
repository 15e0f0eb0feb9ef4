package trestle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class PropagationTest {
    private static final List<String> THREE = List.of("a", "b", "c");

    private static Uncertainty of(List<String> unknowns, Function<Draw, Double> model) {
        return Propagation.of(
                unknowns,
                List.of("y"),
                Set.of(),
                draw -> new Sampled(Map.of("y", model.apply(draw)), Set.of()),
                Depth.FULL);
    }

    private static double product(Draw draw) {
        return 3
                * Math.exp(0.05 * draw.z("a"))
                * Math.pow(Math.exp(0.04 * draw.z("b")), 2)
                * Math.pow(Math.exp(0.06 * draw.z("c")), -1.5);
    }

    /** Exactly log-normal with the deviation √(Σ a²s²); each factor's share is a²s² over the sum. */
    @Test
    void aProductOfLogNormalsIsLogNormal() {
        double variance = 0.05 * 0.05 + 0.08 * 0.08 + 0.09 * 0.09;
        Uncertainty sure = of(THREE, PropagationTest::product);
        Band band = sure.bands().get("y");
        double reach = Spread.Z90 * Math.sqrt(variance);
        assertThat(band.p10()).isCloseTo(3 * Math.exp(-reach), within(0.005 * 3));
        assertThat(band.p50()).isCloseTo(3, within(0.005 * 3));
        assertThat(band.p90()).isCloseTo(3 * Math.exp(reach), within(0.005 * 3));
        assertThat(sure.shares().get("a")).isCloseTo(0.0025 / variance, within(1e-9));
        assertThat(sure.shares().get("b")).isCloseTo(0.0064 / variance, within(1e-9));
        assertThat(sure.shares().get("c")).isCloseTo(0.0081 / variance, within(1e-9));
        assertThat(sure.unfitted()).isEmpty();
    }

    @Test
    void aSumOfNormalsHasTheRootOfTheSumOfSquares() {
        Uncertainty sure = of(THREE, draw -> 100 + 3 * draw.z("a") + 4 * draw.z("b") + 12 * draw.z("c"));
        Band band = sure.bands().get("y");
        assertThat((band.p90() - band.p10()) / (2 * Spread.Z90)).isCloseTo(13, within(0.13));
    }

    @Test
    void theSameModelGivesTheSameBits() {
        assertThat(of(THREE, PropagationTest::product)).isEqualTo(of(THREE, PropagationTest::product));
    }

    /** A parallel stream that begins in a pool is worked in that pool. */
    @Test
    void theNumberOfCoresDoesNotShow() throws Exception {
        ForkJoinPool one = new ForkJoinPool(1);
        ForkJoinPool four = new ForkJoinPool(4);
        try {
            Uncertainty alone =
                    one.submit(() -> of(THREE, PropagationTest::product)).get();
            assertThat(four.submit(() -> of(THREE, PropagationTest::product)).get())
                    .isEqualTo(alone);
        } finally {
            one.shutdown();
            four.shutdown();
        }
    }

    @Test
    void oneAtATimeHasTheWidthAndTheShares() {
        Uncertainty quick = Propagation.of(
                THREE, List.of("y"), Set.of(), draw -> new Sampled(Map.of("y", product(draw)), Set.of()), Depth.QUICK);
        double reach = Spread.Z90 * Math.sqrt(0.017);
        assertThat(quick.bands().get("y").p90()).isCloseTo(3 * Math.exp(reach), within(1e-9));
        assertThat(quick.shares().get("c")).isCloseTo(0.0081 / 0.017, within(1e-9));
    }

    @Test
    void drawsWithoutASolutionAreCountedAndTheRestIsRaw() {
        Uncertainty sure = Propagation.of(
                THREE,
                List.of("y"),
                Set.of(),
                draw -> draw.z("a") > 0.5
                        ? new Sampled(Map.of(), Set.of("cutoff-at-once"))
                        : new Sampled(Map.of("y", product(draw)), Set.of()),
                Depth.FULL);
        assertThat(sure.without().get("y")).isCloseTo(0.3085, within(1 / 64.0));
        assertThat(sure.stops().get("cutoff-at-once")).isEqualTo(sure.without().get("y"));
        assertThat(sure.unfitted()).containsExactly("y");
        assertThat(sure.bands().get("y").p90()).isLessThan(3 * Math.exp(Spread.Z90 * Math.sqrt(0.017)));
    }

    @Test
    void aFigureThatMayBeNegativeIsNotTakenInLogarithms() {
        Uncertainty sure = Propagation.of(
                THREE,
                List.of("margin"),
                Set.of("margin"),
                draw -> new Sampled(Map.of("margin", 1 + 2 * draw.z("b")), Set.of()),
                Depth.FULL);
        assertThat(sure.bands().get("margin").p10()).isCloseTo(1 - 2 * Spread.Z90, within(0.03));
        assertThat(sure.bands().get("margin").p90()).isCloseTo(1 + 2 * Spread.Z90, within(0.03));
    }

    @Test
    void nothingUnknownHasNoBand() {
        assertThat(of(List.of(), draw -> 1.0)).isEqualTo(Uncertainty.NONE);
    }

    /** A product of three sines is no sum of curves: the raw sample answers, and says so. */
    @Test
    void whatNoSumOfCurvesExplainsIsOfTheRawSample() {
        Uncertainty sure =
                of(THREE, draw -> 10 + Math.sin(3 * draw.z("a")) * Math.sin(3 * draw.z("b")) * 5 * draw.z("c"));
        assertThat(sure.unfitted()).containsExactly("y");
    }

    @Test
    void moreUnknownsThanPointsOfTheUsualSampleTakeMorePoints() {
        List<String> many =
                java.util.stream.IntStream.range(0, 40).mapToObj(i -> "u" + i).toList();
        Uncertainty sure = of(
                many,
                draw -> Math.exp(
                        many.stream().mapToDouble(u -> 0.02 * draw.z(u)).sum()));
        assertThat(sure.bands().get("y").p90()).isCloseTo(Math.exp(Spread.Z90 * 0.02 * Math.sqrt(40)), within(0.005));
        assertThat(sure.shares().get("u17")).isCloseTo(1 / 40.0, within(1e-9));
    }
}
