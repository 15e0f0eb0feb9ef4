package trestle.magnetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import trestle.finding.Basis;

class CompassClearancePropertyTest {
    private static final double EARTH_T = 20e-6;

    @Property(tries = 200)
    void fieldGrowsWithCurrentAndFallsWithDistance(@ForAll("runs") List<LeadRun> runs) {
        for (LeadRun run : runs) {
            LeadRun twice = new LeadRun(
                    run.name(),
                    2 * run.currentA(),
                    OptionalDouble.empty(),
                    run.separationM(),
                    run.twisted(),
                    run.distanceM(),
                    run.lengthM());
            assertThat(twice.fieldT()).isCloseTo(2 * run.fieldT(), withPercentage(1e-9));
            assertThat(run.fieldT(1.1 * run.distanceM())).isLessThan(run.fieldT());
            assertThat(run.asTwisted().fieldT()).isLessThanOrEqualTo(run.fieldT());
        }
    }

    @Property(tries = 200)
    void atTheLeastDistanceTheErrorIsTheAllowedOne(
            @ForAll("runs") List<LeadRun> runs, @ForAll @DoubleRange(min = 0.2, max = 20) double allowedDeg) {
        double allowedRad = Math.toRadians(allowedDeg);
        CompassTask task = new CompassTask(runs, EARTH_T, allowedRad, Basis.REQUEST);
        LeadFields clearance = CompassClearance.of(task).cruise();
        for (int i = 0; i < runs.size(); i++) {
            double leastM = clearance.runs().get(i).leastDistanceM();
            assertError(runs.get(i).fieldT(leastM), allowedRad);
            assertThat(runs.get(i).distanceM() >= leastM)
                    .isEqualTo(!clearance.runs().get(i).exceeds(allowedRad));
        }
        double together = clearance.worst().leastDistanceM();
        assertError(runs.stream().mapToDouble(r -> r.fieldT(together)).sum(), allowedRad);
        double likely = clearance.likely().leastDistanceM();
        assertError(
                Math.sqrt(runs.stream()
                        .mapToDouble(r -> r.fieldT(likely) * r.fieldT(likely))
                        .sum()),
                allowedRad);
        assertThat(likely).isLessThanOrEqualTo(together + 1e-7);
    }

    /** The endless pair has a closed form: r² = s²/4 + µ0 I s / (2π B). */
    @Property(tries = 200)
    void leastDistanceOfAnEndlessPairMeetsItsClosedForm(
            @ForAll @DoubleRange(min = 0.5, max = 200) double currentA,
            @ForAll @DoubleRange(min = 0.002, max = 0.1) @Scale(4) double separationM) {
        LeadRun run =
                new LeadRun("pair", currentA, OptionalDouble.empty(), separationM, false, 1, OptionalDouble.empty());
        CompassTask task = new CompassTask(List.of(run), EARTH_T, Math.toRadians(2), Basis.REQUEST);
        double closedM =
                Math.sqrt(separationM * separationM / 4 + 2e-7 * currentA * separationM / task.allowedFieldT());
        assertThat(CompassClearance.of(task).cruise().worst().leastDistanceM()).isCloseTo(closedM, within(1e-7));
    }

    @Property(tries = 200)
    void theWorstSumIsNotBelowTheLikelyNorTheGreatestRun(@ForAll("runs") List<LeadRun> runs) {
        LeadFields clearance = CompassClearance.of(new CompassTask(runs, EARTH_T, Math.toRadians(2), Basis.REQUEST))
                .cruise();
        double greatest =
                clearance.runs().stream().mapToDouble(Disturbance::fieldT).max().orElseThrow();
        double rounding = 1 + 1e-12;
        assertThat(clearance.worst().fieldT() * rounding)
                .isGreaterThanOrEqualTo(clearance.likely().fieldT());
        assertThat(clearance.likely().fieldT() * rounding).isGreaterThanOrEqualTo(greatest);
        clearance
                .worst()
                .headingErrorRad()
                .ifPresentOrElse(
                        errorRad -> assertThat(clearance.worst().fieldFractionOfEarth())
                                .isCloseTo(Math.sin(errorRad), within(1e-9)),
                        () -> assertThat(clearance.worst().fieldFractionOfEarth())
                                .isGreaterThan(1));
    }

    /** The closed form of a length against the law of Biot and Savart summed element by element. */
    @Property(tries = 100)
    void fieldOfALengthMeetsThePlainSum(
            @ForAll @DoubleRange(min = 0.02, max = 0.5) double distanceM,
            @ForAll @DoubleRange(min = 0.05, max = 2) double lengthM) {
        int elements = 4000;
        double stepM = lengthM / elements;
        double sum = 0;
        for (int i = 0; i < elements; i++) {
            double alongM = -lengthM / 2 + (i + 0.5) * stepM;
            double rangeM = Math.hypot(distanceM, alongM);
            sum += 1e-7 * 30 * stepM * distanceM / (rangeM * rangeM * rangeM);
        }
        assertThat(Conductor.fieldT(30, distanceM, lengthM)).isCloseTo(sum, withPercentage(0.01));
    }

    /** Ends left open can pass the endless pair by 8.9 % at most, as the class says. */
    @Property(tries = 200)
    void aLengthWithOpenEndsHardlyPassesTheEndlessPair(
            @ForAll @DoubleRange(min = 0.02, max = 1) double distanceM,
            @ForAll @DoubleRange(min = 0.01, max = 3) double lengthM) {
        double endless = Conductor.pairFieldT(10, 0.005, distanceM);
        double finite = Conductor.pairFieldT(10, 0.005, distanceM, lengthM);
        assertThat(finite / endless).isBetween(0.0, 1.09);
    }

    /** Every direction of a field tried: none turns the compass by more than the arc sine. */
    @Property(tries = 100)
    void noSideOfAFieldTurnsTheCompassFurther(@ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        double greatest = 0;
        for (int i = 0; i < 3600; i++) {
            double side = 2 * Math.PI * i / 3600;
            greatest = Math.max(greatest, Math.atan2(share * Math.sin(side), 1 + share * Math.cos(side)));
        }
        assertThat(CompassClearance.headingErrorRad(share * EARTH_T, EARTH_T).orElseThrow())
                .isGreaterThanOrEqualTo(greatest)
                .isCloseTo(greatest, withPercentage(0.2));
    }

    private static void assertError(double fieldT, double allowedRad) {
        assertThat(CompassClearance.headingErrorRad(fieldT, EARTH_T).orElseThrow())
                .isCloseTo(allowedRad, withPercentage(0.01));
    }

    @Provide
    static Arbitrary<List<LeadRun>> runs() {
        Arbitrary<Double> current = Arbitraries.doubles().between(1, 150);
        Arbitrary<Double> separation =
                Arbitraries.doubles().between(0.003, 0.03).ofScale(4);
        Arbitrary<Double> distance = Arbitraries.doubles().between(0.03, 0.8);
        Arbitrary<Boolean> twisted = Arbitraries.of(true, false);
        Arbitrary<OptionalDouble> length = Arbitraries.doubles().between(0.1, 2).map(OptionalDouble::of);
        Arbitrary<OptionalDouble> endless = Arbitraries.just(OptionalDouble.empty());
        return Combinators.combine(current, separation, twisted, distance, Arbitraries.oneOf(length, endless))
                .as((a, s, t, r, l) -> new LeadRun("run", a, OptionalDouble.empty(), s, t, r, l))
                .list()
                .ofMinSize(1)
                .ofMaxSize(5);
    }
}
