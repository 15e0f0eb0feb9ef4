package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables behind the numbers, as a caller looks them up. */
class ReferenceHttpTest {
    /** Each table is fetched once: holding hundreds of rows against the contract takes a while. */
    private static final Map<String, JsonNode> READ = new HashMap<>();

    /** See reference/awg/README.md. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/awg/conductors.csv", numLinesToSkip = 1)
    void americanGaugesHaveThePublishedDiameter(String gauge, double diameterIn) throws IOException {
        assertThat(conductor("awg", r -> r.path("gauge").asText().equals(gauge))
                        .path("solid_diameter_mm")
                        .asDouble())
                .isCloseTo(diameterIn * 25.4, withPercentage(0.06));
    }

    /** See reference/iec60228/README.md; Ω/km and mΩ/m are the same number. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/iec60228/class5.csv", numLinesToSkip = 1)
    void metricConductorsHaveThePublishedResistance(double areaMm2, double ohmPerKm) throws IOException {
        JsonNode row = conductor("metric", r -> r.path("area_mm2").asDouble() == areaMm2);
        assertThat(row.path("resistance_milliohm_per_m").asDouble()).isCloseTo(ohmPerKm, within(1e-6));
    }

    /** ISA, five digits (ICAO Doc 7488); 100 m is 14.35 °C by the lapse rate of 6.5 K/km. */
    @ParameterizedTest
    @CsvSource({
        "0, 15, 1013.25, 1.2250, 340.29",
        "100, 14.35, 1001.29, 1.2133, 339.91",
        "11000, -56.5, 226.32, 0.36392, 295.07"
    })
    void theAtmosphereHasThePublishedRows(
            double altitudeM, double temperatureC, double pressureHpa, double densityKgPerM3, double soundMPerS)
            throws IOException {
        JsonNode row = row("standard-atmosphere", "altitude_m", String.valueOf(altitudeM));
        assertThat(row.path("temperature_c").asDouble()).isCloseTo(temperatureC, within(1e-6));
        assertThat(row.path("pressure_hpa").asDouble()).isCloseTo(pressureHpa, within(0.005));
        assertThat(row.path("air_density_kg_per_m3").asDouble()).isCloseTo(densityKgPerM3, within(5e-5));
        assertThat(row.path("speed_of_sound_m_per_s").asDouble()).isCloseTo(soundMPerS, within(0.006));
    }

    @Test
    void theAtmosphereCoversTheWholeRangeOfAltitudes() throws IOException {
        JsonNode rows = rows("standard-atmosphere");
        assertThat(rows).hasSize(211);
        assertThat(rows.get(0).path("altitude_m").asDouble()).isEqualTo(-1000);
        assertThat(rows.get(210).path("altitude_m").asDouble()).isEqualTo(20_000);
    }

    /** Ratings by their names; conductivities are 1/5.0, 1/6.0 and 1/3.5 K m/W (IEC 60287-2-1). */
    @ParameterizedTest
    @CsvSource({"pvc_80, pvc, 80, 0.1667", "xlpe_125, xlpe, 125, 0.2857", "silicone_200, silicone, 200, 0.2"})
    void insulationsAreThoseThatWireSizingTakes(
            String insulation, String material, double ratingC, double conductivityWPerMK) throws IOException {
        JsonNode row = row("insulations", "insulation", insulation);
        assertThat(row.path("material").asText()).isEqualTo(material);
        assertThat(row.path("rating_c").asDouble()).isCloseTo(ratingC, within(1e-6));
        assertThat(row.path("conductivity_w_per_m_k").asDouble()).isCloseTo(conductivityWPerMK, withPercentage(2.1));
    }

    /** Rows of the table that a source states; the rest is from memory and says so. */
    @ParameterizedTest
    @CsvSource({
        "eps_foam, 74, surface, ASTM C578",
        "polyamide, 80, conductor, plastics table",
        "solder_tin_lead, 110, conductor, from memory",
        "skin, 51, surface, ISO 13732-1"
    })
    void whatAWireTouchesHasALimitAndASource(String material, double limitC, String side, String source)
            throws IOException {
        JsonNode row = row("contact-temperatures", "material", material);
        assertThat(row.path("limit_c").asDouble()).isCloseTo(limitC, within(1e-9));
        assertThat(row.path("side").asText()).isEqualTo(side);
        assertThat(row.path("source").asText()).contains(source);
    }

    /** By hand, of ISO 8820-3's shares from memory: a 50 A fuse for good, in a peak, and its wire. */
    @Test
    void aFuseCarriesAShareOfItsRatingByTheLengthOfAPeak() throws IOException {
        JsonNode row = row("fuses", "rated_current_a", "50.0");
        assertThat(row.path("continuous_current_a").asDouble()).isCloseTo(37.5, within(1e-9));
        assertThat(row.path("peak_to_40_ms_a").asDouble()).isCloseTo(175, within(1e-9));
        assertThat(row.path("peak_to_150_ms_a").asDouble()).isCloseTo(100, within(1e-9));
        assertThat(row.path("peak_to_750_ms_a").asDouble()).isCloseTo(67.5, within(1e-9));
        assertThat(row.path("longer_peak_a").asDouble()).isCloseTo(55, within(1e-9));
        assertThat(row.path("least_wire_ampacity_a").asDouble()).isCloseTo(67.5, within(1e-9));
    }

    @Test
    void largerConnectorsHaveLessResistance() throws IOException {
        JsonNode rows = rows("connectors");
        assertThat(rows).hasSize(5);
        assertThat(row("connectors", "rated_current_a", "60.0")
                        .path("contact_resistance_milliohm")
                        .asDouble())
                .isEqualTo(0.5);
        for (int i = 1; i < rows.size(); i++) {
            assertThat(rows.get(i).path("contact_resistance_milliohm").asDouble())
                    .isLessThan(
                            rows.get(i - 1).path("contact_resistance_milliohm").asDouble());
        }
    }

    @ParameterizedTest
    @CsvSource({"li_ion, 3.6, 4.2", "lipo, 3.7, 4.2", "lfp, 3.2, 3.65"})
    void aChemistryRestsBetweenItsVoltagesAndRisesWithCharge(String chemistry, double nominalV, double fullV)
            throws IOException {
        JsonNode row = row("cell-chemistries", "chemistry", chemistry);
        assertThat(row.path("nominal_voltage_v").asDouble()).isEqualTo(nominalV);
        assertThat(row.path("full_voltage_v").asDouble()).isEqualTo(fullV);
        double before = row.path("minimum_voltage_v").asDouble() - 0.01;
        double sumV = 0;
        for (JsonNode point : row.path("open_circuit_curve")) {
            double voltageV = point.path("voltage_v").asDouble();
            assertThat(voltageV).isGreaterThan(before).isLessThan(fullV + 0.01);
            before = voltageV;
            sumV += voltageV;
        }
        // The label is the mean of a loaded discharge; a rest curve lies a little above it.
        assertThat(sumV / row.path("open_circuit_curve").size() - nominalV).isBetween(-0.05, 0.2);
    }

    /** What the table says of a cell, given as a cell of one's own, gives that cell's answer. */
    @Test
    void aChemistrysCurveCanBeGivenBackAsACustomCell() throws IOException {
        JsonNode row = row("cell-chemistries", "chemistry", "li_ion");
        double ownWh = usableWh("\"chemistry\":\"li_ion\"");
        double givenBackWh = usableWh(
                "\"chemistry\":\"custom\",\"minimum_voltage_v\":2.5,\"full_voltage_v\":4.2,\"open_circuit_curve\":"
                        + row.path("open_circuit_curve"));
        // 21 points with straight lines between: half a percent of the energy.
        assertThat(givenBackWh).isCloseTo(ownWh, withPercentage(0.5));
    }

    private static double usableWh(String cell) throws IOException {
        String request = "{\"segments\":[{\"series\":6,\"parallel\":4,\"cell\":{\"capacity_ah\":4.9,"
                + cell
                + "}}],\"load\":{\"power_w\":150}}";
        return tree(LiveService.lawful().body(request).post("/v1/pack-energy").asByteArray())
                .path("usable_energy_wh")
                .asDouble();
    }

    private static JsonNode conductor(String system, Predicate<JsonNode> wanted) throws IOException {
        return row(
                "wire-gauges",
                wanted.and(row -> row.path("gauge_system").asText().equals(system)));
    }

    private static JsonNode row(String table, String field, String value) throws IOException {
        return row(table, row -> row.path(field).asText().equals(value));
    }

    /** The only such row. */
    private static JsonNode row(String table, Predicate<JsonNode> wanted) throws IOException {
        List<JsonNode> found = new ArrayList<>();
        rows(table).forEach(row -> found.add(row));
        found.removeIf(wanted.negate());
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static JsonNode rows(String table) throws IOException {
        JsonNode known = READ.get(table);
        if (known == null) {
            known = tree(LiveService.lawful()
                    .get("/v1/reference/" + table)
                    .then()
                    .statusCode(200)
                    .extract()
                    .asByteArray());
            READ.put(table, known);
        }
        return known.path("rows");
    }

    private static JsonNode tree(byte[] body) throws IOException {
        return new ObjectMapper().readTree(body);
    }
}
