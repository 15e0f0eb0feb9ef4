package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code compass-clearance} over HTTP. */
class CompassHttpTest {
    private static final Variant EXAMPLE = Variant.of("compass-clearance", """
            {"runs": [
              {"name": "main lead", "current_a": 5.6, "peak_current_a": 33.3, "separation_mm": 3.5, "twisted": false,
               "distance_mm": 280, "length_mm": 190},
              {"name": "payload feed", "current_a": 0.72, "peak_current_a": 2.3, "separation_mm": 1.5, "twisted": true,
               "distance_mm": 150}],
             "earth_field": {"horizontal_ut": 18}, "allowed_heading_error_deg": 2}""");
    private static final String MAIN_LEAD = "/runs/0";

    private static double given(String field) {
        return EXAMPLE.request().at(MAIN_LEAD + field).asDouble();
    }

    /** The main lead endless: B = µ0 I s / (2π (r² − s²/4)), by hand. */
    @Test
    void anEndlessLeadAddsUp() {
        Variant endless = EXAMPLE.without(MAIN_LEAD + "/length_mm");
        JsonNode answer = endless.answer();
        double separationM = given("/separation_mm") / 1000;
        double distanceM = given("/distance_mm") / 1000;
        double fieldUt =
                0.2 * given("/current_a") * separationM / (distanceM * distanceM - separationM * separationM / 4);
        assertThat(answer.path("verdict").asText()).isEqualTo("fit");
        assertThat(answer.at("/runs/0/name").asText()).isEqualTo("main lead");
        assertThat(answer.at("/runs/0/field_ut").asDouble()).isCloseTo(fieldUt, within(1e-6));
        assertThat(answer.at("/runs/0/field_percent_of_earth").asDouble()).isCloseTo(100 * fieldUt / 18, within(1e-6));
        assertThat(answer.at("/runs/0/heading_error_deg").asDouble())
                .isCloseTo(Math.toDegrees(Math.asin(fieldUt / 18)), within(1e-6));
    }

    @Test
    void theWorstCaseAddsTheRunsAndTheLikelyOneTheirSquares() {
        JsonNode answer = EXAMPLE.answer();
        double sumUt = 0;
        double squares = 0;
        for (JsonNode run : answer.path("runs")) {
            double fieldUt = run.path("field_ut").asDouble();
            sumUt += fieldUt;
            squares += fieldUt * fieldUt;
        }
        assertThat(answer.path("runs")).hasSize(EXAMPLE.request().path("runs").size());
        assertThat(answer.at("/worst_case/field_ut").asDouble()).isCloseTo(sumUt, within(1e-6));
        assertThat(answer.at("/likely/field_ut").asDouble()).isCloseTo(Math.sqrt(squares), within(1e-6));
    }

    @Test
    void aCompassTooNearIsAStopThatSaysHowFar() {
        Variant near = EXAMPLE.with(MAIN_LEAD + "/distance_mm", 40);
        JsonNode answer = near.answer();
        double least = answer.at("/worst_case/least_distance_mm").asDouble();
        near.post()
                .body("verdict", equalTo("stop"))
                .body("findings[0].code", equalTo("compass-too-near"))
                .body("findings[0].at", equalTo("/runs"))
                .body("findings[0].limit", equalTo(2.0f))
                .body("runs", hasSize(2));
        assertThat(answer.at("/findings/0/message").asText())
                .contains("mount it " + (int) Math.ceil(least) + " mm or more from every run")
                .contains("or twist the leads of main lead");
    }

    @Test
    void fullThrottleIsAnsweredApart() {
        Variant peaking = EXAMPLE.with(MAIN_LEAD + "/current_a", 9).with(MAIN_LEAD + "/peak_current_a", 90);
        JsonNode answer = peaking.answer();
        assertThat(answer.at("/runs/0/at_peak/field_ut").asDouble())
                .isCloseTo(10 * answer.at("/runs/0/field_ut").asDouble(), within(1e-6));
        assertThat(answer.at("/worst_case_at_peak/heading_error_deg").asDouble())
                .isGreaterThan(answer.at("/worst_case/heading_error_deg").asDouble());
        EXAMPLE.with(MAIN_LEAD + "/peak_current_a", 1)
                .post()
                .statusCode(422)
                .body("errors[0].at", equalTo(MAIN_LEAD + "/peak_current_a"));
    }

    @Test
    void aFieldBeyondTheEarthsLeavesNoHeading() {
        EXAMPLE.without(MAIN_LEAD + "/peak_current_a")
                .with(MAIN_LEAD + "/current_a", 400)
                .with(MAIN_LEAD + "/distance_mm", 60)
                .post()
                .body("findings[0].code", equalTo("no-heading"))
                .body("worst_case.heading_error_deg", nullValue());
    }

    /** What the finding says to do, done: no finding left. */
    @Test
    void theLeastDistanceIsFarEnough() {
        double least = EXAMPLE.number("/worst_case_at_peak/least_distance_mm");
        Variant moved = EXAMPLE;
        for (int i = 0; i < 2; i++) {
            moved = moved.with("/runs/" + i + "/distance_mm", Math.ceil(least));
        }
        JsonNode answer = moved.answer();
        assertThat(answer.path("verdict").asText()).isEqualTo("fit");
        assertThat(answer.at("/worst_case_at_peak/heading_error_deg").asDouble())
                .isCloseTo(2, within(0.02));
    }

    @Test
    void twistingMoreDistanceAndLessCurrentHelp() {
        double error = EXAMPLE.number("/worst_case/heading_error_deg");
        assertThat(EXAMPLE.with(MAIN_LEAD + "/twisted", true).number("/runs/0/field_ut"))
                .isCloseTo(EXAMPLE.number("/runs/0/field_ut") / 20, within(1e-3));
        for (Variant better : new Variant[] {
            EXAMPLE.with(MAIN_LEAD + "/twisted", true),
            EXAMPLE.with(MAIN_LEAD + "/distance_mm", 400),
            EXAMPLE.with(MAIN_LEAD + "/current_a", 4),
            EXAMPLE.with(MAIN_LEAD + "/separation_mm", 2),
            EXAMPLE.with("/earth_field/horizontal_ut", 25)
        }) {
            assertThat(better.number("/worst_case/heading_error_deg")).isLessThan(error);
        }
    }

    /** A distant pair falls with the square of the distance. */
    @Test
    void twiceAsFarIsAQuarterOfTheField() {
        Variant endless = EXAMPLE.without(MAIN_LEAD + "/length_mm");
        double here = endless.with(MAIN_LEAD + "/distance_mm", 300).number("/runs/0/field_ut");
        double there = endless.with(MAIN_LEAD + "/distance_mm", 600).number("/runs/0/field_ut");
        assertThat(here / there).isCloseTo(4, within(0.001));
    }

    @Test
    void defaultsAreListed() {
        EXAMPLE.without("/earth_field")
                .without("/allowed_heading_error_deg")
                .post()
                .statusCode(200)
                .body(
                        "assumptions.at",
                        hasItems("/earth_field/horizontal_ut", "/allowed_heading_error_deg", "/runs/1/twisted"))
                .body("assumptions[0].assumed", equalTo("20 µT"));
    }

    @Test
    void aCompassBetweenTheLeadsIsAContradiction() {
        EXAMPLE.with("/runs/0/distance_mm", 240)
                .with("/runs/1/separation_mm", 3)
                .with("/runs/1/distance_mm", 1.5)
                .with("/runs/0/separation_mm", 500)
                .post()
                .statusCode(422)
                .body("errors.at", equalTo(List.of("/runs/0/distance_mm", "/runs/1/distance_mm")))
                .body(
                        "errors[0].message",
                        equalTo("a compass 240 mm from the middle of leads 500 mm apart may lie on one of them: lay"
                                + " them together, or set it further off"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/runs/1/current_a|-1|/runs/1/current_a",
                "/runs/1/twisted|\"yes\"|/runs/1/twisted",
                "/earth_field|20|/earth_field",
                "/earth_field|{}|/earth_field/horizontal_ut",
                "/allowed_heading_error_deg|0|/allowed_heading_error_deg",
                "/runs|[]|/runs",
                "/runs/1/seperation_mm|3|/runs/1/seperation_mm"
            })
    void aWrongFieldIsNamed(String at, String json, String place) {
        EXAMPLE.withJson(at, json).refusedOnlyAt(place);
    }
}
