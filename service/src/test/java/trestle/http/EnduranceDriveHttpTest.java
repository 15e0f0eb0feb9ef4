package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Endurance on motor, controller and propeller in place of efficiencies. */
class EnduranceDriveHttpTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static String finding(String code) {
        return "findings.find { it.code == '" + code + "' }.";
    }

    private static ObjectNode flight() {
        ObjectNode request = (ObjectNode) LiveService.example("endurance");
        JsonNode drive = LiveService.example("propulsion-match");
        request.remove("efficiency");
        request.putObject("propulsion")
                .<ObjectNode>set("motor", drive.get("motor"))
                .<ObjectNode>set("controller", drive.get("controller"))
                .set("propeller", drive.get("propeller"));
        return request;
    }

    private static ValidatableResponse flown(ObjectNode request, int status) {
        return (status == 200 ? LiveService.lawful() : LiveService.unlawful())
                .body(request.toString())
                .post("/v1/endurance")
                .then()
                .statusCode(status);
    }

    /** The map that endurance reads lies within 0.25 % of the drive. */
    @Test
    void enduranceFliesOnThePowerThatTheMatchFinds() {
        double systemsW = flight().path("systems_power_w").asDouble();
        double cruiseW = LiveService.lawful()
                .body(LiveService.example("propulsion-match").toString())
                .post("/v1/propulsion-match")
                .jsonPath()
                .getDouble("cruise.electrical_power_w");
        assertThat(flown(flight(), 200).extract().jsonPath().getDouble("at_airspeed.power_w"))
                .isCloseTo(cruiseW + systemsW, within(0.0025 * cruiseW));
    }

    @Test
    void anotherPropellerChangesTheEndurance() {
        ObjectNode small = flight();
        ((ObjectNode) small.at("/propulsion/propeller")).put("diameter_in", 10).put("pitch_in", 5);
        assertThat(enduranceH(small)).isLessThan(0.97 * enduranceH(flight()));
    }

    private static double enduranceH(ObjectNode request) {
        return flown(request, 200).extract().jsonPath().getDouble("best_endurance.endurance_h");
    }

    @Test
    void enduranceJudgesTheDriveItIsGiven() {
        ObjectNode request = flight();
        ((ObjectNode) request.at("/propulsion/controller")).put("max_voltage_v", 24);
        flown(request, 200)
                .body("verdict", equalTo("stop"))
                .body(finding("controller-voltage-exceeded") + "at", equalTo("/propulsion/controller/max_voltage_v"))
                .body("assumptions.at", hasItem("/propulsion/propeller/blade_type"))
                .body("best_endurance", notNullValue());
    }

    @Test
    void enduranceSaysThatADriveIsTooWeakToFly() {
        ObjectNode request = flight();
        ((ObjectNode) request.at("/propulsion/propeller")).put("diameter_in", 4).put("pitch_in", 2);
        flown(request, 200)
                .body("verdict", equalTo("stop"))
                .body(finding("thrust-not-available") + "at", equalTo("/propulsion"))
                .body("best_endurance", nullValue());
    }

    @Test
    void efficiencyAndPropulsionExcludeEachOther() {
        ObjectNode both = flight();
        both.putObject("efficiency").put("propeller", 0.7).put("motor", 0.8).put("controller", 0.9);
        flown(both, 422).body("errors.at", equalTo(List.of("/efficiency", "/propulsion")));
        ObjectNode neither = flight();
        neither.remove("propulsion");
        flown(neither, 422).body("errors[0].message", equalTo("give one of efficiency, propulsion"));
    }

    @Test
    void propulsionTakesItsVoltageFromThePackOrFromOneField() {
        flown(flight().put("supply_voltage_v", 22), 422).body("errors.at", equalTo(List.of("/supply_voltage_v")));
        ObjectNode energy = flight();
        energy.remove("pack");
        energy.put("usable_energy_wh", 390);
        flown(energy, 422)
                .body("errors.at", equalTo(List.of("/supply_voltage_v")))
                .body("errors[0].code", equalTo("missing"));
        flown(energy.put("supply_voltage_v", 22), 200).body("best_endurance", notNullValue());
        energy.remove("propulsion");
        energy.putObject("efficiency").put("propeller", 0.7).put("motor", 0.8).put("controller", 0.9);
        flown(energy, 422).body("errors.at", equalTo(List.of("/supply_voltage_v")));
    }

    @Test
    void measuredPowerTakesNoPropulsion() {
        ObjectNode request = flight();
        request.remove("drag");
        request.set(
                "power_curve", MAPPER.valueToTree(List.of(measured(12, 105), measured(14, 125), measured(17, 180))));
        flown(request, 422)
                .body("errors.at", equalTo(List.of("/propulsion")))
                .body("errors[0].message", equalTo("power that was measured in flight takes no propulsion"));
    }

    private static ObjectNode measured(double airspeedMPerS, double powerW) {
        return MAPPER.createObjectNode().put("airspeed_m_per_s", airspeedMPerS).put("power_w", powerW);
    }
}
