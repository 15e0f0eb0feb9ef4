package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pack energy over HTTP. */
class PackEnergyHttpTest {
    private static final String NAME = "pack-energy";

    @Test
    void aHigherCutoffLeavesMoreBelowIt() {
        JsonPath low = at("2.9");
        JsonPath high = at("3.5");
        assertThat(high.getDouble("usable_energy_wh")).isLessThan(low.getDouble("usable_energy_wh"));
        assertThat(high.getDouble("energy_below_cutoff_wh")).isGreaterThan(low.getDouble("energy_below_cutoff_wh"));
        assertThat(high.getDouble("usable_energy_wh") + high.getDouble("energy_below_cutoff_wh"))
                .isCloseTo(low.getDouble("usable_energy_wh") + low.getDouble("energy_below_cutoff_wh"), within(0.5));
        assertThat(high.getList("findings.code", String.class)).contains("energy-below-cutoff");
    }

    private static JsonPath at(String cellVoltage) {
        return LiveService.answer(NAME, LiveService.changed(NAME, "/cutoff/cell_voltage_v", cellVoltage))
                .extract()
                .jsonPath();
    }

    @Test
    void theCurveEndsWhereTheRunEnds() {
        JsonPath answer = LiveService.answer(NAME, (ObjectNode) LiveService.example(NAME))
                .extract()
                .jsonPath();
        assertThat(answer.getDouble("curve[-1].time_s")).isCloseTo(answer.getDouble("duration_s"), within(1e-3));
        assertThat(answer.getDouble("curve[-1].energy_wh"))
                .isCloseTo(answer.getDouble("usable_energy_wh"), within(1e-3));
    }

    @Test
    void moreThanThePackCanGiveIsAStopNotAFailure() {
        LiveService.answer(NAME, LiveService.changed(NAME, "/load", "{\"power_w\": 9000}"))
                .body("verdict", equalTo("stop"))
                .body("end_reason", equalTo("power_limit"))
                .body("findings.code", hasItem("pack-below-power-limit"))
                .body("duration_s", equalTo(0f));
    }

    @Test
    void aProfileThatIsFlownToItsEndSaysSo() {
        String profile = "{\"profile\":[{\"power_w\":600,\"duration_s\":60},{\"power_w\":140,\"duration_s\":1800}]}";
        LiveService.answer(NAME, LiveService.changed(NAME, "/load", profile))
                .body("end_reason", equalTo("profile_end"));
    }

    @Test
    void aCurrentIsALoadToo() {
        LiveService.answer(NAME, LiveService.changed(NAME, "/load", "{\"current_a\": 7}"))
                .body("end_reason", equalTo("cutoff"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"li_ion", "lipo", "lfp"})
    void eachChemistryAnswers(String chemistry) {
        ObjectNode request = LiveService.changed(NAME, "/segments/0/cell/chemistry", "\"" + chemistry + "\"");
        LiveService.change(request, "/cutoff", "{\"cell_voltage_v\":2.9}");
        LiveService.answer(NAME, request);
    }

    @Test
    void aCustomCellNeedsItsCurve() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/segments/0/cell/chemistry", "\"custom\""))
                .body("errors.at", hasItem("/segments/0/cell/open_circuit_curve"));
    }

    @Test
    void aFallingCurveIsRefused() {
        ObjectNode request = LiveService.changed(NAME, "/segments/0/cell/chemistry", "\"custom\"");
        LiveService.change(
                request,
                "/segments/0/cell/open_circuit_curve",
                "[{\"state_of_charge_percent\":0,\"voltage_v\":4},{\"state_of_charge_percent\":50,\"voltage_v\":3.7},{\"state_of_charge_percent\":100,\"voltage_v\":3}]");
        LiveService.refused(NAME, 422, request).body("errors.at", hasItem("/segments/0/cell/open_circuit_curve"));
    }

    @Test
    void twoLoadsExcludeEachOther() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/load", "{\"power_w\": 100, \"current_a\": 7}"))
                .body("errors.at", hasItems("/load/power_w", "/load/current_a"));
    }

    @Test
    void noLoadIsRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/load", "{}"))
                .body("errors[0].at", equalTo("/load"))
                .body("errors[0].code", equalTo("missing_choice"));
    }

    @Test
    void bothResistancesExcludeEachOther() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/segments/0/cell/ac_resistance_milliohm", "14"))
                .body("errors.at", hasItem("/segments/0/cell/ac_resistance_milliohm"));
    }

    @Test
    void aCutoffAboveTheFullPackIsRefused() {
        LiveService.refused(NAME, 422, LiveService.changed(NAME, "/cutoff", "{\"pack_voltage_v\": 30}"))
                .body("errors.at", hasItem("/cutoff/pack_voltage_v"));
    }

    @Test
    void aMiscountingControllerIsAFinding() {
        String cutoff = "{\"cell_voltage_v\": 3.1, \"counted_cells\": 5}";
        LiveService.answer(NAME, LiveService.changed(NAME, "/cutoff", cutoff))
                .body("findings.at", hasItem("/cutoff/counted_cells"));
    }
}
