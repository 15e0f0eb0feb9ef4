package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.api.model.ApiFault;

class FaultsTest {
    private final Faults faults = new Faults();

    private List<ApiFault> noted() {
        return catchThrowableOfType(Refusal.class, () -> faults.refuseIfAny(Reason.INVALID))
                .faults();
    }

    @Test
    void noFaultIsNoRefusal() {
        faults.refuseIfAny(Reason.INVALID);
        assertThat(faults.full()).isFalse();
    }

    @Test
    void allFaultsAreInTheRefusalInTheirOrder() {
        faults.add("/b", "x", "one");
        faults.add("/a", "y", () -> "two");
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> faults.refuseIfAny(Reason.IMPOSSIBLE));
        assertThat(refusal.reason()).isEqualTo(Reason.IMPOSSIBLE);
        assertThat(refusal.faults()).containsExactly(new ApiFault("/b", "x", "one"), new ApiFault("/a", "y", "two"));
    }

    @Test
    void aThousandFaultsAreNotedAndOnlyTheyArePutInWords() {
        AtomicInteger worded = new AtomicInteger();
        for (int i = 0; i < 30_000; i++) {
            assertThat(faults.full()).isEqualTo(i >= 1000);
            faults.add("/" + i, "x", () -> "message " + worded.incrementAndGet());
        }
        assertThat(worded).hasValue(1000);
        assertThat(noted()).hasSize(1000).last().isEqualTo(new ApiFault("/999", "x", "message 1000"));
    }

    @Test
    void pointersAndMessagesAreAsLongAsTheContractHasThem() {
        faults.add("p".repeat(400), "x", "m".repeat(1000));
        faults.add("p".repeat(401), "x", "m".repeat(1001));
        assertThat(noted())
                .containsExactly(
                        new ApiFault("p".repeat(400), "x", "m".repeat(1000)),
                        new ApiFault("p".repeat(399) + "…", "x", "m".repeat(999) + "…"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/spars/1", "/spars/1/length_mm", "/spars/1/length_mm/x", "/spars", ""})
    void aFaultCoversItsPlaceWhatHoldsItAndWhatIsInIt(String at) {
        assertThat(faults.cover(at)).isFalse();
        faults.add("/spars/1", "x", "wrong");
        assertThat(faults.cover(at)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/spars/10", "/spars/0", "/spar", "/wing", "/wing/spars/1", "spars"})
    void aFaultCoversNothingElse(String at) {
        faults.add("/spars/1", "x", "wrong");
        assertThat(faults.cover(at)).isFalse();
    }

    @Test
    void aFaultOfTheWholeCoversAll() {
        faults.add("", "x", "wrong");
        assertThat(faults.cover("/wing/area_dm2")).isTrue();
        assertThat(faults.cover("")).isTrue();
    }
}
