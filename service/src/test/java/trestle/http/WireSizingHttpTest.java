package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.node.ObjectNode;
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
        LiveService.answer(NAME, LiveService.changed(NAME, "/max_drop_percent", "0.02"))
                .body("verdict", equalTo("stop"))
                .body("recommended", nullValue())
                .body("findings.at", hasItem("/max_drop_percent"));
    }

    @Test
    void aConnectorBeyondItsRatingIsAStop() {
        LiveService.answer(NAME, LiveService.changed(NAME, "/connectors/0/rated_current_a", "20"))
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
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/peak_current_a", "12"))
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
}
