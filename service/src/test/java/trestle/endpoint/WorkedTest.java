package trestle.endpoint;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.api.model.ApiWorking;
import trestle.catalogue.Catalogue;
import trestle.finding.Arithmetic;

/** The chains of the examples: complete, sound, and ending at the answers. */
class WorkedTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Three digits, and what the six that are printed leave open where two of them nearly cancel. */
    private static final double THREE_DIGITS = 5e-4;

    /** A few random roundings find most of the worst one, not all of it. */
    private static final double WORSE_THAN_DRAWN = 2;

    static List<Calculation<?, ?, ?, ?>> calculations() {
        return Catalogue.calculations();
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void everyLineOfTheExampleIsWhole(Calculation<?, ?, ?, ?> calculation) throws IOException {
        assertThat(workings(calculation))
                .hasSizeGreaterThan(Catalogue.isStudy(calculation) ? 1 : 3)
                .allSatisfy(line -> {
                    assertThat(line.symbol()).isNotBlank();
                    assertThat(line.meaning()).isNotBlank();
                    assertThat(line.expression()).startsWith(line.symbol()).hasLineCount(1);
                    assertThat(line.value()).isFinite();
                    assertThat(line.unit()).isNotBlank();
                    assertThat(line.source()).isNotBlank();
                });
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void everyExpressionComesToItsValue(Calculation<?, ?, ?, ?> calculation) throws IOException {
        int redone = 0;
        for (ApiWorking line : workings(calculation)) {
            if (!line.expression().startsWith(line.symbol() + ":")) {
                String numbers = line.expression().substring(line.expression().lastIndexOf(" = ") + 3);
                double off = THREE_DIGITS * Math.max(Math.abs(line.value()), 1e-9)
                        + WORSE_THAN_DRAWN * Arithmetic.roundingOf(numbers);
                assertThat(Arithmetic.of(numbers)).as(line.expression()).isCloseTo(line.value(), Offset.offset(off));
                redone++;
            }
        }
        assertThat(redone).isGreaterThan(Catalogue.isStudy(calculation) ? 1 : 3);
    }

    /** Each answer's main numbers stand in its chain, in the same unit. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    mass-balance | m | /total_mass_g
                    mass-balance | x_cg | /cg_arm_mm
                    mass-balance | dm | /total_mass_tolerance_g
                    mass-balance | dx | /cg_arm_tolerance_mm
                    mass-balance | S | /wing_area_dm2
                    mass-balance | c | /mean_aerodynamic_chord_mm
                    mass-balance | x | /mac_leading_edge_arm_mm
                    mass-balance | p_cg | /cg_percent_mac
                    mass-balance | w | /wing_loading_g_per_dm2
                    mass-balance | x_np | /neutral_point_arm_mm
                    mass-balance | SM | /static_margin_percent
                    survey-coverage | G | /ground_sample_distance_cm
                    survey-coverage | W | /footprint/width_m
                    survey-coverage | L | /footprint/height_m
                    survey-coverage | B | /trigger_distance_m
                    survey-coverage | D | /line_spacing_m
                    survey-coverage | t | /trigger_interval_s
                    survey-coverage | b | /motion_blur_px
                    survey-coverage | X | /line_length_km
                    survey-coverage | T | /flight_time_s
                    pack-charge | t_80 | /time_to_80_percent_h
                    pack-charge | t_full | /time_to_full_h
                    pack-charge | E | /energy_in_wh
                    pack-charge | E_s | /supply/energy_wh
                    pack-charge | Q_s | /supply/charge_ah
                    pack-charge | t_b | /balance/extra_h
                    pack-charge | T_max | /highest_temperature_c
                    pack-energy | N | /series_count
                    pack-energy | V_nom | /nominal_voltage_v
                    pack-energy | V_c | /cutoff_voltage_v
                    pack-energy | Q | /capacity_ah
                    pack-energy | E_nom | /nominal_energy_wh
                    pack-energy | m | /pack_mass_g
                    pack-energy | V_start | /voltage_at_start_v
                    pack-energy | E | /usable_energy_wh
                    pack-energy | E_s | /energy_below_cutoff_wh
                    pack-energy | E_r | /reserve_energy_wh
                    pack-energy | t | /duration_s
                    pack-energy | e | /specific_energy_wh_per_kg
                    pack-energy | C | /c_rate
                    pack-energy | t_ch | /charge_time_h
                    wire-sizing | A | /recommended/area_mm2
                    wire-sizing | R | /recommended/resistance_milliohm
                    wire-sizing | T_c | /recommended/conductor_temperature_c
                    wire-sizing | p_d | /recommended/drop_percent
                    wire-sizing | V_w | /recommended/drop_v
                    wire-sizing | P | /recommended/loss_w
                    wire-sizing | m | /recommended/mass_g
                    wire-sizing | E | /recommended/energy_cost_wh
                    wire-sizing | I_max | /recommended/ampacity_a
                    wire-sizing | V_d | /total_drop_v
                    endurance | V_s | /stall_speed_m_per_s
                    endurance | rho | /air_density_kg_per_m3
                    endurance | P_e | /best_endurance/power_w
                    endurance | h_e | /best_endurance/endurance_h
                    endurance | G_e | /best_endurance/ground_range_km
                    endurance | V_r | /best_range/airspeed_m_per_s
                    endurance | G_r | /best_range/ground_range_km
                    endurance | c_r | /best_range/energy_wh_per_km
                    endurance | E | /energy/available_wh
                    endurance | E_r | /energy/reserve_wh
                    propulsion-match | T_s | /static/thrust_n
                    propulsion-match | W_s | /static/electrical_power_w
                    propulsion-match | W_c | /cruise/electrical_power_w
                    propulsion-match | et_c | /cruise/drive_efficiency
                    propulsion-match | V_p | /pitch_speed_m_per_s
                    rail-budget | I_1 | /rails/0/typical_a
                    rail-budget | K_1 | /rails/0/peak_a
                    rail-budget | H_1 | /rails/0/heat_w
                    rail-budget | P | /systems_power_w
                    rail-budget | Q | /peak_power_w
                    flight-review | P_m | /mean_power_w
                    flight-review | Q_v | /contradiction/charge_shown_ah
                    flight-review | f_q | /contradiction/true_over_counted_charge_ratio
                    flight-review | k_3 | /calibration/parasite_power_coefficient
                    flight-review | P_V | /steady_power/power_w
                    launch-and-climb | V_s | /stall_speed_m_per_s
                    launch-and-climb | w | /launch/launch_lull_m_per_s
                    launch-and-climb | V_0 | /launch/release_airspeed_in_lull_m_per_s
                    launch-and-climb | F_h | /launch/hook_force_n
                    launch-and-climb | n_p | /launch/peak_load_factor
                    launch-and-climb | E_c | /launch/cord_energy_j
                    launch-and-climb | M | /launch/margin_percent
                    launch-and-climb | R | /climb/rate_m_per_s
                    launch-and-climb | Z | /glide/best_ratio
                    launch-and-climb | Y | /glide/least_sink_m_per_s
                    launch-and-climb | B | /turn_radius_m
                    launch-and-climb | E | /kinetic_energy_j
                    compass-clearance | B_1 | /runs/0/field_ut
                    compass-clearance | B_w | /worst_case/field_ut
                    compass-clearance | e_w | /worst_case/heading_error_deg
                    compass-clearance | B_l | /likely/field_ut
                    compass-clearance | D_w | /worst_case/least_distance_mm
                    airframe-loads | V_S | /stall_speed_m_per_s
                    airframe-loads | mu | /gust/mass_ratio
                    airframe-loads | K_g | /gust/alleviation_factor
                    airframe-loads | V_r | /stations/0/shear_n
                    airframe-loads | M_r | /stations/0/bending_n_m
                    airframe-loads | R | /weakest/reserve_factor
                    airframe-loads | n_f | /weakest/load_factor_at_failure
                    airframe-loads | V_A | /manoeuvre_speed_m_per_s
                    airframe-loads | F_p | /proof_test/half_wing_load_n
                    airframe-loads | M_p | /proof_test/root_bending_n_m
                    """)
    void chainEndsAtTheAnswer(String name, String symbol, String pointer) throws IOException {
        Calculation<?, ?, ?, ?> calculation = Catalogue.named(name).orElseThrow();
        JsonNode told = MAPPER.valueToTree(answer(calculation)).at(pointer);
        assertThat(told.isNumber()).as(pointer).isTrue();
        double worked = workings(calculation).stream()
                .filter(line -> line.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value();
        assertThat(worked).isCloseTo(told.asDouble(), Offset.offset(1e-9 * Math.abs(worked)));
    }

    @Test
    void checkedGaugeHasAChainOfItsOwn() throws IOException {
        Calculation<?, ?, ?, ?> calculation = Catalogue.named("wire-sizing").orElseThrow();
        JsonNode checked = MAPPER.valueToTree(answer(calculation)).get("checked");
        assertThat(workings(calculation))
                .filteredOn(line ->
                        line.meaning().startsWith("AWG " + checked.get("gauge").asText()))
                .filteredOn(line -> line.symbol().equals("P"))
                .singleElement()
                .extracting(ApiWorking::value)
                .isEqualTo(checked.get("loss_w").asDouble());
    }

    @Test
    void reviewNamesThePartOfEachLine() throws IOException {
        assertThat(workings(Catalogue.named("build-review").orElseThrow()))
                .extracting(line -> line.meaning().split("[:,]")[0])
                .containsSubsequence("mass-balance", "endurance", "wire-sizing", "pack-energy", "launch-and-climb");
    }

    private static <Q, R, W> List<ApiWorking> workings(Calculation<Q, R, W, ?> calculation) throws IOException {
        return calculation.workings(calculation.done(request(calculation)));
    }

    private static <Q, R, W, A> A answer(Calculation<Q, R, W, A> calculation) throws IOException {
        return calculation.answer(calculation.done(request(calculation)));
    }

    private static <Q> Q request(Calculation<Q, ?, ?, ?> calculation) throws IOException {
        Path folder = Path.of("..", "api-spec", "examples", calculation.name());
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.request.json")) {
            JsonNode example =
                    MAPPER.readTree(Files.readString(files.iterator().next())).get("value");
            return MAPPER.treeToValue(example, calculation.requestType());
        }
    }
}
