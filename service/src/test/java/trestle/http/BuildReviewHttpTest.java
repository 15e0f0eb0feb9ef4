package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import org.junit.jupiter.api.Test;

/** The review of a whole aircraft over HTTP: each part feeds the next. */
class BuildReviewHttpTest {
    private static final String NAME = "build-review";

    private static JsonPath answer(ObjectNode request) {
        return LiveService.answer(NAME, request).extract().jsonPath();
    }

    private static JsonPath example() {
        return answer((ObjectNode) LiveService.example(NAME));
    }

    @Test
    void everyPartAnswersUnderItsOwnName() {
        LiveService.answer(NAME, (ObjectNode) LiveService.example(NAME))
                .body("mass_balance.cg_arm_mm", notNullValue())
                .body("pack_energy.usable_energy_wh", notNullValue())
                .body("wire_sizing", hasSize(2))
                .body("endurance.best_endurance", notNullValue());
    }

    @Test
    void theVerdictIsThatOfTheWorstFindingOfAnyPart() {
        ObjectNode request =
                LiveService.changed(NAME, "/airframe/limits/max_takeoff_mass_g", "4000");
        LiveService.answer(NAME, request)
                .body("verdict", equalTo("stop"))
                .body("mass_balance.verdict", equalTo("stop"))
                .body("findings[0].severity", equalTo("stop"))
                .body("findings[0].at", equalTo("/airframe/limits/max_takeoff_mass_g"));
    }

    @Test
    void packsAndWiresAreWeighed() {
        JsonPath answer = example();
        double listed =
                answer.getList("mass_balance.moments.mass_g", Double.class).stream()
                        .mapToDouble(Double::doubleValue)
                        .sum();
        assertThat(answer.getDouble("key_figures.total_mass_g")).isCloseTo(listed, within(1e-3));
        assertThat(answer.getList("mass_balance.moments.name", String.class))
                .contains("forward pack", "aft pack", "wire: main lead", "wire: servo feed");
    }

    @Test
    void aHeavierItemCostsEnduranceAndRaisesTheStall() {
        JsonPath light = example();
        JsonPath heavy = answer(LiveService.changed(NAME, "/items/7/mass_g", "1200"));
        assertThat(heavy.getDouble("key_figures.best_endurance_h"))
                .isLessThan(light.getDouble("key_figures.best_endurance_h"));
        assertThat(heavy.getDouble("key_figures.stall_speed_m_per_s"))
                .isGreaterThan(light.getDouble("key_figures.stall_speed_m_per_s"));
        assertThat(heavy.getDouble("wire_sizing[0].current_a"))
                .isGreaterThan(light.getDouble("wire_sizing[0].current_a"));
    }

    @Test
    void thePackIsJudgedAtTheCruisePowerThroughTheWires() {
        JsonPath answer = example();
        assertThat(answer.getDouble("pack_energy.curve[0].power_w"))
                .isCloseTo(answer.getDouble("key_figures.cruise_power_w"), within(1e-6));
        JsonPath thin = answer(LiveService.changed(NAME, "/wiring/0/gauge", "\"24\""));
        assertThat(thin.getDouble("pack_energy.voltage_at_start_v"))
                .isLessThan(answer.getDouble("pack_energy.voltage_at_start_v"));
        assertThat(thin.getString("verdict")).isEqualTo("stop");
    }

    @Test
    void moreThanThePacksCanGiveAtFullThrottleIsAStop() {
        LiveService.answer(
                        NAME,
                        LiveService.changed(NAME, "/propulsion/full_throttle_power_w", "5000"))
                .body("verdict", equalTo("stop"))
                .body("findings.code", hasItem("full-throttle-not-held"))
                .body("findings.at", hasItem("/propulsion/full_throttle_power_w"));
    }

    @Test
    void aPackOutOfReachPointsAtThePack() {
        ObjectNode request = LiveService.changed(NAME, "/packs/0/arm_mm", "900");
        LiveService.answer(NAME, request).body("findings.at", hasItem("/packs/0/movable_from_mm"));
    }

    @Test
    void faultsOfEveryPartComeAtOnceWithPointersIntoTheDocument() {
        ObjectNode request = LiveService.changed(NAME, "/wiring/0/gauge", "\"99\"");
        LiveService.change(request, "/packs/1/cell/ac_resistance_milliohm", "12");
        LiveService.change(request, "/mission/legs/1", "{\"kind\":\"cruise\"}");
        LiveService.change(request, "/airframe/tail", null);
        LiveService.refused(NAME, 422, request)
                .body(
                        "errors.at",
                        hasItems(
                                "/wiring/0/gauge",
                                "/packs/1/cell/ac_resistance_milliohm",
                                "/mission/legs/1",
                                "/airframe/tail"));
    }

    @Test
    void aRunOfPackCurrentTakesNoCurrentOfItsOwn() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/wiring/0/current_a", "30"))
                .body("errors.at", hasItem("/wiring/0/current_a"));
    }
}
