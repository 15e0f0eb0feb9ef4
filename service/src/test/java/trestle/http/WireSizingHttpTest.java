package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.both;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trestle.api.model.ApiEnclosure;
import trestle.api.model.ApiWireInsulation;

/** Wire sizing over HTTP. */
class WireSizingHttpTest {
    private static final String NAME = "wire-sizing";

    @Test
    void theRecommendedGaugeMeetsEveryLimit() {
        LiveService.answer(NAME, (ObjectNode) LiveService.example(NAME))
                .body("recommended.meets", equalTo(true))
                .body("candidates.find { it.gauge == '30' }.meets", equalTo(false));
    }

    @Test
    void noGaugeThatMeetsIsAStopWithoutARecommendation() {
        ObjectNode request = LiveService.changed(NAME, "/max_drop_percent", "0.1");
        LiveService.change(request, "/length_mm", "5000");
        request.remove("gauge");
        LiveService.answer(NAME, request)
                .body("verdict", equalTo("stop"))
                .body("recommended", nullValue())
                .body("findings.at", hasItem("/max_drop_percent"));
    }

    @Test
    void aConnectorBeyondItsRatingIsAStop() {
        LiveService.answer(NAME, LiveService.changed(NAME, "/connectors/0/rated_current_a", "5"))
                .body("verdict", equalTo("stop"))
                .body("findings.at", hasItem("/connectors/0"));
    }

    @Test
    void aGaugeThatTheSystemDoesNotHaveIsRefused() {
        for (String gauge : new String[] {"7.3x", "99", "-12"}) {
            LiveService.refused(NAME, 422, LiveService.changed(NAME, "/gauge", "\"" + gauge + "\""))
                    .body("errors[0].at", equalTo("/gauge"));
        }
    }

    @Test
    void aPeakBelowTheContinuousCurrentIsRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/peak_current_a", "5"))
                .body("errors[0].at", equalTo("/peak_current_a"));
    }

    @Test
    void theMetricSystemNamesAreas() {
        ObjectNode request = LiveService.changed(NAME, "/gauge_system", "\"metric\"");
        LiveService.change(request, "/gauge", "\"2.5\"");
        LiveService.answer(NAME, request).body("checked.area_mm2", equalTo(2.5f));
    }

    @Test
    void withoutAFlightTheLightestIsRecommended() {
        var answer = LiveService.answer(NAME, LiveService.changed(NAME, "/flight", null))
                .body("endurance_optimal_gauge", nullValue())
                .extract()
                .jsonPath();
        assertThat(answer.getString("recommended.gauge")).isEqualTo(answer.getString("lightest_gauge"));
    }

    @ParameterizedTest
    @EnumSource(ApiWireInsulation.class)
    void eachInsulationAnswers(ApiWireInsulation insulation) {
        LiveService.answer(NAME, LiveService.changed(NAME, "/insulation", "\"" + insulation + "\""));
    }

    @ParameterizedTest
    @EnumSource(ApiEnclosure.class)
    void eachEnclosureAnswers(ApiEnclosure enclosure) {
        LiveService.answer(NAME, LiveService.changed(NAME, "/enclosure", "\"" + enclosure + "\""));
    }

    /** Two wires each way are four in a bundle: AWG 16 settles at 229 °C, not at the 147 °C of a pair. */
    @Test
    void parallelWiresLieTogetherBothWays() throws IOException {
        ObjectNode request = request("""
                {"current_a": 60, "length_mm": 600, "supply_voltage_v": 25.2, "parallel_wires": 2, "gauge": "16"}""");
        LiveService.answer(NAME, request)
                .body("checked.conductor_temperature_c", isNear(229))
                .body("assumptions.find { it.at == '/bundled_conductors' }.assumed", equalTo("4"));
        (request).put("bundled_conductors", 2);
        LiveService.answer(NAME, request).body("checked.conductor_temperature_c", isNear(147));
    }

    /** A servo lead that is well at rest loses a fifth of its 6 V when the servo stalls. */
    @Test
    void theDropInThePeakIsJudged() throws IOException {
        ObjectNode request = request("""
                {"current_a": 0.6, "peak_current_a": 4.8, "peak_duration_s": 2, "length_mm": 1500,
                 "supply_voltage_v": 6, "max_drop_percent": 5, "gauge": "24", "insulation": "pvc_80"}""");
        LiveService.answer(NAME, request)
                .body("verdict", equalTo("attention"))
                .body("checked.peak_drop_percent", equalTo(21.295515f))
                .body("findings[0].code", equalTo("peak-drop-above-limit"))
                .body("findings[0].limit", equalTo(10.0f))
                .body("findings[0].message", containsString("21.3 % of 6 V, over the limit of 10.0 %"));
    }

    @Test
    void nothingAndSomethingBesidesIsAContradiction() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/touches", "[\"nothing\", \"skin\"]"))
                .body("errors[0].at", equalTo("/touches"));
    }

    @Test
    void cautionsAreThoseOfTheRun() throws IOException {
        ObjectNode plain = request("{\"current_a\": 5, \"length_mm\": 600, \"supply_voltage_v\": 25.2}");
        LiveService.answer(NAME, plain).body("cautions.size()", equalTo(2));
        plain.put("enclosure", "foam_channel").put("feeds_controller", true).put("supply_voltage_v", 84);
        LiveService.answer(NAME, plain)
                .body("cautions.size()", equalTo(5))
                .body("cautions", hasItem(containsString("can kill")));
    }

    private static Matcher<Float> isNear(float value) {
        return both(greaterThan(value - 0.5f)).and(lessThan(value + 0.5f));
    }

    private static ObjectNode request(String json) throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(json);
    }
}
