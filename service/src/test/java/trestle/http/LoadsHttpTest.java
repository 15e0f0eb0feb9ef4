package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code airframe-loads} over HTTP. */
class LoadsHttpTest {
    private static final Variant EXAMPLE = Variant.of("airframe-loads");

    /** By hand: {@code V_S = sqrt(2 m g / (ρ0 S C_L))} on 0.7875 m²; the pack at 9 g; the cord's pull. */
    @Test
    void theExampleIsFitAndItsFlutterIsNotJudged() {
        JsonNode answer = EXAMPLE.answer();
        assertThat(answer.path("verdict").asText()).isEqualTo("fit");
        double areaM2 = (0.325 + 0.29) * 0.7 + (0.29 + 0.22) * 0.7;
        double stall = Math.sqrt(2 * 6.36 * 9.80665 / (1.225 * areaM2 * 1.25));
        assertThat(answer.at("/stall_speed_m_per_s").asDouble()).isCloseTo(stall, within(1e-6));
        assertThat(answer.at("/manoeuvre_speed_m_per_s").asDouble()).isCloseTo(stall * Math.sqrt(3.8), within(1e-6));
        assertThat(answer.at("/restraints/0/forward_n").asDouble()).isCloseTo(1.214 * 9 * 9.80665, within(1e-6));
        assertThat(answer.at("/launch/hook_force_n").asDouble()).isCloseTo(16 * 11, within(1e-6));
        assertThat(answer.at("/not_judged/0/what").asText()).isEqualTo("flutter");
        EXAMPLE.post()
                .body("checks.find { it.code == 'flutter' }.outcome", equalTo("not_judged"))
                .body("findings.code", hasItem("flutter-not-judged"));
    }

    /** Shear and bending fall from root to tip; the root bears the whole lift less the mass of the wing. */
    @Test
    void rootShearIsLiftLessMass() {
        JsonNode stations = EXAMPLE.answer().at("/stations");
        double halfWingKg = 0.43 + 0.31 + 0.024;
        double shear = 3.8 * 9.80665 * (6.36 / 2 - halfWingKg);
        assertThat(stations.at("/0/shear_n").asDouble()).isCloseTo(shear, within(1e-3 * shear));
        for (int i = 1; i < stations.size(); i++) {
            assertThat(stations.at("/" + i + "/bending_n_m").asDouble())
                    .isLessThan(stations.at("/" + (i - 1) + "/bending_n_m").asDouble());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/spars/1/to_lateral_mm|1500|/spars/1/to_lateral_mm",
                "/spars/0/to_lateral_mm|2000|/spars/0/to_lateral_mm",
                "/spars/1/from_lateral_mm|1390|/spars/1/to_lateral_mm",
                "/spars/0/inside_diameter_mm|24|/spars/0/inside_diameter_mm",
                "/spars/0/inside_diameter_mm|25|/spars/0/inside_diameter_mm",
                "/spars/0/cap_thickness_mm|1|/spars/0/cap_thickness_mm",
                "/spars/0/material|'unobtainium'|/spars/0/material",
                "/joints/0/lateral_mm|1900|/joints/0/lateral_mm",
                "/joints/0/socket/material|'xps_29'|/joints/0/socket/material",
                "/wing_items/0/lateral_mm|1500|/wing_items/0/lateral_mm",
                "/wing_items/0/mass_g|5000|/takeoff_mass_g",
                "/surfaces/0/surface_chord_mm|250|/surfaces/0/surface_chord_mm",
                "/load_limits/negative_load_factor|-5|/load_limits/negative_load_factor",
                "/speeds/dive_airspeed_m_per_s|20|/speeds/dive_airspeed_m_per_s",
                "/launch/rail_length_m|3|/launch/rail_length_m",
                "/launch/kind|'hand'|/launch/release_speed_m_per_s"
            })
    void whatCannotBeIsRefusedAtItsField(String at, String value, String pointed) {
        Object sent = value.matches("-?[0-9.]+") ? (Object) Double.valueOf(value) : value;
        EXAMPLE.with(at, sent).post().statusCode(422).body("errors.at", hasItem(pointed));
    }

    @Test
    void withoutLimitsTheWingsOwnStrengthIsTheLimit() {
        JsonNode answer = EXAMPLE.without("/load_limits").answer();
        assertThat(answer.at("/limit_load_factor_from").asText()).isEqualTo("wing_strength");
        assertThat(answer.at("/limit_load_factor").asDouble())
                .isCloseTo(answer.at("/weakest/load_factor_at_limit").asDouble(), within(1e-6));
        assertThat(answer.at("/design_load_factor").asDouble()).isEqualTo(3.8);
    }

    @Test
    void aSocketOfUnknownStrengthIsNotPassed() {
        EXAMPLE.without("/joints/0/socket")
                .post()
                .body("verdict", equalTo("attention"))
                .body("findings.code", hasItem("not-judged"));
    }

    @Test
    void aThickerTubeBearsMore() {
        double reserve = EXAMPLE.number("/weakest/reserve_factor");
        assertThat(EXAMPLE.with("/spars/0/outside_diameter_mm", 25).number("/weakest/reserve_factor"))
                .isGreaterThan(reserve);
        assertThat(EXAMPLE.with("/takeoff_mass_g", 7000).number("/weakest/reserve_factor"))
                .isLessThan(reserve);
    }
}
