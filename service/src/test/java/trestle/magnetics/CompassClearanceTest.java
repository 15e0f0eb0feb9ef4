package trestle.magnetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.finding.Basis;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.numeric.ImpossibleValue;

class CompassClearanceTest {
    /** Two degrees of 20 µT: sin 2° · 20 = 0.697990 µT. */
    private static final double ALLOWED_UT = 0.697990;

    @Test
    void aPairFarEnoughOffIsFit() {
        Clearance clearance = CompassClearance.of(task(run(20, 0.006, 0.4)));
        // 2e-7 · 20 · 0.006 / 0.16 = 0.15 µT of 20 µT: 0.43°.
        Disturbance worst = clearance.cruise().worst();
        assertThat(worst.fieldT()).isCloseTo(0.15e-6, within(5e-11));
        assertThat(worst.fieldFractionOfEarth()).isCloseTo(0.0075, within(5e-7));
        assertThat(Math.toDegrees(worst.headingErrorRad().orElseThrow())).isCloseTo(0.43, within(5e-3));
        assertThat(clearance.judgement().findings()).isEmpty();
        Check check = check(clearance, "compass-cruise");
        assertThat(check.outcome()).isEqualTo(Outcome.PASSED);
        assertThat(check.value().orElseThrow()).isCloseTo(0.42975, within(5e-5));
        assertThat(check.limit().orElseThrow()).isCloseTo(2, within(1e-12));
        assertThat(check.unit()).isEqualTo("°");
        assertThat(check.basis()).isEqualTo(Basis.COMMON_PRACTICE);
    }

    @Test
    void aPairTooNearIsAStopThatSaysHowFar() {
        Clearance clearance = CompassClearance.of(task(run(50, 0.005, 0.1)));
        Finding finding = only(clearance);
        assertThat(finding.code()).isEqualTo("compass-too-near");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.subject()).isEqualTo(Subject.of(CompassPart.RUNS));
        assertThat(finding.value().orElseThrow()).isCloseTo(14.4867, within(1e-4));
        // sqrt(0.0025² + 2e-7 · 50 · 0.005 / (20e-6 sin 2°)) = 267.7 mm; twisted 0.25 µT = 0.7°.
        assertThat(clearance.cruise().worst().leastDistanceM()).isCloseTo(0.26766, within(5e-6));
        assertThat(finding.message())
                .isEqualTo(
                        "In cruise the leads turn the compass by up to 14.5°, likely 14.5°; 2.0° (common practice) is"
                                + " allowed: mount it 268 mm or more from every run, or twist the leads of pack (then up to"
                                + " 0.7°).");
    }

    @Test
    void twistingIsNotOfferedWhereItIsNotEnough() {
        // Twisted 2e-7 · 500 · 0.0005 / 0.01 = 5 µT of 20 µT: 14°, with 2° allowed.
        Clearance clearance = CompassClearance.of(task(run(500, 0.01, 0.1)));
        assertThat(clearance.judgement().findings().get(0).message()).endsWith("mm or more from every run.");
        Clearance twisted = CompassClearance.of(task(run(500, 0.01, 0.1).asTwisted()));
        assertThat(twisted.judgement().findings().get(0).message()).endsWith("mm or more from every run.");
    }

    @Test
    void theStrongestRunIsTheOneToTwist() {
        LeadRun weak = new LeadRun("weak", 1, OptionalDouble.empty(), 0.005, false, 0.4, OptionalDouble.empty());
        LeadRun strong = new LeadRun("strong", 50, OptionalDouble.empty(), 0.005, false, 0.2, OptionalDouble.empty());
        for (CompassTask task : List.of(task(weak, strong), task(strong, weak))) {
            assertThat(only(CompassClearance.of(task)).message()).contains("twist the leads of strong");
        }
    }

    @Test
    void runsThatOnlyAddUpAtWorstAreAttention() {
        LeadRun half = run(20, 0.006, 0.23);
        Clearance clearance = CompassClearance.of(task(half, half));
        assertThat(only(clearance).severity()).isEqualTo(Severity.ATTENTION);
        assertThat(only(clearance).code()).isEqualTo("compass-too-near");
        assertThat(clearance.cruise().worst().fieldT()).isCloseTo(2 * half.fieldT(), within(1e-15));
        assertThat(clearance.cruise().likely().fieldT()).isCloseTo(Math.sqrt(2) * half.fieldT(), within(1e-15));
        // Far off B = k / r², so the square of the distance grows with the field.
        assertThat(clearance.cruise().likely().leastDistanceM())
                .isCloseTo(Math.sqrt(0.003 * 0.003 + Math.sqrt(2) * 0.024e-6 / (ALLOWED_UT * 1e-6)), within(1e-6));
        assertThat(clearance.cruise().worst().leastDistanceM())
                .isCloseTo(Math.sqrt(0.003 * 0.003 + 2 * 0.024e-6 / (ALLOWED_UT * 1e-6)), within(1e-6));
    }

    /** Just under and just over the allowed field, in cruise and at full throttle. */
    @ParameterizedTest
    @CsvSource({"0.9999, PASSED, PASSED", "1.0001, STOP, ATTENTION"})
    void theAllowedErrorIsHeldFromBothSides(double ofAllowed, Outcome cruise, Outcome fullThrottle) {
        double currentA = ofAllowed * ALLOWED_UT * 1e-6 / run(1, 0.006, 0.3).fieldT();
        Clearance slow = CompassClearance.of(task(run(currentA, 0.006, 0.3)));
        assertThat(check(slow, "compass-cruise").outcome()).isEqualTo(cruise);
        Clearance fast = CompassClearance.of(task(peaking(1, currentA)));
        assertThat(check(fast, "compass-cruise").outcome()).isEqualTo(Outcome.PASSED);
        assertThat(check(fast, "compass-full-throttle").outcome()).isEqualTo(fullThrottle);
    }

    private static LeadRun peaking(double currentA, double peakA) {
        return new LeadRun("pack", currentA, OptionalDouble.of(peakA), 0.006, false, 0.3, OptionalDouble.empty());
    }

    /** Seconds of a climb are not hours of cruise: 83 A were a stop though 7.6 A in cruise give 0.2°. */
    @Test
    void fullThrottleIsJudgedApartFromCruise() {
        LeadRun run = new LeadRun("main lead", 7.6, OptionalDouble.of(83), 0.006, false, 0.351, OptionalDouble.empty());
        Clearance clearance = CompassClearance.of(task(run));
        assertThat(Math.toDegrees(clearance.cruise().worst().headingErrorRad().orElseThrow()))
                .isCloseTo(0.21, within(5e-3));
        LeadFields full = clearance.fullThrottle().orElseThrow();
        assertThat(Math.toDegrees(full.worst().headingErrorRad().orElseThrow())).isCloseTo(2.3, within(0.05));
        assertThat(full.runs().get(0).fieldT())
                .isCloseTo(83 / 7.6 * clearance.cruise().runs().get(0).fieldT(), within(1e-15));
        Finding finding = only(clearance);
        assertThat(finding.code()).isEqualTo("heading-off-at-full-throttle");
        assertThat(finding.severity()).isEqualTo(Severity.ATTENTION);
        assertThat(finding.message())
                .startsWith("At full throttle the leads turn the compass by up to 2.3°")
                .endsWith(", or trust no heading in a climb.");
    }

    @Test
    void fullThrottleIsNotJudgedWithoutItsCurrents() {
        LeadRun weak = run(1, 0.006, 0.5);
        Clearance clearance = CompassClearance.of(task(weak, run(9, 0.006, 0.4)));
        assertThat(clearance.fullThrottle()).isEmpty();
        Check check = check(clearance, "compass-full-throttle");
        assertThat(check.outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(check.essential()).isTrue();
        assertThat(check.give()).containsExactly(Subject.of(CompassPart.PEAK_CURRENT, 1));
        assertThat(check(clearance, "compass-cruise").essential()).isTrue();
    }

    /** A run without a peak keeps its cruise current at full throttle, and that is said. */
    @Test
    void aRunWithoutAPeakCarriesTheSameAtFullThrottle() {
        LeadRun steady = run(4, 0.003, 0.3);
        Clearance clearance = CompassClearance.of(task(peaking(5, 10), steady));
        LeadFields full = clearance.fullThrottle().orElseThrow();
        assertThat(full.runs().get(1).fieldT()).isEqualTo(steady.fieldT());
        assertThat(clearance.judgement().assumptions())
                .filteredOn(a -> a.subject().equals(Subject.of(CompassPart.PEAK_CURRENT, 1)))
                .singleElement()
                .satisfies(a -> assertThat(a.assumed()).isEqualTo("4 A"));
        assertThat(clearance.judgement().assumptions())
                .noneMatch(a -> a.subject().equals(Subject.of(CompassPart.PEAK_CURRENT, 0)));
        assertThat(CompassClearance.of(task(steady)).judgement().assumptions())
                .noneMatch(a -> a.subject().part() == CompassPart.PEAK_CURRENT);
    }

    /** Up to the earth's field the arc sine; beyond it no heading. */
    @Test
    void aFieldStrongerThanTheEarthsLeavesNoHeading() {
        assertThat(CompassClearance.headingErrorRad(20e-6, 20e-6).orElseThrow()).isCloseTo(Math.PI / 2, within(1e-9));
        assertThat(CompassClearance.headingErrorRad(10e-6, 20e-6).orElseThrow()).isCloseTo(Math.PI / 6, within(1e-9));
        assertThat(CompassClearance.headingErrorRad(20.001e-6, 20e-6)).isEmpty();
        Clearance clearance = CompassClearance.of(task(run(200, 0.02, 0.15)));
        assertThat(clearance.cruise().worst().headingErrorRad()).isEmpty();
        Finding finding = only(clearance);
        assertThat(finding.code()).isEqualTo("no-heading");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.limit()).hasValue(100);
        assertThat(finding.message())
                .startsWith("In cruise the leads' field of up to 35.7 µT is stronger than the earth's 20.0 µT, so that"
                        + " there is no heading; 2.0° (common practice) is allowed: mount it ");
        LeadRun burst = new LeadRun("burst", 1, OptionalDouble.of(200), 0.02, false, 0.15, OptionalDouble.empty());
        assertThat(only(CompassClearance.of(task(burst))).code()).isEqualTo("no-heading");
        assertThat(only(CompassClearance.of(task(burst))).severity()).isEqualTo(Severity.STOP);
    }

    /** Two that only together pass the earth's field: no heading at worst, one as likely. */
    @Test
    void atFullThrottleTheLikelyFieldDecidesOnAStop() {
        LeadRun half = new LeadRun("half", 1, OptionalDouble.of(70), 0.02, false, 0.15, OptionalDouble.empty());
        Finding finding = only(CompassClearance.of(task(half, half)));
        assertThat(finding.code()).isEqualTo("heading-off-at-full-throttle");
        assertThat(finding.severity()).isEqualTo(Severity.ATTENTION);
        assertThat(finding.message()).contains("there is no heading;");
    }

    @ParameterizedTest
    @CsvSource({"200, PASSED", "201, ATTENTION"})
    void milliamperesAreAskedFor(double currentA, Outcome outcome) {
        Clearance clearance = CompassClearance.of(task(run(currentA, 0.002, 3)));
        assertThat(check(clearance, "compass-current").outcome()).isEqualTo(outcome);
        LeadRun peak = new LeadRun("pack", 1, OptionalDouble.of(currentA), 0.002, false, 3, OptionalDouble.empty());
        assertThat(check(CompassClearance.of(task(peak)), "compass-current").outcome())
                .isEqualTo(outcome);
    }

    @Test
    void anAllowanceThatIsGivenIsTheRequests() {
        CompassTask task = new CompassTask(List.of(run(50, 0.005, 0.1)), 20e-6, Math.toRadians(3), Basis.REQUEST);
        assertThat(only(CompassClearance.of(task)).message()).contains("; 3.0° is allowed:");
    }

    @Test
    void twistingCountsAsATwentieth() {
        LeadRun run = run(50, 0.005, 0.1);
        assertThat(run.asTwisted().fieldT()).isCloseTo(2.5e-7, within(1e-11));
        assertThat(run.asTwisted().effectiveSeparationM()).isCloseTo(0.00025, within(1e-12));
        assertThat(run.effectiveSeparationM()).isEqualTo(0.005);
        assertThat(CompassClearance.of(task(run.asTwisted())).judgement().assumptions())
                .anyMatch(a -> a.subject().equals(Subject.of(CompassPart.TWISTED, 0)));
        assertThat(CompassClearance.of(task(run)).judgement().assumptions())
                .hasSize(2)
                .noneMatch(a -> a.subject().part() == CompassPart.TWISTED);
    }

    @Test
    void noCurrentNeedsNoDistance() {
        LeadFields dead = CompassClearance.of(task(run(0, 0.005, 0.1))).cruise();
        assertThat(dead.worst().leastDistanceM()).isZero();
        assertThat(dead.likely().leastDistanceM()).isZero();
        assertThat(dead.worst().headingErrorRad()).hasValue(0);
        assertThat(CompassClearance.of(task()).cruise().worst().leastDistanceM())
                .isZero();
    }

    /** So little current that a compass may touch the lead: the search ends at the lead. */
    @Test
    void aCurrentThatHardlyFlowsNeedsTheLeadsOwnWidth() {
        LeadFields faint = CompassClearance.of(task(run(1e-9, 0.01, 0.1))).cruise();
        assertThat(faint.worst().leastDistanceM()).isCloseTo(0.005, within(1e-6));
    }

    @Test
    void aCompassBetweenTheLeadsIsRefused() {
        assertThatThrownBy(() -> run(10, 0.2, 0.1))
                .isInstanceOf(ImpossibleValue.class)
                .hasMessageContaining("lay them together");
        assertThatThrownBy(() -> run(10, 0.2, 0.10009)).isInstanceOf(ImpossibleValue.class);
        assertThat(run(10, 0.2, 0.10011).distanceM()).isEqualTo(0.10011);
    }

    @Test
    void impossibleTasksAreRefused() {
        LeadRun run = run(10, 0.01, 0.1);
        double half = Math.PI / 4;
        assertThat(new CompassTask(List.of(run), 70e-6, half, Basis.REQUEST).allowedFieldT())
                .isCloseTo(49.4975e-6, within(5e-11));
        refused(() -> new CompassTask(List.of(run), 70.1e-6, half, Basis.REQUEST));
        refused(() -> new CompassTask(List.of(run), 0, half, Basis.REQUEST));
        refused(() -> new CompassTask(List.of(run), 20e-6, half + 1e-6, Basis.REQUEST));
        refused(() -> new CompassTask(List.of(run), 20e-6, 0, Basis.REQUEST));
        refused(() -> new CompassTask(List.of(run), 20e-6, half, null));
        refused(() -> run(-1, 0.01, 0.1));
        refused(() -> run(1, 0, 0.1));
        refused(() -> run(1, 0.01, 0));
        refused(() -> peaking(5, 4.9));
        refused(() -> new LeadRun(null, 1, OptionalDouble.empty(), 0.01, false, 0.1, OptionalDouble.empty()));
        refused(() -> new LeadRun("a", 1, OptionalDouble.empty(), 0.01, false, 0.1, OptionalDouble.of(0)));
        refused(() -> new LeadRun(
                "a", 1, OptionalDouble.of(Double.POSITIVE_INFINITY), 0.01, false, 0.1, OptionalDouble.empty()));
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable made) {
        assertThatThrownBy(made).isInstanceOf(ImpossibleValue.class);
    }

    private static LeadRun run(double currentA, double separationM, double distanceM) {
        return new LeadRun(
                "pack", currentA, OptionalDouble.empty(), separationM, false, distanceM, OptionalDouble.empty());
    }

    private static CompassTask task(LeadRun... runs) {
        return new CompassTask(
                List.of(runs),
                CompassTask.USUAL_EARTH_HORIZONTAL_T,
                CompassTask.USUAL_ALLOWED_ERROR_RAD,
                Basis.COMMON_PRACTICE);
    }

    private static Finding only(Clearance clearance) {
        assertThat(clearance.judgement().findings()).hasSize(1);
        return clearance.judgement().findings().get(0);
    }

    private static Check check(Clearance clearance, String code) {
        return clearance.judgement().checks().stream()
                .filter(c -> c.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
