package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A drive over HTTP. */
class PropulsionHttpTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

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

    private static JsonPath numbers(ObjectNode request) {
        return answered(request).extract().jsonPath();
    }

    private static ValidatableResponse refused(ObjectNode request) {
        return LiveService.unlawful()
                .body(request.toString())
                .post("/v1/propulsion-match")
                .then();
    }

    private static ObjectNode part(ObjectNode request, String name) {
        return (ObjectNode) request.get(name);
    }

    private static ObjectNode without(String field) {
        ObjectNode request = example();
        request.remove(field);
        return request;
    }

    private static String finding(String code) {
        return "findings.find { it.code == '" + code + "' }.";
    }

    @Test
    void theExampleFliesWithRoomToSpare() {
        JsonPath drive = numbers(example());
        assertThat(drive.getString("verdict")).isIn("fit", "attention");
        assertThat(drive.getDouble("cruise.throttle_percent")).isBetween(40.0, 70.0);
        assertThat(drive.getDouble("top_speed_m_per_s")).isBetween(20.0, drive.getDouble("zero_thrust_speed_m_per_s"));
        assertThat(drive.getDouble("cruise.drive_efficiency"))
                .isCloseTo(
                        drive.getDouble("cruise.propeller_efficiency")
                                * drive.getDouble("cruise.motor_efficiency")
                                * drive.getDouble("cruise.controller_efficiency"),
                        within(1e-6));
        assertThat(drive.getDouble("cruise.drive_efficiency"))
                .isCloseTo(
                        drive.getDouble("cruise.thrust_n")
                                * example().path("airspeed_m_per_s").asDouble()
                                / drive.getDouble("cruise.electrical_power_w"),
                        within(1e-6));
        assertThat(drive.getDouble("thrust_to_weight"))
                .isCloseTo(
                        drive.getDouble("static.thrust_n")
                                / (example().path("takeoff_mass_g").asDouble() / 1000 * 9.80665),
                        within(1e-6));
        assertThat(drive.getList("curve")).hasSize(21);
    }

    @Test
    void propellerThatStallsTheMotorIsAStopAndTheRestStands() {
        ObjectNode request = example();
        part(request, "propeller").put("diameter_in", 40).put("pitch_in", 30);
        request.remove("pack");
        request.put("supply_voltage_v", 22.2);
        ValidatableResponse answer = answered(request);
        JsonPath drive = answer.extract().jsonPath();
        assertThat(drive.getDouble(finding("motor-stalled") + "value"))
                .isGreaterThan(drive.getDouble(finding("motor-stalled") + "limit"));
        answer.body("verdict", equalTo("stop"))
                .body(finding("motor-stalled") + "at", equalTo("/propeller"))
                .body(finding("motor-stalled") + "message", containsString(" A"))
                .body(finding("motor-current-exceeded") + "at", equalTo("/motor/max_current_a"))
                .body(finding("motor-current-exceeded") + "limit", equalTo(45.0f))
                .body("static", notNullValue())
                .body("cruise", notNullValue())
                .body("curve", hasSize(21));
        assertThat(drive.getDouble("headroom.motor_current_percent")).isNegative();
    }

    @Test
    void controllerBelowTheFullPackIsAStopAndTheRestStands() {
        ObjectNode request = example();
        part(request, "controller").put("max_voltage_v", 17);
        answered(request)
                .body("verdict", equalTo("stop"))
                .body("findings[0].code", equalTo("controller-voltage-exceeded"))
                .body("findings[0].at", equalTo("/controller/max_voltage_v"))
                .body("findings[0].value", equalTo(29.4f))
                .body("findings[0].limit", equalTo(17.0f))
                .body("findings[0].message", containsString("29.4 V"))
                .body("cruise", notNullValue())
                .body("curve", hasSize(21));
    }

    @Test
    void thrustThatNeverReachesDragIsAStopAndTheRestStands() {
        ObjectNode request = example();
        request.put("takeoff_mass_g", 25_000);
        part(request, "drag").put("zero_lift_coefficient", 0.4);
        ValidatableResponse answer = answered(request);
        JsonPath drive = answer.extract().jsonPath();
        assertThat(drive.getDouble(finding("thrust-never-reaches-drag") + "value"))
                .isLessThan(drive.getDouble(finding("thrust-never-reaches-drag") + "limit"));
        answer.body("verdict", equalTo("stop"))
                .body(finding("thrust-never-reaches-drag") + "at", equalTo("/drag"))
                .body(finding("thrust-never-reaches-drag") + "message", containsString(" N"))
                .body("cruise", nullValue())
                .body("top_speed_m_per_s", nullValue())
                .body("static", notNullValue())
                .body("full_throttle_in_cruise", notNullValue())
                .body("curve", hasSize(21));
    }

    @Test
    void cutoffThatFullThrottleReachesIsAStop() {
        ObjectNode request = example();
        ((ObjectNode) request.at("/pack/cutoff")).put("cell_voltage_v", 3.95);
        answered(request)
                .body("verdict", equalTo("stop"))
                .body("findings[0].code", equalTo("cutoff-at-full-throttle"))
                .body("findings[0].at", equalTo("/pack/cutoff"))
                .body("findings[0].limit", equalTo(7 * 3.95f));
    }

    @Test
    void aDriveByItselfNeedsNoAircraft() {
        ObjectNode request = example();
        request.remove(List.of("airspeed_m_per_s", "takeoff_mass_g", "wing_area_dm2", "wing_span_mm", "drag"));
        request.putArray("airspeeds_m_per_s").add(20).add(0).add(120);
        answered(request)
                .body("cruise", nullValue())
                .body("top_speed_m_per_s", nullValue())
                .body("thrust_to_weight", nullValue())
                .body("curve.airspeed_m_per_s", equalTo(List.of(20.0f, 0.0f)))
                .body(finding("airspeed-beyond-thrust") + "at", equalTo("/airspeeds_m_per_s/2"));
    }

    @Test
    void thrustRequiredStandsInForTheDragAtThatAirspeed() {
        JsonPath byDrag = numbers(example());
        ObjectNode request = example();
        request.remove(List.of("wing_area_dm2", "wing_span_mm", "drag"));
        request.put("thrust_required_n", byDrag.getDouble("cruise.thrust_n"));
        JsonPath byThrust = numbers(request);
        assertThat(byThrust.getDouble("cruise.electrical_power_w"))
                .isCloseTo(byDrag.getDouble("cruise.electrical_power_w"), within(1e-4));
        assertThat(byThrust.getList("assumptions.at")).contains("/thrust_required_n");
    }

    @Test
    void moreVoltageMorePitchAndColderCellsEachDoWhatABuilderExpects() {
        ObjectNode coarse = example();
        part(coarse, "propeller").put("pitch_in", 10);
        ObjectNode cold = example();
        part(cold, "pack").put("ambient_c", -10);
        ObjectNode high = example();
        part(high, "conditions").put("altitude_m", 2500).put("temperature_c", 0);
        JsonPath plain = numbers(example());
        JsonPath pitched = numbers(coarse);
        JsonPath chilled = numbers(cold);
        JsonPath thin = numbers(high);
        assertThat(pitched.getDouble("static.current_a")).isGreaterThan(plain.getDouble("static.current_a"));
        assertThat(pitched.getDouble("static.rpm")).isLessThan(plain.getDouble("static.rpm"));
        assertThat(pitched.getDouble("zero_thrust_speed_m_per_s"))
                .isGreaterThan(plain.getDouble("zero_thrust_speed_m_per_s"));
        assertThat(chilled.getDouble("static.supply_voltage_v")).isLessThan(plain.getDouble("static.supply_voltage_v"));
        assertThat(chilled.getDouble("static.thrust_n")).isLessThan(plain.getDouble("static.thrust_n"));
        assertThat(thin.getDouble("static.thrust_n")).isLessThan(plain.getDouble("static.thrust_n"));
    }

    @Test
    void twoDrivesShareTheCruiseAndDoubleTheThrust() {
        ObjectNode request = example();
        request.remove("pack");
        request.put("supply_voltage_v", 22.2);
        JsonPath one = numbers(request);
        JsonPath two = numbers(request.put("motor_count", 2));
        // JsonPath reads floats, of seven digits.
        assertThat(two.getDouble("static.thrust_n")).isCloseTo(2 * one.getDouble("static.thrust_n"), within(1e-5));
        assertThat(two.getDouble("cruise.thrust_n")).isCloseTo(one.getDouble("cruise.thrust_n"), within(1e-6));
        assertThat(two.getDouble("cruise.motor_current_a")).isLessThan(one.getDouble("cruise.motor_current_a"));
    }

    @Test
    void theSupplyIsGivenOnce() {
        refused(example().put("supply_voltage_v", 22.2))
                .statusCode(422)
                .body("errors.at", equalTo(List.of("/supply_voltage_v", "/pack")));
        refused(without("pack"))
                .statusCode(422)
                .body("errors[0].code", equalTo("missing_choice"))
                .body("errors[0].message", equalTo("give one of supply_voltage_v, pack"));
    }

    @Test
    void cruiseIsGivenOnceAndWhole() {
        refused(example().put("thrust_required_n", 5))
                .statusCode(422)
                .body("errors.at", equalTo(List.of("/thrust_required_n", "/drag")));
        ObjectNode halved = example();
        halved.remove(List.of("wing_area_dm2", "airspeed_m_per_s"));
        refused(halved)
                .statusCode(422)
                .body("errors.at", hasItems("/wing_area_dm2", "/airspeed_m_per_s"))
                .body("errors.code", equalTo(List.of("missing", "missing")));
        refused(without("drag"))
                .statusCode(422)
                .body("errors.at", hasItems("/wing_area_dm2", "/wing_span_mm", "/airspeed_m_per_s"));
    }

    @Test
    void everyContradictionOfADriveIsNamedAtOnce() {
        ObjectNode request = example();
        part(request, "motor")
                .put("no_load_current_a", 40)
                .put("resistance_milliohm", 400)
                .put("no_load_voltage_v", 12);
        ObjectNode propeller = part(request, "propeller");
        propeller.putObject("static_test").put("rpm", 7000).put("thrust_n", 25).put("shaft_power_w", 380);
        propeller.set(
                "thrust_power_table",
                MAPPER.valueToTree(List.of(row(0.2, -0.1, 0.03), row(0.2, 0.06, 0.03), row(0.5, 0.02, -1))));
        refused(request)
                .statusCode(422)
                .body("errors", hasSize(6))
                .body(
                        "errors.at",
                        hasItems(
                                "/motor/no_load_voltage_v",
                                "/propeller/static_test",
                                "/propeller/thrust_power_table",
                                "/propeller/thrust_power_table/0/thrust_coefficient",
                                "/propeller/thrust_power_table/1/advance_ratio",
                                "/propeller/thrust_power_table/2/power_coefficient"));
    }

    @Test
    void aBuilderReadsWhatIsWrongWithTheCruise() {
        ObjectNode request = example();
        request.remove(List.of("drag", "wing_area_dm2", "wing_span_mm"));
        refused(request)
                .statusCode(422)
                .body("errors[0].at", equalTo("/airspeed_m_per_s"))
                .body("errors[0].message", equalTo("a cruise airspeed needs drag or thrust_required_n beside it"));
        ObjectNode text = example();
        part(text, "propeller").put("diameter_in", "14x8");
        refused(text)
                .statusCode(400)
                .body("errors[0].message", equalTo("diameter_in must be a number in inch, not the text \"14x8\""));
    }

    /** Nearly at rest, advance ratio squared is nothing; the answer stays finite. */
    @Test
    void anAirspeedNextToNothingIsRest() {
        ObjectNode request = example();
        request.putArray("airspeeds_m_per_s").add(0).add(1e-200);
        JsonPath drive = numbers(request);
        assertThat(drive.getDouble("curve[1].thrust_n")).isCloseTo(drive.getDouble("curve[0].thrust_n"), within(1e-6));
    }

    @Test
    void anAirspeedOutsideTheRangeIsPointedAt() {
        ObjectNode request = example();
        request.putArray("airspeeds_m_per_s").add(10).add(151);
        refused(request)
                .statusCode(400)
                .body("errors", hasSize(1))
                .body("errors[0].at", equalTo("/airspeeds_m_per_s/1"))
                .body("errors[0].code", equalTo("above_maximum"));
    }

    @Test
    void aMeasuredTableTakesThePlaceOfTheModel() {
        ObjectNode request = example();
        part(request, "propeller")
                .set(
                        "thrust_power_table",
                        MAPPER.valueToTree(List.of(row(0, 0.094, 0.034), row(0.3, 0.066, 0.033), row(0.62, 0, 0.008))));
        JsonPath drive = numbers(request);
        double revPerS = drive.getDouble("static.rpm") / 60;
        double diameterM = example().at("/propeller/diameter_in").asDouble() * 0.0254;
        assertThat(drive.getDouble("static.thrust_n"))
                .isCloseTo(
                        0.094 * drive.getDouble("air_density_kg_per_m3") * revPerS * revPerS * Math.pow(diameterM, 4),
                        within(1e-4));
        assertThat(drive.getList("assumptions.at"))
                .contains("/propeller/thrust_power_table")
                .doesNotContain("/propeller/blade_type");
    }

    private static ObjectNode row(double advanceRatio, double thrust, double power) {
        return MAPPER.createObjectNode()
                .put("advance_ratio", advanceRatio)
                .put("thrust_coefficient", thrust)
                .put("power_coefficient", power);
    }
}
