package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What limits a drive, over HTTP: throttle and lift. */
class PropulsionLimitHttpTest {
    private static ObjectNode example() {
        return (ObjectNode) LiveService.example("propulsion-match");
    }

    private static ValidatableResponse answered(ObjectNode request) {
        return LiveService.lawful()
                .body(request.toString())
                .post("/v1/propulsion-match")
                .then()
                .statusCode(200);
    }

    private static ObjectNode part(ObjectNode request, String name) {
        return (ObjectNode) request.get(name);
    }

    private static String finding(String code) {
        return "findings.find { it.code == '" + code + "' }.";
    }

    @Test
    void aRatingThatFullThrottlePassesLimitsTheThrottle() {
        ObjectNode request = example();
        part(request, "motor").put("max_current_a", 25);
        JsonPath drive = answered(request)
                .body("verdict", equalTo("stop"))
                .body("throttle_limit.binding", equalTo("motor_current"))
                .body(finding("throttle-limit") + "message", containsString("Limit throttle to "))
                .extract()
                .jsonPath();
        double percent = drive.getDouble("throttle_limit.throttle_percent");
        assertThat(percent).isBetween(70.0, 95.0);
        assertThat(drive.getDouble("throttle_limit.thrust_n")).isLessThan(drive.getDouble("static.thrust_n"));
        assertThat(drive.getDouble("throttle_limit.top_speed_m_per_s"))
                .isLessThan(drive.getDouble("top_speed_m_per_s"));
        assertThat(drive.getDouble("throttle_limit.climb_rate_m_per_s")).isPositive();
        assertThat(drive.getList("limits.binding"))
                .containsExactly(
                        "motor_current",
                        "motor_power",
                        "controller_current",
                        "pack_current",
                        "wire",
                        "connector",
                        "propeller_rotation",
                        "never_exceed");
        request.putArray("keep").add("pack_current");
        answered(request)
                .body("throttle_limit.throttle_percent", equalTo(100.0f))
                .body("throttle_limit.binding", nullValue())
                .body("limits.binding", equalTo(List.of("pack_current")));
    }

    /** A lift coefficient of 4.8 was no finding. */
    @Test
    void anAirspeedBelowTheStallIsAStop() {
        answered(example().put("airspeed_m_per_s", 5))
                .body("verdict", equalTo("stop"))
                .body(finding("lift-coefficient-exceeded") + "at", equalTo("/airspeed_m_per_s"))
                .body(finding("lift-coefficient-exceeded") + "limit", equalTo(1.2f));
    }

    @Test
    void thrustRequiredWithMassAndWingHasItsLiftJudged() {
        ObjectNode request = example();
        request.remove(List.of("wing_span_mm", "drag"));
        request.put("thrust_required_n", 5);
        answered(request).body("checks.find { it.code == 'lift-coefficient' }.outcome", equalTo("passed"));
        request.remove("wing_area_dm2");
        answered(request)
                .body("checks.find { it.code == 'lift-coefficient' }.outcome", equalTo("not_judged"))
                .body(
                        "checks.find { it.code == 'lift-coefficient' }.give",
                        equalTo(List.of("/takeoff_mass_g", "/wing_area_dm2")));
    }
}
