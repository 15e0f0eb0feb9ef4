package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMin;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trestle.api.model.ApiFault;

class ConstraintsTest {
    private static final Craft.Spar WITHOUT_LENGTH = new Craft.Spar(null);

    private final Faults faults = new Faults();

    private static Craft craft(List<Craft.Spar> spars) {
        return new Craft("Heron", 1200.0, null, null, null, null, null, null, spars, null);
    }

    private List<ApiFault> noted() {
        return catchThrowableOfType(Refusal.class, () -> faults.refuseIfAny(Reason.INVALID))
                .faults();
    }

    /** A value that counts how often it is looked at and how often it is put in words. */
    private static final class Counting extends Number {
        private final transient AtomicInteger looks = new AtomicInteger();
        private final transient AtomicInteger words = new AtomicInteger();

        @Override
        public int intValue() {
            return -1;
        }

        @Override
        public long longValue() {
            return -1;
        }

        @Override
        public float floatValue() {
            return -1;
        }

        @Override
        public double doubleValue() {
            looks.incrementAndGet();
            return -1;
        }

        @Override
        public String toString() {
            words.incrementAndGet();
            return "-1";
        }
    }

    private record Station(
            @JsonProperty("at_mm") @DecimalMin("0") Counting at) {}

    private record Stations(@JsonProperty("stations") List<@Valid Station> stations) {}

    @Test
    void aRequestThatKeepsTheContractHasNoFault() {
        Constraints.check(craft(List.of(new Craft.Spar(2.0))), Map.of(), faults);
        faults.refuseIfAny(Reason.INVALID);
    }

    @Test
    void faultsComeInTheOrderOfTheirPointers() {
        Constraints.check(craft(List.of(WITHOUT_LENGTH, new Craft.Spar(0.5))), Map.of(), faults);
        assertThat(noted())
                .containsExactly(
                        new ApiFault("/spars/0/length_mm", "missing", "length_mm is missing"),
                        new ApiFault(
                                "/spars/1/length_mm",
                                "below_minimum",
                                "length_mm is 0.5 mm: it must be at least 1 mm"));
    }

    @Test
    void theEchoOfAKnownFaultIsNotNoted() {
        faults.add("/spars/0", "wrong_type", "spars[0] must be an object, not 7");
        Constraints.check(craft(List.of(WITHOUT_LENGTH, WITHOUT_LENGTH)), Map.of(), faults);
        assertThat(noted()).extracting(ApiFault::at).containsExactly("/spars/0", "/spars/1/length_mm");
    }

    @Test
    void twoFaultsOfOneListAreBothNoted() {
        Constraints.check(craft(Collections.nCopies(4, WITHOUT_LENGTH)), Map.of(), faults);
        assertThat(noted())
                .extracting(ApiFault::code)
                .containsExactly("wrong_size", "missing", "missing", "missing", "missing");
    }

    @Test
    void ofManyFaultsOnlyThoseThatAreKeptArePutInWords() {
        Counting value = new Counting();
        List<Station> stations =
                Stream.generate(() -> new Station(value)).limit(30_001).toList();
        Constraints.check(new Stations(stations), Map.of(), faults);
        assertThat(noted()).hasSize(1000);
        assertThat(value.words).hasValue(1000);
    }

    @Test
    void aRequestWithAsManyFaultsAsAreKeptIsNotLookedAt() {
        for (int i = 0; i < 1000; i++) {
            faults.add("/x/" + i, "unknown_field", "x is not a field here");
        }
        Counting value = new Counting();
        Constraints.check(new Stations(List.of(new Station(value))), Map.of(), faults);
        assertThat(value.looks).hasValue(0);
    }
}
