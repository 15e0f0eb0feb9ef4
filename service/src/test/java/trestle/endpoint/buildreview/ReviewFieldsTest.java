package trestle.endpoint.buildreview;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.catalogue.Catalogue;
import trestle.contract.Contract;

/**
 * The document of an aircraft has every field of each calculation that the review runs, with the same
 * range and the same default, but for what the review itself puts in.
 */
class ReviewFieldsTest {
    /** The review itself, what comes after a flight, and what is not yet a part: the structure. */
    private static final Set<String> ALONE = Set.of("build-review", "airframe-loads", "flight-review");

    private static final JsonNode REVIEW = Contract.request("build-review");

    static Stream<SharedFields> parts() {
        return SharedFields.all();
    }

    @ParameterizedTest
    @MethodSource("parts")
    void theDocumentHasEveryFieldOfThePart(SharedFields part) {
        Map<String, JsonNode> asked = Contract.properties(Contract.at(Contract.request(part.calculation()), part.at()));
        Set<String> missing = new TreeSet<>(asked.keySet());
        Set<String> other = new TreeSet<>();
        for (String place : part.places()) {
            Contract.properties(Contract.at(REVIEW, place)).forEach((name, schema) -> {
                if (missing.remove(name) && !shape(schema).equals(shape(asked.get(name)))) {
                    other.add(name);
                }
            });
        }
        assertThat(missing).as("fields that the document lacks").isEqualTo(new TreeSet<>(part.supplied()));
        assertThat(other).as("fields that are not the same").isEqualTo(new TreeSet<>(part.different()));
    }

    @Test
    void everyCalculationButTheReviewIsAPart() {
        assertThat(parts().map(SharedFields::calculation).distinct())
                .containsExactlyInAnyOrderElementsOf(Catalogue.calculations().stream()
                        .filter(c -> !Catalogue.isStudy(c))
                        .map(c -> c.name())
                        .filter(name -> !ALONE.contains(name))
                        .toList());
    }

    /** What a field may be, whatever is said of it; a list may be empty in the review. */
    private static JsonNode shape(JsonNode schema) {
        ObjectNode shape = Contract.resolved(schema).deepCopy();
        shape.remove(List.of("description", "example", "required", "additionalProperties", "minItems"));
        if (shape.has("items")) {
            shape.set("items", shape(shape.path("items")));
        }
        if (shape.path("properties") instanceof ObjectNode properties) {
            properties.properties().forEach(field -> field.setValue(shape(field.getValue())));
        }
        return shape;
    }
}
