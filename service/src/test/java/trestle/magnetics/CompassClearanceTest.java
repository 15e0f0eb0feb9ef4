package trestle.magnetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.numeric.ImpossibleValue;

class CompassClearanceTest {

    @Test
    void aPairFarEnoughOffIsFit() {
        Clearance clearance = CompassClearance.of(task(run(20, 0.006, 0.4)));
        // 2e-7 · 20 · 0.006 / 0.16 = 0.15 µT of 20 µT: 0.43°.
        assertThat(clearance.worst().fieldT()).isCloseTo(0.15e-6, within(5e-11));
        assertThat(Math.toDegrees(clearance.worst().headingErrorRad())).isCloseTo(0.43, within(5e-3));
        assertThat(clearance.judgement().findings()).isEmpty();
    }

    @Test
    void aPairTooNearIsAStopThatSaysHowFar() {
        Clearance clearance = CompassClearance.of(task(run(50, 0.005, 0.1)));
        assertThat(clearance.judgement().findings())
                .extracting(Finding::code)
                .containsExactly("run-too-near", "compass-too-near");
        assertThat(clearance.judgement().findings())
                .extracting(Finding::severity)
                .containsExactly(Severity.ATTENTION, Severity.STOP);
        assertThat(clearance.judgement().findings().get(0).subject()).isEqualTo(Subject.of(CompassPart.DISTANCE, 0));
        // sqrt(0.0025² + 2e-7 · 50 · 0.005 / (20e-6 tan 2°)) = 267.6 mm; twisted 0.25 µT = 0.7°.
        assertThat(clearance.worst().leastDistanceM()).isCloseTo(0.2676, within(5e-5));
        assertThat(clearance.judgement().findings().get(0).message())
                .isEqualTo("Run pack at 100 mm turns the compass by 14.0° on its own: keep it 268 mm"
                        + " off, or twist its leads for 0.7°.");
    }

    @Test
    void twistingIsNotOfferedWhereItIsNotEnough() {
        // Twisted 2e-7 · 500 · 0.0005 / 0.01 = 5 µT of 20 µT: 14°, with 2° allowed.
        Clearance clearance = CompassClearance.of(task(run(500, 0.01, 0.1)));
        assertThat(clearance.judgement().findings().get(0).message()).endsWith("mm off.");
    }

    @Test
    void runsThatOnlyAddUpAtWorstAreAttention() {
        LeadRun half = run(20, 0.006, 0.23);
        Clearance clearance = CompassClearance.of(task(half, half));
        assertThat(clearance.judgement().findings()).hasSize(1);
        assertThat(clearance.judgement().findings().get(0).severity()).isEqualTo(Severity.ATTENTION);
        assertThat(clearance.worst().fieldT()).isCloseTo(2 * half.fieldT(), within(1e-15));
        assertThat(clearance.likely().fieldT()).isCloseTo(Math.sqrt(2) * half.fieldT(), within(1e-15));
    }

    @Test
    void twistingCountsAsATwentieth() {
        LeadRun run = run(50, 0.005, 0.1);
        assertThat(run.asTwisted().fieldT()).isCloseTo(2.5e-7, within(1e-11));
        assertThat(CompassClearance.of(task(run.asTwisted())).judgement().assumptions())
                .anyMatch(a -> a.subject().equals(Subject.of(CompassPart.TWISTED, 0)));
    }

    @Test
    void noCurrentNeedsNoDistance() {
        Clearance dead = CompassClearance.of(task(run(0, 0.005, 0.1)));
        assertThat(dead.worst().leastDistanceM()).isZero();
        assertThat(dead.worst().headingErrorRad()).isZero();
        assertThat(CompassClearance.of(task()).worst().leastDistanceM()).isZero();
    }

    @Test
    void aCompassBetweenTheLeadsIsRefused() {
        assertThatThrownBy(() -> run(10, 0.2, 0.1))
                .isInstanceOf(ImpossibleValue.class)
                .hasMessageContaining("lay them together");
    }

    private static LeadRun run(double currentA, double separationM, double distanceM) {
        return new LeadRun("pack", currentA, separationM, false, distanceM, OptionalDouble.empty());
    }

    private static CompassTask task(LeadRun... runs) {
        return new CompassTask(
                List.of(runs), CompassTask.USUAL_EARTH_HORIZONTAL_T, CompassTask.USUAL_ALLOWED_ERROR_RAD);
    }
}
