package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Mass and balance over HTTP. */
class MassBalanceHttpTest {
    private static final String NAME = "mass-balance";

    /** FAA AC 43.13-1B, figure 10-10: 1439 lb at +11.2 in; here in grams and millimetres. */
    @Test
    void aPublishedExampleIsMetInTheTradesUnits() {
        String items = "{\"items\":["
                + item("empty", 1169, 10.6)
                + ","
                + item("oil", 17, -49)
                + ","
                + item("pilot", 170, 16)
                + ","
                + item("fuel", 83, 22)
                + "]}";
        double cgMm = LiveService.unlawful()
                .body(items)
                .post("/v1/mass-balance")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath()
                .getDouble("cg_arm_mm");
        assertThat(cgMm / 25.4).isCloseTo(11.2, within(0.05));
    }

    private static String item(String name, double massLb, double armIn) {
        // Pounds stand for 10 g each: the centre of gravity does not mind, and masses stay in
        // range.
        return "{\"name\":\"" + name + "\",\"mass_g\":" + massLb * 10 + ",\"arm_mm\":" + armIn * 25.4 + "}";
    }

    @Test
    void aCorrectionThatIsCarriedOutReachesTheTarget() {
        ObjectNode request = LiveService.changed(NAME, "/items/8/arm_mm", "550");
        // Scales tell only what stood on them: after a move they are out of date.
        request.remove("weighing");
        LiveService.change(request, "/items/8/arm_mm", "440");
        var answer = LiveService.answer(NAME, request).extract().jsonPath();
        double newArm = answer.getDouble("corrections.find { it.item == 'pack' }.move_to_arm_mm");
        double margin = answer.getDouble("static_margin_percent");
        assertThat(margin).isNotCloseTo(12, within(0.5));
        ObjectNode moved = LiveService.change(request, "/items/8/arm_mm", String.valueOf(newArm));
        double reached = LiveService.answer(NAME, moved).extract().jsonPath().getDouble("static_margin_percent");
        assertThat(reached).isCloseTo(12, within(1e-4));
    }

    @Test
    void tooHeavyIsAStopWithNumberAndLimit() {
        LiveService.answer(NAME, LiveService.changed(NAME, "/limits/max_takeoff_mass_g", "5000"))
                .body("verdict", equalTo("stop"))
                .body("findings[0].severity", equalTo("stop"))
                .body("findings[0].at", equalTo("/limits/max_takeoff_mass_g"))
                .body("findings[0].limit", equalTo(5000f));
    }

    @Test
    void aMarginWithoutATailIsRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/tail", null)).body("errors.at", hasItem("/tail"));
    }

    @Test
    void limitsTheWrongWayRoundAreRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/limits/aft_percent_mac", "10"))
                .body("errors.at", hasItem("/limits/aft_percent_mac"));
    }

    @Test
    void halfATravelIsRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/items/8/movable_to_mm", null))
                .body("errors.at", hasItems("/items/8/movable_to_mm"));
    }

    @Test
    void aFlyingWingWithATailIsRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/tailless", "true"))
                .body("errors.at", hasItem("/tailless"));
    }

    @Test
    void supportsAtOneArmAreAFindingNotAFailure() {
        ObjectNode request = LiveService.changed(NAME, "/weighing/supports/1/arm_mm", "400");
        LiveService.answer(NAME, request).body("findings.at", hasItem("/weighing"));
    }

    /** By our own working of the formula; a vortex lattice puts it between 0.6 and 2.3 %. */
    @Test
    void theTailsLiftStandsInTheNeutralPoint() throws IOException {
        String request = """
                {"items": [{"name": "all", "mass_g": 5000, "arm_mm": 647}],
                 "wing": {"root_leading_edge_arm_mm": 500,
                          "panels": [{"root_chord_mm": 260, "tip_chord_mm": 200, "span_mm": 1200, "sweep_mm": 40}]},
                 "tail": {"area_dm2": 11, "span_mm": 800, "quarter_chord_arm_mm": 1350},
                 "fuselage_shift_percent_mac": 0}""";
        var answer = LiveService.answer(NAME, (ObjectNode) new ObjectMapper().readTree(request))
                .extract()
                .jsonPath();
        assertThat(answer.getDouble("static_margin_percent")).isCloseTo(2.4, within(0.05));
        assertThat(answer.getDouble("static_margin_tolerance_percent")).isBetween(2.0, 5.0);
    }

    /** A wing of 3.4 m on the centre line has 0.96 kg m² of roll inertia a kilogram, where points have none. */
    @Test
    void aWingThatIsSpreadHasRollInertia() throws IOException {
        String request = """
                {"items": [{"name": "wing", "mass_g": 1000, "arm_mm": 500, "spread": {"kind": "wing"}},
                           {"name": "boom", "mass_g": 300, "arm_mm": 900,
                            "spread": {"kind": "rod", "length_mm": 1200, "width_mm": 20}},
                           {"name": "pack", "mass_g": 1500, "arm_mm": 420,
                            "spread": {"kind": "block", "length_mm": 200, "width_mm": 80, "height_mm": 60}},
                           {"name": "rest", "mass_g": 2200, "arm_mm": 480}],
                 "wing": {"root_leading_edge_arm_mm": 430,
                          "panels": [{"root_chord_mm": 250, "tip_chord_mm": 250, "span_mm": 1700}]}}""";
        ObjectNode spread = (ObjectNode) new ObjectMapper().readTree(request);
        double roll = LiveService.answer(NAME, spread).extract().jsonPath().getDouble("inertia_kg_m2.roll");
        assertThat(roll).isCloseTo(0.9633, within(0.005));
        ((ObjectNode) spread.at("/items/0")).remove("spread");
        LiveService.answer(NAME, spread).body("inertia_kg_m2", nullValue());
    }

    @Test
    void anItemIsNotSpreadOverWhatIsNotThere() throws IOException {
        String request = """
                {"items": [{"name": "wing", "mass_g": 1000, "arm_mm": 500, "spread": {"kind": "wing"}},
                           {"name": "tail", "mass_g": 100, "arm_mm": 900, "spread": {"kind": "tail", "axis": "lateral"}},
                           {"name": "boom", "mass_g": 300, "arm_mm": 900, "spread": {"kind": "rod"}}]}""";
        LiveService.refused(NAME, 422, (ObjectNode) new ObjectMapper().readTree(request))
                .body(
                        "errors.at",
                        hasItems(
                                "/items/0/spread/kind",
                                "/items/1/spread/kind",
                                "/items/1/spread/axis",
                                "/items/2/spread/length_mm"));
    }

    /** A fuselage of known shape replaces the usual shift; the propeller's is then what is added. */
    @Test
    void aFuselageOfKnownShapeReplacesTheUsualShift() {
        ObjectNode request = (ObjectNode) LiveService.example(NAME);
        double usual = LiveService.answer(NAME, request).extract().jsonPath().getDouble("neutral_point_arm_mm");
        ObjectNode shaped = LiveService.change(
                request, "/fuselage", "{\"length_mm\": 900, \"width_mm\": 120, \"nose_arm_mm\": 58}");
        var answer = LiveService.answer(NAME, shaped).extract().jsonPath();
        // About 1 % of the chord instead of 2.
        assertThat(answer.getDouble("neutral_point_arm_mm") - usual).isBetween(2.0, 4.0);
        assertThat(answer.getList("assumptions.at", String.class)).contains("/fuselage_shift_percent_mac");
    }
}
