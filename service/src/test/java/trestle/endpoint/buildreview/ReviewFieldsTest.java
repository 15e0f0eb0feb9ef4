package trestle.endpoint.buildreview;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.catalogue.Catalogue;
import trestle.contract.Contract;

/**
 * The document of an aircraft has every field of each calculation that the review runs, with the same
 * range and the same default, but for what the review itself puts in.
 */
class ReviewFieldsTest {
    private static final JsonNode REVIEW = Contract.request("build-review");

<<<<<<< HEAD
    static Stream<SharedFields> parts() {
        return SharedFields.all();
=======
    /**
     * An object of a calculation's request, and where the review has its fields.
     *
     * @param calculation its name
     * @param at the object in its request
     * @param places objects of the review's document, which together have its fields
     * @param supplied fields that the review puts in, or has no use for
     * @param different fields of the same name that are something else in the review, or have another default
     */
    private record Part(
            String calculation, String at, List<String> places, Set<String> supplied, Set<String> different) {
        private Part supplying(String... fields) {
            return new Part(calculation, at, places, Set.of(fields), different);
        }

        private Part differing(String... fields) {
            return new Part(calculation, at, places, supplied, Set.of(fields));
        }

        @Override
        public String toString() {
            return calculation + at;
        }
    }

    static Stream<Part> parts() {
        return Stream.of(
                // Air and flight are the review's; a run of pack current feeds the controller.
                part("wire-sizing", "", List.of("/wiring/0"))
                        .supplying("ambient_c", "altitude_m", "feeds_controller", "flight"),
                // The load is cruise, the leads are the wires of the document.
                part("pack-energy", "", List.of("", "/flight"))
                        .supplying("segments", "load", "ambient_c", "lead_resistance_milliohm")
                        .differing("reserve_percent"),
                part("pack-energy", "/segments/0", List.of("/packs/0")),
                part("mass-balance", "", List.of("", "/airframe")).supplying("fuselage"),
                // Mass and wing are those of the balance; the packs are the energy.
                part("endurance", "", List.of("", "/airframe", "/flight", "/propulsion"))
                        .supplying(
                                "takeoff_mass_g",
                                "wing_area_dm2",
                                "wing_span_mm",
                                "max_takeoff_mass_g",
                                "supply_voltage_v",
                                "power_curve",
                                "calibration",
                                "pack",
                                "usable_energy_wh",
                                "pack_mass_g")
                        .differing("propulsion"),
                part("propulsion-match", "", List.of("/propulsion", "/airframe", "/flight"))
                        .supplying(
                                "supply_voltage_v",
                                "pack",
                                "airspeeds_m_per_s",
                                "thrust_required_n",
                                "takeoff_mass_g",
                                "wing_area_dm2",
                                "wing_span_mm",
                                "never_exceed_airspeed_m_per_s",
                                "wire_current_a",
                                "connector_current_a",
                                "keep")
                        .differing("full_throttle_duration_s", "airspeed_m_per_s"),
                part("rail-budget", "", List.of("")).supplying("supply"),
                // The turn is the contract's default.
                part("launch-and-climb", "", List.of("/airframe", "/flight", "/propulsion"))
                        .supplying(
                                "takeoff_mass_g",
                                "wing_area_dm2",
                                "wing_span_mm",
                                "thrust_curve",
                                "bank_deg",
                                "load_factor",
                                "turn_airspeed_m_per_s",
                                "never_exceed_airspeed_m_per_s"),
                part("compass-clearance", "", List.of("/compass")).differing("runs"),
                // The run is named, and has its currents there; its length is not all beside the compass.
                part("compass-clearance", "/runs/0", List.of("/compass/runs/0"))
                        .supplying("name", "current_a", "peak_current_a", "length_mm"));
>>>>>>> main
    }

    @ParameterizedTest
    @MethodSource("parts")
    void theDocumentHasEveryFieldOfThePart(SharedFields part) {
        Map<String, JsonNode> asked = Contract.properties(Contract.at(Contract.request(part.calculation()), part.at()));
        Set<String> missing = new TreeSet<>(asked.keySet());
        Set<String> other = new TreeSet<>();
        for (String place : part.places()) {
            Contract.properties(Contract.at(REVIEW, place)).forEach((name, schema) -> {
                if (missing.remove(name) && !shape(schema).equals(shape(asked.get(name)))) {
                    other.add(name);
                }
            });
        }
        assertThat(missing).as("fields that the document lacks").isEqualTo(new TreeSet<>(part.supplied()));
        assertThat(other).as("fields that are not the same").isEqualTo(new TreeSet<>(part.different()));
    }

    @Test
    void everyCalculationButTheReviewIsAPart() {
        assertThat(parts().map(SharedFields::calculation).distinct())
                .containsExactlyInAnyOrderElementsOf(Catalogue.calculations().stream()
                        .map(c -> c.name())
                        .filter(name -> !name.equals("build-review"))
                        .toList());
    }

    /** What a field may be, whatever is said of it; a list may be empty in the review. */
    private static JsonNode shape(JsonNode schema) {
        ObjectNode shape = Contract.resolved(schema).deepCopy();
        shape.remove(List.of("description", "example", "required", "additionalProperties", "minItems"));
        if (shape.has("items")) {
            shape.set("items", shape(shape.path("items")));
        }
        if (shape.path("properties") instanceof ObjectNode properties) {
            properties.properties().forEach(field -> field.setValue(shape(field.getValue())));
        }
        return shape;
    }
}
