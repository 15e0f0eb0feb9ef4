package trestle.endpoint.buildreview;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import trestle.contract.Contract;

/**
 * An object of a calculation's request, and where the document of an aircraft has its fields.
 *
 * @param calculation its name
 * @param at the object in its request
 * @param places objects of the document, which together have its fields
 * @param supplied fields that the review puts in, or has no use for
 * @param different fields of the same name that are something else in the review, or have another default
 */
record SharedFields(String calculation, String at, List<String> places, Set<String> supplied, Set<String> different) {
    private SharedFields supplying(String... fields) {
        return new SharedFields(calculation, at, places, Set.of(fields), different);
    }

    private SharedFields differing(String... fields) {
        return new SharedFields(calculation, at, places, supplied, Set.of(fields));
    }

    @Override
    public String toString() {
        return calculation + at;
    }

    /** The object of a calculation. */
    static SharedFields of(String calculation, String at) {
        return all().filter(shared -> shared.toString().equals(calculation + at))
                .findFirst()
                .orElseThrow();
    }

    /** Something else in the review; a wing only has more ways to be described there. */
    private boolean unlike(String field) {
        return different.contains(field) && !field.equals("wing");
    }

    /** What the document says of the object; of a list, by the entry of an index. */
    ObjectNode copied(JsonNode document, int index) {
        ObjectNode copy = JsonNodeFactory.instance.objectNode();
        Map<String, JsonNode> fields = Contract.properties(Contract.at(Contract.request(calculation), at));
        for (String place : places) {
            document.at(place.replace("/0", "/" + index)).properties().forEach(field -> {
                if (fields.containsKey(field.getKey())
                        && !supplied.contains(field.getKey())
                        && !unlike(field.getKey())) {
                    copy.set(field.getKey(), field.getValue().deepCopy());
                }
            });
        }
        return copy;
    }

    /** Whether a place of the document is, or is in, a field that the calculation takes. */
    boolean carries(String pointer) {
        String first = pointer.replaceAll("/[0-9]+(?=/|$)", "/0") + "/";
        Set<String> names = Contract.properties(Contract.at(Contract.request(calculation), at))
                .keySet();
        return places.stream()
                .anyMatch(place -> names.stream()
                        .filter(name -> !supplied.contains(name) && !unlike(name))
                        .anyMatch(name -> first.startsWith(place + "/" + name + "/")));
    }

    /** Every object of every calculation that the review runs. */
    static Stream<SharedFields> all() {
        return Stream.of(
                // Air and flight are the review's; a run of pack current feeds the controller.
                part("wire-sizing", "", List.of("/wiring/0"))
                        .supplying("ambient_c", "altitude_m", "feeds_controller", "flight"),
                // The load is cruise, the leads are the wires of the document.
                part("pack-energy", "", List.of("", "/flight"))
                        .supplying("segments", "load", "ambient_c", "lead_resistance_milliohm")
                        .differing("reserve_percent"),
                part("pack-energy", "/segments/0", List.of("/packs/0")),
                // Before there are panels, span and chord describe the wing.
                part("mass-balance", "", List.of("", "/airframe"))
                        .supplying("fuselage")
                        .differing("wing"),
                // A pack is one piece, and a point.
                part("mass-balance", "/items/0", List.of("/packs/0"))
                        .supplying("quantity", "arm_tolerance_mm", "spread")
                        .differing("mass_g"),
                // Mass and wing are those of the balance; the packs are the energy.
                part("endurance", "", List.of("", "/airframe", "/flight", "/propulsion"))
                        .supplying(
                                "wing_area_dm2",
                                "wing_span_mm",
                                "airframe_kind",
                                "wing_section",
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
                                "wing_area_dm2",
                                "wing_span_mm",
                                "airframe_kind",
                                "wing_section",
                                "wire_current_a",
                                "connector_current_a",
                                "keep")
                        .differing(
                                "full_throttle_duration_s",
                                "airspeed_m_per_s",
                                "never_exceed_airspeed_m_per_s",
                                "takeoff_mass_g"),
                part("rail-budget", "", List.of("")).supplying("supply"),
                // The turn is the contract's default.
                part("launch-and-climb", "", List.of("/airframe", "/flight", "/propulsion"))
                        .supplying(
                                "wing_area_dm2",
                                "wing_span_mm",
                                "airframe_kind",
                                "wing_section",
                                "thrust_curve",
                                "bank_deg",
                                "load_factor",
                                "turn_airspeed_m_per_s"),
                // Airspeed and energy are those of the cruise.
                part("survey-coverage", "", List.of("/survey")).supplying("airspeed_m_per_s", "energy"),
                // The packs are those of the document; they start from one charge, that of the way home.
                part("pack-charge", "", List.of("/charging", "")).supplying("segments"),
                part("compass-clearance", "", List.of("/compass")).differing("runs"),
                // The run is named, and has its currents there; its length is not all beside the compass.
                part("compass-clearance", "/runs/0", List.of("/compass/runs/0"))
                        .supplying("name", "current_a", "peak_current_a", "length_mm"));
    }

    private static SharedFields part(String calculation, String at, List<String> places) {
        return new SharedFields(calculation, at, places, Set.of(), Set.of());
    }
}
