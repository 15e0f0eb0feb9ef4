package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code rail-budget} over HTTP. */
class RailHttpTest {
    private static final String REGULATOR = "/rails/0/regulator";
    private static final Variant EXAMPLE = Variant.of("rail-budget");

    /** Pump and valves, each by its share of the time. */
    private static final double SAMPLER_A = 1.1 * 0.6 + 0.3 * 0.2;

    /** By hand: Σ V I / η over three rails, and the servos' five stalls of 1.8 A. */
    @Test
    void theExampleAddsUp() {
        JsonNode answer = EXAMPLE.answer();
        assertThat(answer.path("verdict").asText()).isEqualTo("fit");
        double servoA = (2 * 0.25 + 3 * 0.2) * 0.5;
        double controlA = 0.45 + 0.1 + 0.3 * 0.6;
        double powerW = 6 * servoA / 0.9 + 5.2 * controlA / 0.88 + 9 * SAMPLER_A / 0.91;
        assertThat(answer.at("/systems_power_w").asDouble()).isCloseTo(powerW, within(1e-6));
        assertThat(answer.at("/rails/0/peak_a").asDouble()).isCloseTo(5 * 1.8, within(1e-6));
        assertThat(answer.at("/rails/0/input_current_a").asDouble()).isCloseTo(6 * servoA / 0.9 / 21, within(1e-6));
        assertThat(answer.at("/rails/2/temperature_c").asDouble())
                .isCloseTo(40 + 28 * 9 * SAMPLER_A * (1 / 0.91 - 1), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/supply/full_voltage_v|37|input-over-range|stop|/input_max_v|37|36"
                        + "|The full pack's 37.0 V is above the maximum input of 36.0 V of the regulator of servo rail:"
                        + " it will fail and may pass the pack's voltage on; use one rated for 39 V or more.",
                "/supply/lowest_voltage_v|6.5|rail-browns-out|stop|/input_min_v|6.5|8|At the pack's lowest 6.5 V servo"
                        + " rail browns out: its regulator needs 8.0 V; stop at a higher pack voltage, or use a"
                        + " regulator that needs less.",
                "/rails/0/regulator/peak_current_a|8|peak-over-rating|stop|/peak_current_a|9|8|Servo rail can be asked"
                        + " for 9.00 A, over its regulator's peak rating of 8.00 A: use one rated for more, or move"
                        + " loads to another rail.",
                "/rails/0/regulator/max_current_a|0.44|load-over-rating|stop|/max_current_a|0.55|0.44|Servo rail carries"
                        + " 0.55 A, 125 % of its regulator's continuous 0.44 A: use one rated for 0.7 A or more.",
                "/rails/0/regulator/max_current_a|0.66|load-near-rating|attention|/max_current_a|0.55|0.528|Servo rail"
                        + " carries 0.55 A, 83 % of its regulator's continuous 0.66 A, and 80 % (common practice) leaves"
                        + " room for heat: use one rated for 0.7 A or more."
            })
    void aPassedLimitIsAFindingAndTheRestStands(
            String at,
            double value,
            String code,
            String severity,
            String place,
            double judged,
            double limit,
            String message) {
        JsonNode answer = EXAMPLE.with(at, value).answer();
        JsonNode finding = Variant.finding(answer, code, REGULATOR + place);
        assertThat(finding.path("severity").asText()).isEqualTo(severity);
        assertThat(finding.path("value").asDouble()).isCloseTo(judged, within(1e-6));
        assertThat(finding.path("limit").asDouble()).isCloseTo(limit, within(1e-6));
        assertThat(finding.path("message").asText()).isEqualTo(message);
        assertThat(answer.path("verdict").asText()).isEqualTo(severity);
        assertThat(answer.path("rails")).hasSize(3);
        assertThat(answer.at("/rails/0/peak_a").asDouble()).isCloseTo(9, within(1e-6));
    }

    @Test
    void aRatingTouchesNothingButItsOwnShare() {
        JsonNode before = EXAMPLE.answer();
        JsonNode after = EXAMPLE.with(REGULATOR + "/max_current_a", 0.44).answer();
        assertThat(numbers(after, "load_percent")).isEqualTo(numbers(before, "load_percent"));
    }

    @Test
    void aPayloadThatBrownsOutDoesNotStopTheFlight() {
        EXAMPLE.with("/supply/lowest_voltage_v", 10)
                .post()
                .body("verdict", equalTo("attention"))
                .body("findings", hasSize(1))
                .body("findings[0].at", equalTo("/rails/2/regulator/input_min_v"))
                .body("rails.input_within_range", equalTo(List.of(true, true, false)));
        EXAMPLE.with("/supply/lowest_voltage_v", 10)
                .with("/rails/2/essential", true)
                .post()
                .body("verdict", equalTo("stop"));
    }

    @Test
    void aLinearRegulatorBurnsTheRestOfTheVoltage() {
        Variant linear = EXAMPLE.with("/rails/2/regulator/kind", "linear").without("/rails/2/regulator/efficiency");
        assertThat(linear.number("/rails/2/heat_w")).isCloseTo((29.4 - 9) * SAMPLER_A, within(1e-6));
        linear.post()
                .body("verdict", equalTo("stop"))
                .body("findings.code", hasItem("regulator-too-hot"))
                .body("findings[0].at", equalTo("/rails/2/regulator"));
    }

    @Test
    void servosBesideFlightControlAreSaid() {
        EXAMPLE.with("/rails/0/loads/0/role", "flight_control")
                .post()
                .body("findings[0].code", equalTo("servos-share-flight-control-rail"))
                .body("findings[0].at", equalTo("/rails/0/loads"));
    }

    @Test
    void aServoWithoutItsStallCurrentIsAskedFor() {
        EXAMPLE.without("/rails/0/loads/1/peak_a")
                .post()
                .body("verdict", equalTo("attention"))
                .body("findings[0].code", equalTo("stall-current-missing"))
                .body("findings[0].at", equalTo("/rails/0/loads/1/peak_a"))
                .body("assumptions.at", hasItem("/rails/0/loads/1/peak_a"));
    }

    @Test
    void everyDefaultThatTouchedANumberIsListed() {
        EXAMPLE.withJson("/rails/0/loads/0", "{\"name\":\"lamp\",\"typical_a\":0.3}")
                .without(REGULATOR + "/efficiency")
                .without("/rails/2/regulator/cooling/ambient_c")
                .post()
                .statusCode(200)
                .body(
                        "assumptions.at",
                        hasItems(
                                "/rails/0/loads/0/role",
                                "/rails/0/loads/0/duty_percent",
                                "/rails/0/loads/0/peak_a",
                                "/rails/0/regulator/efficiency",
                                "/rails/2/regulator/cooling/ambient_c"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/supply/lowest_voltage_v|30|/supply/full_voltage_v|full_voltage_v is 29.4 V, below"
                        + " the 30 V of lowest_voltage_v",
                "/rails/0/regulator/input_max_v|8|/rails/0/regulator/input_max_v|input_max_v is 8"
                        + " V, not above the 8 V of input_min_v",
                "/rails/0/regulator/peak_current_a|4|/rails/0/regulator/peak_current_a"
                        + "|peak_current_a is 4 A, below the 6 A of max_current_a",
                "/rails/1/loads/2/peak_a|0.1|/rails/1/loads/2/peak_a|peak_a is 0.1 A, below the 0.3 A of typical_a"
            })
    void aContradictionNamesBothNumbers(String at, double value, String place, String message) {
        EXAMPLE.with(at, value)
                .post()
                .statusCode(422)
                .body("errors", hasSize(1))
                .body("errors[0].at", equalTo(place))
                .body("errors[0].message", equalTo(message));
    }

    /** A generated client fills in the contract's defaults, whatever the kind. */
    @Test
    void aStatedDefaultIsNoContradictionAndChangesNothing() {
        Variant linear = EXAMPLE.with("/rails/2/regulator/kind", "linear").without("/rails/2/regulator/efficiency");
        assertThat(linear.with("/rails/2/regulator/efficiency", 0.85).answer()).isEqualTo(linear.answer());
    }

    @Test
    void allContradictionsComeAtOnce() {
        EXAMPLE.with("/supply/lowest_voltage_v", 30)
                .with(REGULATOR + "/peak_current_a", 4)
                .with("/rails/1/loads/0/peak_a", 0.1)
                .with("/rails/2/regulator/kind", "linear")
                .post()
                .statusCode(422)
                .body(
                        "errors.at",
                        equalTo(List.of(
                                "/supply/full_voltage_v",
                                "/rails/0/regulator/peak_current_a",
                                "/rails/1/loads/0/peak_a",
                                "/rails/2/regulator/efficiency")));
    }

    @Test
    void aWordOrARangeOutsideTheContractIsNamed() {
        EXAMPLE.with("/rails/0/loads/0/role", "sevro")
                .with("/rails/1/loads/0/duty_percent", 140)
                .with("/rails/1/regulator/kind", "buck")
                .withJson("/rails/2/loads", "[]")
                .postUnlawful()
                .statusCode(400)
                .body(
                        "errors.at",
                        hasItems(
                                "/rails/0/loads/0/role",
                                "/rails/1/loads/0/duty_percent",
                                "/rails/1/regulator/kind",
                                "/rails/2/loads"))
                .body("errors", hasSize(4));
    }

    @Test
    void moreServosAskForMoreAndABetterRegulatorForLess() {
        double peakA = EXAMPLE.number("/rails/0/peak_a");
        double powerW = EXAMPLE.number("/systems_power_w");
        assertThat(EXAMPLE.with("/rails/0/loads/0/quantity", 3).number("/rails/0/peak_a"))
                .isCloseTo(peakA + 1.8, within(1e-6));
        assertThat(EXAMPLE.with("/rails/0/loads/0/simultaneous", false)
                        .with("/rails/0/loads/1/simultaneous", false)
                        .number("/rails/0/peak_a"))
                .isLessThan(peakA);
        assertThat(EXAMPLE.with(REGULATOR + "/efficiency", 0.95).number("/systems_power_w"))
                .isLessThan(powerW);
        assertThat(EXAMPLE.with("/supply/lowest_voltage_v", 17).number("/rails/0/input_current_a"))
                .isGreaterThan(EXAMPLE.number("/rails/0/input_current_a"));
    }

    /** The answer's rails and sums, but for one field of the first rail. */
    private static JsonNode numbers(JsonNode answer, String field) {
        ObjectNode numbers = answer.deepCopy();
        numbers.retain("rails", "systems_power_w", "peak_power_w");
        ((ObjectNode) numbers.at("/rails/0")).remove(field);
        return numbers;
    }
}
