package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trestle.api.model.ApiFault;

class PicksTest {
    private static final JsonNode ANSWER =
            tree("{\"name\":\"Heron\",\"mass_g\":1200,\"wing\":{\"area_dm2\":null},\"spars\":[{\"length_mm\":9}]}");

    private static JsonNode tree(String json) {
        try {
            return new ObjectMapper().readTree(json);
        } catch (IOException noJson) {
            throw new UncheckedIOException(noJson);
        }
    }

    private static List<FieldPath> paths(String... pointers) {
        return Arrays.stream(pointers).map(FieldPath::ofPointer).toList();
    }

    @Test
    void valuesComeInTheOrderOfThePicks() {
        assertThat(new Picks(paths("/spars/0/length_mm", "/name")).from(ANSWER))
                .extracting(JsonNode::asText)
                .containsExactly("9", "Heron");
    }

    @Test
    void whatIsNotThereLeavesItsPlaceEmpty() {
        assertThat(new Picks(paths("/name", "/wing/area_dm2", "/wing", "/spars/1/length_mm")).whereThere(ANSWER))
                .containsExactly(Optional.of(ANSWER.get("name")), Optional.empty(), Optional.empty(), Optional.empty());
    }

    @Test
    void picksOfNothingAreAllRefused() {
        Picks picks = new Picks(paths("/wing/area_dm2", "/name", "/spars/1/length_mm"));
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> picks.from(ANSWER));
        assertThat(refusal.reason()).isEqualTo(Reason.IMPOSSIBLE);
        assertThat(refusal.faults())
                .containsExactly(
                        new ApiFault("/wing/area_dm2", "nothing_to_pick", "this answer has no value there"),
                        new ApiFault("/spars/1/length_mm", "nothing_to_pick", "this answer has no value there"));
    }

    @Test
    void picksThatNoAnswerHasAreRefusedBeforeAnyWork() {
        Picks.requirePossible(paths("/name", "/spars/400/length_mm"), Craft.class);
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> Picks.requirePossible(paths("/nam", "/name", "/wing"), Craft.class));
        assertThat(refusal.reason()).isEqualTo(Reason.IMPOSSIBLE);
        assertThat(refusal.faults())
                .containsExactly(
                        new ApiFault("/nam", "nothing_to_pick", "nam is not in the answer; did you mean name?"),
                        new ApiFault(
                                "/wing",
                                "nothing_to_pick",
                                "this is an object: name one of its values, area_dm2, winglet"));
    }

    @Test
    void onePickOfNothingIsRefusedAlone() {
        Refusal refusal = Picks.nothingAt("/parts/7");
        assertThat(refusal.reason()).isEqualTo(Reason.IMPOSSIBLE);
        assertThat(refusal.faults())
                .containsExactly(new ApiFault("/parts/7", "nothing_to_pick", "this answer has no value there"));
    }
}
