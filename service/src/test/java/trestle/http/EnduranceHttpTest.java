package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import org.junit.jupiter.api.Test;

/** Endurance over HTTP. */
class EnduranceHttpTest {
    private static final String NAME = "endurance";

    private static JsonPath answer(ObjectNode request) {
        return LiveService.answer(NAME, request).extract().jsonPath();
    }

    @Test
    void aColdPackFliesShorter() {
        JsonPath mild = answer(LiveService.changed(NAME, "/pack/ambient_c", "25"));
        JsonPath cold = answer(LiveService.changed(NAME, "/pack/ambient_c", "-5"));
        assertThat(cold.getDouble("best_endurance.endurance_h"))
                .isLessThan(mild.getDouble("best_endurance.endurance_h"));
    }

    @Test
    void moreWindNeverGoesFurther() {
        JsonPath calm = answer(LiveService.changed(NAME, "/headwind_m_per_s", "0"));
        JsonPath windy = answer(LiveService.changed(NAME, "/headwind_m_per_s", "8"));
        assertThat(windy.getDouble("best_range.ground_range_km"))
                .isLessThan(calm.getDouble("best_range.ground_range_km"));
    }

    @Test
    void windThatIsNotOvercomeIsAFinding() {
        ObjectNode request = LiveService.changed(NAME, "/headwind_m_per_s", "40");
        LiveService.answer(NAME, request)
                .body("verdict", equalTo("stop"))
                .body("findings.code", hasItem("headwind-not-overcome"))
                .body("at_airspeed.ground_range_km", nullValue());
    }

    @Test
    void anAirspeedBelowTheStallIsAFinding() {
        LiveService.answer(NAME, LiveService.changed(NAME, "/airspeed_m_per_s", "6"))
                .body("verdict", equalTo("stop"))
                .body("findings.code", hasItem("stall-above-airspeed"))
                .body("at_airspeed", nullValue());
    }

    @Test
    void aFlightTooLongSaysWhichLegRunsOut() {
        LiveService.answer(NAME, LiveService.changed(NAME, "/legs/2/duration_min", "600"))
                .body("verdict", equalTo("stop"))
                .body("findings.at", hasItem("/legs/2"))
                .body("energy.legs[2].completed", equalTo(false));
    }

    @Test
    void aPowerCurveStandsInForTheDrag() {
        ObjectNode request = LiveService.changed(NAME, "/drag", null);
        LiveService.change(request, "/efficiency", null);
        LiveService.change(
                request,
                "/power_curve",
                "[{\"airspeed_m_per_s\":11,\"power_w\":112},{\"airspeed_m_per_s\":14,\"power_w\":128},{\"airspeed_m_per_s\":18,\"power_w\":205}]");
        LiveService.answer(NAME, request);
    }

    @Test
    void aPowerCurveMustRiseInAirspeed() {
        ObjectNode request = LiveService.changed(NAME, "/drag", null);
        LiveService.change(
                request,
                "/power_curve",
                "[{\"airspeed_m_per_s\":14,\"power_w\":112},{\"airspeed_m_per_s\":14,\"power_w\":128},{\"airspeed_m_per_s\":18,\"power_w\":5}]");
        LiveService.refused(NAME, 422, request)
                .body("errors.at", hasItems("/power_curve/1/airspeed_m_per_s", "/power_curve/2/power_w"));
    }

    @Test
    void aCalibrationStandsInForTheDrag() {
        ObjectNode request = LiveService.changed(NAME, "/drag", null);
        LiveService.change(request, "/systems_power_w", null);
        LiveService.change(
                request,
                "/calibration",
                "{\"systems_power_w\":14,\"parasite_power_coefficient\":0.0218,\"induced_power_coefficient\":16.5,\"mass_g\":5950}");
        LiveService.answer(NAME, request);
    }

    @Test
    void plainEnergyStandsInForThePack() {
        ObjectNode request = LiveService.changed(NAME, "/pack", null);
        LiveService.change(request, "/usable_energy_wh", "380");
        LiveService.answer(NAME, request).body("best_endurance.current_a", nullValue());
    }

    @Test
    void packAndPlainEnergyExcludeEachOther() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/usable_energy_wh", "380"))
                .body("errors.at", hasItems("/pack", "/usable_energy_wh"));
    }

    @Test
    void aDragPolarNeedsEfficienciesOrADrive() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/efficiency", null))
                .body("errors.code", hasItem("missing_choice"));
    }

    @Test
    void aLegIsToldWhatItLacksAndWhatItDoesNotTake() {
        ObjectNode request = LiveService.changed(NAME, "/legs/0", "{\"kind\":\"climb\",\"distance_km\":3}");
        LiveService.refused(NAME, 422, request)
                .body("errors.at", hasItems("/legs/0/height_m", "/legs/0/climb_rate_m_per_s", "/legs/0/distance_km"));
    }

    @Test
    void aPackHeavierThanTheAircraftIsRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/takeoff_mass_g", "1500"))
                .body("errors.at", hasItem("/pack"));
    }
}
