package trestle.endpoint.endurance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.http.ContentType;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import trestle.http.LiveService;

/** A calibration goes from a review into endurance as it stands, and tells more than the estimate of the same aircraft. */
class CalibrationFromAFlightTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double SYSTEMS_W = 14;
    private static final double DENSITY = 1.225;
    private static JsonNode review;

    @BeforeAll
    static void review() throws Exception {
        ObjectNode request = JSON.createObjectNode();
        request.set("telemetry", flown());
        request.putObject("aircraft").put("takeoff_mass_g", 6600).put("systems_power_w", SYSTEMS_W);
        review = JSON.readTree(asked("flight-review", request));
    }

    private static String asked(String calculation, JsonNode request) {
        return LiveService.lawful()
                .contentType(ContentType.JSON)
                .queryParam("bands", "full")
                .body(request.toString())
                .post("/v1/" + calculation)
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    private static double powerW(double v) {
        return SYSTEMS_W + 0.0218 * DENSITY * v * v * v + 18.1 * 6.6 * 6.6 / (DENSITY * v);
    }

    /** Twenty minutes, a row a second, five airspeeds, 2 % noise on current and airspeed. */
    private static ObjectNode flown() {
        Random random = new Random(11);
        ObjectNode telemetry = JSON.createObjectNode();
        ArrayNode time = telemetry.putArray("time_s");
        ArrayNode voltage = telemetry.putArray("voltage_v");
        ArrayNode current = telemetry.putArray("current_a");
        ArrayNode airspeed = telemetry.putArray("airspeed_m_per_s");
        for (int i = 0; i < 1200; i++) {
            double v = 13 + i / 60 % 5 * 2;
            double volts = 25 - 0.001 * i;
            time.add(i);
            voltage.add(volts);
            current.add(powerW(v) / volts * (1 + 0.02 * random.nextGaussian()));
            airspeed.add(v * (1 + 0.02 * random.nextGaussian()));
        }
        return telemetry;
    }

    private static ObjectNode aircraft() {
        ObjectNode aircraft = JSON.createObjectNode();
        aircraft.put("takeoff_mass_g", 6600).put("wing_area_dm2", 78.5).put("wing_span_mm", 2800);
        aircraft.put("usable_energy_wh", 300).put("airspeed_m_per_s", 16);
        return aircraft;
    }

    @Test
    void thatFlightsOwnCruisePowerIsMetWithinThreePercent() throws Exception {
        ObjectNode request = aircraft();
        request.set("calibration", review.at("/calibration"));
        JsonNode endurance = JSON.readTree(asked("endurance", request));
        assertThat(endurance.at("/at_airspeed/power_w").asDouble()).isCloseTo(powerW(16), within(0.03 * powerW(16)));
    }

    @Test
    void itsBandIsAThirdOfTheEstimatesOrLess() throws Exception {
        ObjectNode known = aircraft();
        known.set("calibration", review.at("/calibration"));
        ObjectNode guessed = aircraft();
        guessed.putObject("efficiency").put("propeller", 0.7).put("motor", 0.85).put("controller", 0.97);
        assertThat(guessed.has("calibration")).isFalse();
        double narrow = width(JSON.readTree(asked("endurance", known)));
        assertThat(narrow).isPositive();
        assertThat(narrow).isLessThan(width(JSON.readTree(asked("endurance", guessed))) / 3);
    }

    private static double width(JsonNode answer) {
        JsonNode band = answer.at("/bands/cruise_power_w");
        return (band.at("/p90").asDouble() - band.at("/p10").asDouble())
                / band.at("/p50").asDouble();
    }

    @Test
    void theNotesOfALandingGiveAWiderBandThanALog() throws Exception {
        JsonNode landed = JSON.readTree(asked("flight-review", JSON.readTree("""
                {"summary": {"duration_min": 60, "energy_used_wh": 143, "mean_airspeed_m_per_s": 16},
                 "aircraft": {"takeoff_mass_g": 6600, "wing_span_mm": 2800, "systems_power_w": 14}}""")));
        ObjectNode byLog = aircraft();
        byLog.set("calibration", review.at("/calibration"));
        ObjectNode byLanding = aircraft();
        byLanding.set("calibration", landed.at("/calibration"));
        assertThat(width(JSON.readTree(asked("endurance", byLanding))))
                .isGreaterThan(width(JSON.readTree(asked("endurance", byLog))));
    }
}
