package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

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
        ObjectNode request = LiveService.changed(NAME, "/airframe/limits/max_takeoff_mass_g", "4000");
        LiveService.answer(NAME, request)
                .body("verdict", equalTo("stop"))
                .body("mass_balance.verdict", equalTo("stop"))
                .body("findings[0].severity", equalTo("stop"))
                .body("findings[0].at", equalTo("/airframe/limits/max_takeoff_mass_g"));
    }

    @Test
    void aGoAroundIsJudgedOnWhatTheFlightLeaves() {
        ObjectNode request = LiveService.changed(NAME, "/go_around", "{\"state_of_charge_percent\": 6}");
        JsonPath answer = answer(request);
        assertThat(answer.getDouble("go_around.state_of_charge_percent")).isCloseTo(6, within(0.1));
        assertThat(answer.getDouble("go_around.time_to_cutoff_s")).isZero();
        assertThat(answer.getList("findings.code", String.class)).contains("no-go-around");
        assertThat(example().getDouble("go_around.state_of_charge_percent"))
                .as("after the legs of its flight")
                .isBetween(50.0, 70.0);
    }

    @Test
    void aGoAroundThatBeginsWithOtherChargeThanAskedSaysSo() {
        ObjectNode request = LiveService.changed(NAME, "/packs/0/state_of_charge_percent", "60");
        request.putObject("go_around").put("state_of_charge_percent", 90);
        JsonPath answer = answer(request);
        assertThat(answer.getDouble("go_around.state_of_charge_percent")).isCloseTo(60, within(0.1));
        assertThat(answer.getList("assumptions.findAll { it.at == '/go_around' }.assumed", String.class))
                .contains("begun with 60 % charge in place of 90 %");
        assertThat(example().getList("assumptions.assumed", String.class))
                .noneMatch(assumed -> assumed.startsWith("begun with"));
    }

    @Test
    void whatItWorksOutOfItsPartsTogetherHasItsCautions() {
        assertThat(example().getList("cautions", String.class))
                .anyMatch(caution -> caution.startsWith("A go-around on the last of a pack"))
                .noneMatch(caution -> caution.startsWith("An aircraft of several motors"));
    }

    @Test
    void aGoAroundWithoutItsPowerIsNotJudged() {
        ObjectNode request = LiveService.changed(
                NAME, "/propulsion", "{\"efficiency\": {\"propeller\": 0.65, \"motor\": 0.85, \"controller\": 0.95}}");
        LiveService.answer(NAME, request)
                .body("go_around", nullValue())
                .body("checks.find { it.code == 'go-around' }.outcome", equalTo("not_judged"))
                .body("checks.find { it.code == 'go-around' }.give", hasItem("/propulsion/full_throttle_power_w"));
    }

    /** By hand: half of 1000 µF times the square of 29.4 V. */
    @Test
    void aPlugMeetsThePacksOfItsDocument() {
        ObjectNode request = LiveService.changed(NAME, "/wiring/0/controller_capacitance_uf", "1000");
        JsonPath answer = answer(request);
        assertThat(answer.getDouble("wire_sizing[0].answer.inrush.energy_j"))
                .isCloseTo(0.5 * 1000e-6 * 29.4 * 29.4, within(1e-6));
        assertThat(answer.getDouble("wire_sizing[0].answer.inrush.peak_current_a"))
                .isGreaterThan(50);
        assertThat(answer.getList("assumptions.findAll { it.at == '/wiring/0' }.assumed", String.class))
                .anySatisfy(assumed -> assertThat(assumed).startsWith("29.4 V and "));
    }

    @Test
    void whatARunSaysOfItsSourceStands() {
        ObjectNode request = LiveService.changed(NAME, "/wiring/0/controller_capacitance_uf", "1000");
        ((ObjectNode) request.at("/wiring/0")).put("full_voltage_v", 25).put("source_resistance_milliohm", 100);
        JsonPath answer = answer(request);
        assertThat(answer.getDouble("wire_sizing[0].answer.inrush.energy_j"))
                .isCloseTo(0.5 * 1000e-6 * 25 * 25, within(1e-6));
        assertThat(answer.getList("assumptions.findAll { it.at == '/wiring/0' }.assumed", String.class))
                .noneSatisfy(assumed -> assertThat(assumed).contains("at its supply end"));
    }

    private static ObjectNode twin() {
        return LiveService.changed(NAME, "/propulsion/motor_count", "2");
    }

    @Test
    void aTwinIsJudgedOnTheMotorThatGoesOn() {
        ObjectNode request = twin();
        ((ObjectNode) request.at("/propulsion")).put("motor_lateral_mm", 450);
        ((ObjectNode) request.at("/airframe"))
                .putObject("tail_fin")
                .put("area_dm2", 6.5)
                .put("height_mm", 320)
                .put("quarter_chord_arm_mm", 1480)
                .put("rudder_chord_percent", 35);
        JsonPath answer = answer(request);
        double yawNm = answer.getDouble("one_motor_out.yaw_moment_n_m");
        assertThat(yawNm)
                .isCloseTo(
                        0.45
                                * (answer.getDouble("one_motor_out.thrust_n")
                                        + answer.getDouble("one_motor_out.dead_drag_n")),
                        withPercentage(1e-4));
        assertThat(answer.getDouble("one_motor_out.rudder_needed_deg"))
                .isCloseTo(25 * yawNm / answer.getDouble("one_motor_out.yaw_control_n_m"), withPercentage(1e-4));
    }

    @Test
    void aTwinWithoutAFinIsNotJudged() {
        LiveService.answer(NAME, twin())
                .body("one_motor_out", nullValue())
                .body("checks.find { it.code == 'motor-out-control' }.outcome", equalTo("not_judged"))
                .body(
                        "checks.find { it.code == 'motor-out-control' }.give",
                        hasItems("/propulsion/motor_lateral_mm", "/airframe/tail_fin"));
    }

    @Test
    void anAircraftWithOneMotorHasNoneToStop() {
        assertThat(example().getList("checks.code", String.class)).noneMatch(code -> code.startsWith("motor-out"));
    }

    @Test
    void packsAndWiresAreWeighed() {
        JsonPath answer = example();
        double listed = answer.getList("mass_balance.moments.mass_g", Double.class).stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        assertThat(answer.getDouble("key_figures.total_mass_g")).isCloseTo(listed, within(1e-3));
        assertThat(answer.getList("mass_balance.moments.name", String.class))
                .contains("pack", "wire: main lead", "wire: sampler feed");
    }

    @Test
    void aHeavierItemCostsEnduranceAndRaisesTheStall() {
        JsonPath light = example();
        JsonPath heavy = answer(LiveService.changed(NAME, "/items/4/mass_g", "1200"));
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

    /** The same aircraft with efficiencies in place of motor, controller and propeller. */
    private static ObjectNode byEfficiency(String more) {
        return LiveService.changed(
                NAME,
                "/propulsion",
                "{\"efficiency\":{\"propeller\":0.66,\"motor\":0.84,\"controller\":0.95}" + more + "}");
    }

    @Test
    void moreThanThePacksCanGiveAtFullThrottleIsAStop() {
        LiveService.answer(NAME, byEfficiency(",\"full_throttle_power_w\":5000"))
                .body("verdict", equalTo("stop"))
                .body("findings.code", hasItem("full-throttle-not-held"))
                .body("findings.at", hasItem("/propulsion/full_throttle_power_w"));
    }

    @Test
    void efficienciesStandInForTheParts() {
        LiveService.answer(NAME, byEfficiency(",\"static_thrust_n\":30,\"pitch_speed_m_per_s\":25"))
                .body("propulsion_match", nullValue())
                .body("launch_and_climb.launch.outcome", notNullValue())
                .body("key_figures.cruise_throttle_percent", nullValue());
    }

    @Test
    void partsAndEfficienciesExcludeEachOther() {
        ObjectNode request = LiveService.changed(
                NAME, "/propulsion/efficiency", "{\"propeller\":0.66,\"motor\":0.84,\"controller\":0.95}");
        LiveService.refused(NAME, 422, request)
                .body("errors.at", hasItems("/propulsion/motor", "/propulsion/efficiency"));
    }

    @Test
    void aMotorNeedsItsControllerAndPropeller() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/propulsion/propeller", null))
                .body("errors.at", hasItem("/propulsion/propeller"));
    }

    @Test
    void anotherPropellerChangesEnduranceWiresAndLaunch() {
        JsonPath fitted = example();
        JsonPath steep =
                answer(LiveService.changed(NAME, "/propulsion/propeller", "{\"diameter_in\":11,\"pitch_in\":4.7}"));
        assertThat(steep.getDouble("key_figures.best_endurance_h"))
                .isLessThan(fitted.getDouble("key_figures.best_endurance_h"));
        assertThat(steep.getDouble("key_figures.static_thrust_n"))
                .isLessThan(fitted.getDouble("key_figures.static_thrust_n"));
        assertThat(steep.getDouble("wire_sizing[0].answer.recommended.peak_temperature_c"))
                .isNotEqualTo(fitted.getDouble("wire_sizing[0].answer.recommended.peak_temperature_c"));
        assertThat(steep.getDouble("launch_and_climb.climb.rate_m_per_s"))
                .isLessThan(fitted.getDouble("launch_and_climb.climb.rate_m_per_s"));
    }

    @Test
    void cruiseCurrentComesFromTheDrive() {
        JsonPath answer = example();
        double drive = answer.getDouble("propulsion_match.cruise.electrical_power_w");
        double systems = answer.getDouble("key_figures.systems_power_w");
        // The drive is matched on the fresh pack and the flight on its tabulated efficiency.
        assertThat(answer.getDouble("key_figures.cruise_power_w")).isCloseTo(drive + systems, withPercentage(0.5));
    }

    @Test
    void theDriveIsWeighedWhereItStands() {
        assertThat(example().getList("mass_balance.moments.name", String.class))
                .contains("motor", "controller", "propeller");
    }

    @Test
    void aHungrierRailCostsEndurance() {
        JsonPath fitted = example();
        JsonPath hungry = answer(LiveService.changed(NAME, "/rails/2/loads/0/duty_percent", "100"));
        assertThat(hungry.getDouble("key_figures.systems_power_w"))
                .isCloseTo(fitted.getDouble("key_figures.systems_power_w") + 0.4 * 1.1 * 9 / 0.91, within(1e-4));
        assertThat(hungry.getDouble("key_figures.best_endurance_h"))
                .isLessThan(fitted.getDouble("key_figures.best_endurance_h"));
    }

    @Test
    void aRegulatorBelowTheFullPackIsAStop() {
        ObjectNode request = LiveService.changed(NAME, "/rails/0/regulator/input_max_v", "24");
        LiveService.answer(NAME, request)
                .body("verdict", equalTo("stop"))
                .body("findings.at", hasItem("/rails/0/regulator/input_max_v"))
                .body("endurance.best_endurance", notNullValue());
    }

    @Test
    void aControllerBelowTheFullPackIsAStop() {
        ObjectNode request = LiveService.changed(NAME, "/propulsion/controller/max_voltage_v", "18");
        LiveService.answer(NAME, request)
                .body("verdict", equalTo("stop"))
                .body("findings.at", hasItem("/propulsion/controller/max_voltage_v"));
    }

    @Test
    void aLaunchTooSlowEndsInAFindingNotAFailure() {
        ObjectNode request = LiveService.changed(NAME, "/flight/launch/stretch_m", "4");
        LiveService.change(request, "/flight/launch/motor_delay_s", "3");
        LiveService.answer(NAME, request)
                .body("verdict", equalTo("stop"))
                .body("launch_and_climb.verdict", equalTo("stop"))
                .body("mass_balance.verdict", notNullValue());
    }

    @Test
    void aCompassBesideTheMainLeadIsAFinding() {
        LiveService.answer(NAME, LiveService.changed(NAME, "/compass/runs/0/distance_mm", "30"))
                .body("findings.at", hasItem("/compass/runs"));
    }

    @Test
    void aCompassRunThatIsNotInTheWiringIsRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/compass/runs/0/run", "\"x\""))
                .body("errors.at", hasItem("/compass/runs/0/run"));
    }

    @Test
    void aPackOutOfReachPointsAtThePack() {
        ObjectNode request = LiveService.changed(NAME, "/packs/0/arm_mm", "900");
        LiveService.answer(NAME, request).body("findings.at", hasItem("/packs/0/movable_from_mm"));
    }

    @Test
    void faultsOfEveryPartComeAtOnceWithPointersIntoTheDocument() {
        ObjectNode request = LiveService.changed(NAME, "/wiring/0/gauge", "\"99\"");
        LiveService.change(request, "/packs/0/cell/ac_resistance_milliohm", "12");
        LiveService.change(request, "/flight/legs/1", "{\"kind\":\"cruise\"}");
        LiveService.change(request, "/airframe/tail", null);
        LiveService.refused(NAME, 422, request)
                .body(
                        "errors.at",
                        hasItems(
                                "/wiring/0/gauge",
                                "/packs/0/cell/ac_resistance_milliohm",
                                "/flight/legs/1",
                                "/airframe/tail"));
    }

    @Test
    void aRunOfPackCurrentTakesNoCurrentOfItsOwn() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/wiring/0/current_a", "30"))
                .body("errors.at", hasItem("/wiring/0/current_a"));
    }
}
