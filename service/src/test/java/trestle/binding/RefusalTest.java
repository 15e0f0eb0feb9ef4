package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trestle.api.model.ApiFault;
import trestle.endpoint.ImpossibleRequest;
import trestle.numeric.ImpossibleValue;

class RefusalTest {
    private static final ApiFault FAULT =
            new ApiFault("/tail", "contradiction", "tail and tailless exclude each other");

    @Test
    void aRefusalStaysWhatItIs() {
        Refusal refusal = new Refusal(Reason.TOO_LARGE, "a request may have 10 bytes");
        assertThat(Refusal.behind(refusal)).containsSame(refusal);
        assertThat(refusal.faults()).isEmpty();
    }

    @Test
    void whatACalculationCannotWorkWithIsRefused() {
        Refusal refusal = Refusal.behind(new ImpossibleRequest(List.of(FAULT))).orElseThrow();
        assertThat(refusal.reason()).isEqualTo(Reason.IMPOSSIBLE);
        assertThat(refusal.faults()).containsExactly(FAULT);
        assertThat(refusal.getMessage()).isNull();
    }

    @Test
    void whatARecordRefusesIsToldInItsWords() {
        Refusal refusal = Refusal.behind(new ImpossibleValue("massKg", "mass -1 kg is not above 0 kg"))
                .orElseThrow();
        assertThat(refusal.reason()).isEqualTo(Reason.IMPOSSIBLE);
        assertThat(refusal).hasMessage("mass -1 kg is not above 0 kg");
    }

    @Test
    void anyOtherFailureIsOurOwn() {
        assertThat(Refusal.behind(new IllegalStateException("broken"))).isEmpty();
    }
}
