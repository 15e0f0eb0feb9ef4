package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the document says of flying reaches the checks of its drive, and what it leaves out is asked for by name. */
class DriveInReviewHttpTest {
    private static final String NAME = "build-review";

    private static JsonPath answer(ObjectNode request) {
        return LiveService.answer(NAME, request).extract().jsonPath();
    }

    @Test
    void eachCheckThatIsNotJudgedNamesAFieldThatWouldLetIt() {
        List<List<String>> wanted = answer((ObjectNode) LiveService.example(NAME))
                .getList("checks.findAll { it.outcome == 'not_judged' }.give");
        assertThat(wanted)
                .isNotEmpty()
                .allSatisfy(give -> assertThat(give).isNotEmpty().doesNotContain(""));
    }

    @Test
    void theAirspeedNeverToExceedIsHeldAgainstLevelTopSpeed() {
        JsonPath answer = answer(LiveService.changed(NAME, "/airframe/never_exceed_airspeed_m_per_s", "15"));
        assertThat(answer.getString("verdict")).isEqualTo("attention");
        assertThat(answer.getString("findings.find { it.code == 'never-exceed-passed' }.at"))
                .isEqualTo("/airframe/never_exceed_airspeed_m_per_s");
        assertThat(answer.getList("propulsion_match.findings.code", String.class))
                .contains("never-exceed-passed");
    }

    @Test
    void aMotorsRatingForATimeIsHeldAgainstFullThrottle() {
        ObjectNode request = LiveService.changed(NAME, "/propulsion/motor/rating_duration_s", "10");
        ((ObjectNode) request.path("propulsion")).put("full_throttle_duration_s", 45);
        JsonPath answer = answer(request);
        Map<String, Object> check = answer.getMap("checks.find { it.code == 'rating-duration' }");
        assertThat(check).containsEntry("outcome", "attention");
        assertThat(((Number) check.get("value")).doubleValue()).isEqualTo(45);
    }

    @Test
    void theDriveIsNotAskedWhatTheReviewAsksElsewhere() {
        assertThat(answer((ObjectNode) LiveService.example(NAME)).getList("propulsion_match.checks.code", String.class))
                .doesNotContain("wire-current", "connector-current", "curve-airspeeds")
                .contains("pack-current", "never-exceed");
    }
}
