package trestle.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;

/** Wherever an answer points, the request has a field, whether or not this one gives it. */
class PointerTest {
    static List<Calculation<?, ?, ?, ?>> calculations() {
        return Catalogue.calculations();
    }

    /** What the table shows beside the example: each finding, with the checks and assumptions around it. */
    @ParameterizedTest
    @MethodSource("calculations")
    <Q, R, W, A> void everyPlaceThatAnAnswerNamesIsInItsRequest(Calculation<Q, R, W, A> calculation) {
        List<JsonNode> requests = new ArrayList<>(List.of(Contract.example(calculation.name())));
        requests.addAll(Contract.table(calculation.name()));
        JsonNode schema = Contract.request(calculation.name());
        for (JsonNode request : requests) {
            Q bound = Binder.bind(request.deepCopy(), calculation.requestType());
            JsonNode answer = Json.MAPPER.valueToTree(calculation.answer(calculation.done(bound, Certainty.ESTIMATED)));
            assertThat(Places.unknown(answer, schema)).as(request.toString()).isEmpty();
            assertThat(Misfits.of(answer, Contract.answer(calculation.name())))
                    .as(request.toString())
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'', true",
        "/items, true",
        "/items/7/mass_g, true",
        "/items/mass_g, false",
        "/items/-1, false",
        "/items/7/mass, false",
        "/wing/panels/0/span_mm, true",
        "/wing/panels/0/span_mm/0, false",
        "items, false",
        "/, false"
    })
    void aPlaceIsInTheContractOrNot(String pointer, boolean there) {
        assertThat(Contract.hasPlace(Contract.request("mass-balance"), pointer)).isEqualTo(there);
    }

    @Test
    void aPlaceThatNoRequestHasIsSeen() throws Exception {
        JsonNode answer =
                Json.MAPPER.readTree("{\"checks\":[{\"at\":\"/items/0/mass\",\"give\":[\"/tail\",\"/tale\"]}],"
                        + "\"part\":{\"findings\":[{\"at\":\"/nowhere\"}],\"assumptions\":[{}]}}");
        assertThat(Places.unknown(answer, Contract.request("mass-balance")))
                .containsExactly("/items/0/mass", "/tale", "/nowhere", "no pointer");
    }

    @Test
    void whatDoesNotKeepTheContractIsSeen() throws Exception {
        JsonNode wing = Contract.at(Contract.request("mass-balance"), "/wing");
        JsonNode value = Json.MAPPER.readTree(
                "{\"panels\":[{\"root_chord_mm\":1e300,\"tip_chord_mm\":\"x\",\"span_mm\":100,\"twist_deg\":1}]}");
        assertThat(Misfits.of(value, wing))
                .containsExactlyInAnyOrder(
                        "/panels/0/root_chord_mm is 1.0E300, out of range",
                        "/panels/0/tip_chord_mm is a text",
                        "/panels/0/twist_deg is not in the contract",
                        "/root_leading_edge_arm_mm is missing");
    }
}
