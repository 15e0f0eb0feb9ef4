package trestle.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The rules that the bundled contract keeps; a broken rule names the place. */
class ContractRulesTest {
    private static final String UNIT_SUFFIX =
            ".*_(g|mm|dm2|km2|cm|px|g_per_dm2|in|m|km|m_per_s|s|min|h|days|percent|percent_mac|percent_of_earth|ah|wh|w|v|a|milliohm|mm2|c|hpa|deg|rpm|n|n_m|rpm_per_v|ut|uf|wh_per_km|wh_per_kg|w_per_kg|g_mm|kg_m2|kg_per_m3|j|bytes|n_per_m|mm_per_min|milliohm_per_m|g_per_m|milliohm_ah|w_per_m_k|j_per_kg_k|pa_s|k_per_w|k|m_per_s2|mpa|percent_chord)";

    /** The unit stands for the quantity, as the trade has it. */
    private static final Set<String> NAMED_BY_UNIT = Set.of("rpm");

    /** What says by its last word that it has no dimension. */
    private static final String PURE = "(.*_)?(ratio|coefficient|efficiency|count)";

    /** Other numbers without a dimension, counts, and what stands for a number of either kind. */
    private static final Set<String> DIMENSIONLESS = Set.of(
            "value",
            "channels",
            "overrun_photos",
            "lines",
            "photos",
            "flights_needed",
            "flights_needed_at_high_power",
            "first_line",
            "last_line",
            "max_series_cells",
            "charges",
            "limit",
            "median",
            "low",
            "high",
            "p10",
            "p50",
            "p90",
            "picked",
            "friction_coefficient_low",
            "friction_coefficient_high",
            "zero_lift_coefficient_low",
            "zero_lift_coefficient_high",
            "wetted_over_wing_area",
            "crossings",
            "runs",
            "from",
            "to",
            "points",
            "failed",
            "steps",
            "index",
            "of",
            "at",
            "values",
            "change_per_unit",
            "samples",
            "seed",
            "draws",
            "mean",
            "standard_deviation",
            "factor",
            "mode",
            "percent",
            "percentiles",
            "change_per_percent",
            "status",
            "line",
            "quantity",
            "series",
            "parallel",
            "counted_cells",
            "parallel_wires",
            "bundled_conductors",
            "propeller",
            "motor",
            "controller",
            "load_factor",
            "max_load_factor",
            "positive_load_factor",
            "negative_load_factor",
            "proof_load_factor",
            "limit_load_factor",
            "design_load_factor",
            "gust_up_load_factor",
            "gust_down_load_factor",
            "load_factor_at_cruise",
            "load_factor_at_never_exceed",
            "load_factor_at_limit",
            "load_factor_at_failure",
            "forward_load_factor",
            "factor_of_safety",
            "peak_factor",
            "reserve_factor",
            "bearing_reserve_factor",
            "alleviation_factor",
            "knockdown",
            "shear_knockdown",
            "lift_fraction",
            "lift_slope_per_rad",
            "mean_load_factor",
            "peak_load_factor",
            "rolling_resistance",
            "sliding_friction",
            "c_rate",
            "charge_c_rate",
            "parasite_power_coefficient",
            "induced_power_coefficient",
            "r_squared",
            "roll",
            "pitch",
            "yaw",
            "blades",
            "thrust_to_weight",
            "tip_mach");

    /** Words that are a standard's: GeoJSON, RFC 7946. */
    private static final Set<String> OF_A_STANDARD = Set.of("Polygon", "MultiLineString");

    /** What the HTTP layer takes in a query beside the fields of a calculation. */
    private static final Set<String> RESERVED =
            Set.of("as", "pick", "errors", "workings", "cautions", "theme", "bands", "estimates", "part", "run");

    private static JsonNode contract;

    @BeforeAll
    static void read() throws IOException {
        try (InputStream in = ContractRulesTest.class.getResourceAsStream("/trestle/api/openapi.json")) {
            contract = new ObjectMapper().readTree(in);
        }
    }

    @Test
    void everyOperationSaysWhatItDoesAndHowItFails() {
        List<String> broken = new ArrayList<>();
        eachOperation((place, operation) -> {
            for (String field : List.of("summary", "description", "operationId", "tags")) {
                if (operation.path(field).isMissingNode()) {
                    broken.add(place + " has no " + field);
                }
            }
            boolean failure = stream(operation.path("responses")).stream()
                    .anyMatch(e -> e.getKey().matches("[45].."));
            if (!failure) {
                broken.add(place + " documents no failure");
            }
        });
        assertThat(broken).isEmpty();
    }

    @Test
    void everyFailureIsProblemDetails() {
        List<String> broken = new ArrayList<>();
        eachOperation((place, operation) -> {
            for (Map.Entry<String, JsonNode> response : stream(operation.path("responses"))) {
                JsonNode content = resolve(response.getValue()).path("content");
                if (response.getKey().matches("[45]..") && !content.has("application/problem+json")) {
                    broken.add(place + " " + response.getKey());
                }
            }
        });
        assertThat(broken).isEmpty();
    }

    @Test
    void everyCalculationHasAnExample() {
        List<String> broken = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : stream(contract.path("paths"))) {
            JsonNode body = path.getValue().path("post").path("requestBody");
            if (body.isObject()) {
                JsonNode examples = body.at("/content").path("application/json").path("examples");
                if (examples.isEmpty()
                        || !resolve(examples.iterator().next()).path("value").isObject()) {
                    broken.add(path.getKey());
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    @Test
    void everyFieldIsDescribedWithAnExample() {
        List<String> broken = new ArrayList<>();
        eachProperty(schemas(), (place, property) -> {
            if (property.has("$ref")) {
                return;
            }
            if (property.path("description").asText().length() < 5) {
                broken.add(place + " has no description");
            }
            if (!property.has("example")) {
                broken.add(place + " has no example");
            }
        });
        assertThat(broken).isEmpty();
    }

    @Test
    void everyNumberIsADoubleOrACountAndNamesItsUnit() {
        List<String> broken = new ArrayList<>();
        eachProperty(schemas(), (place, property) -> {
            String name = place.substring(place.lastIndexOf('.') + 1);
            String type = property.path("type").asText();
            if (type.equals("number") && !property.path("format").asText().equals("double")) {
                broken.add(place + " is a number without format double");
            }
            boolean numeric = type.equals("number") || type.equals("integer");
            boolean named = name.matches(UNIT_SUFFIX) || NAMED_BY_UNIT.contains(name);
            boolean pure = name.matches(PURE) || DIMENSIONLESS.contains(name);
            if (numeric && !named && !pure) {
                broken.add(place + " ends in no unit and is not listed as DIMENSIONLESS");
            }
        });
        assertThat(broken).isEmpty();
    }

    @Test
    void requestsAreClosedAndBounded() {
        List<String> broken = new ArrayList<>();
        Set<String> requests = reachableFromRequests();
        for (String name : requests) {
            JsonNode schema = contract.at("/components/schemas").path(name);
            if (schema.has("properties") && !schema.path("additionalProperties").isBoolean()) {
                broken.add(name + " is open");
            }
        }
        eachProperty(requests, (place, property) -> {
            switch (property.path("type").asText()) {
                case "number", "integer" -> rangeOf(place, property, broken);
                case "string" -> {
                    if (!property.has("maxLength") && !property.has("enum")) {
                        broken.add(place + " has no greatest length");
                    }
                }
                case "array" -> {
                    if (!property.has("maxItems")) {
                        broken.add(place + " has no greatest size");
                    }
                    if (!property.at("/items/type").isMissingNode()) {
                        rangeOf(place + "[]", property.path("items"), broken);
                    }
                }
                default -> {}
            }
        });
        assertThat(broken).isEmpty();
    }

    private static void rangeOf(String place, JsonNode number, List<String> broken) {
        boolean numeric = number.path("type").asText().matches("number|integer");
        if (numeric && !(number.has("minimum") && number.has("maximum"))) {
            broken.add(place + " has no range");
        }
    }

    @Test
    void namesAreSnakeCase() {
        List<String> broken = new ArrayList<>();
        eachProperty(schemas(), (place, property) -> {
            String name = place.substring(place.lastIndexOf('.') + 1);
            if (!name.matches("[a-z][a-z0-9]*(_[a-z0-9]+)*")) {
                broken.add(place);
            }
        });
        for (String name : schemas()) {
            JsonNode words = contract.at("/components/schemas").path(name).path("enum");
            for (JsonNode word : words) {
                if (!OF_A_STANDARD.contains(word.asText()) && !word.asText().matches("[a-z0-9]+([_-][a-z0-9]+)*")) {
                    broken.add(name + " = " + word.asText());
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    @Test
    void defaultsAndExamplesLieWithinTheirRanges() {
        List<String> broken = new ArrayList<>();
        eachProperty(schemas(), (place, property) -> {
            for (String field : List.of("default", "example")) {
                JsonNode value = property.path(field);
                if (value.isNumber()
                        && (value.asDouble() < property.path("minimum").asDouble(-1e300)
                                || value.asDouble() > property.path("maximum").asDouble(1e300))) {
                    broken.add(place + " " + field + " " + value);
                }
            }
        });
        assertThat(broken).isEmpty();
    }

    @Test
    void noReferenceDangles() {
        List<String> broken = new ArrayList<>();
        for (JsonNode reference : contract.findValues("$ref")) {
            if (contract.at(reference.asText().substring(1)).isMissingNode()) {
                broken.add(reference.asText());
            }
        }
        assertThat(broken).isEmpty();
    }

    @Test
    void everyCalculationCanBeGotWithTheSameAnswer() {
        List<String> broken = new ArrayList<>();
        eachCalculation((path, item) -> {
            JsonNode get = item.path("get");
            if (!parameters(get).containsAll(Set.of("fields", "as", "pick", "errors", "theme", "cautions"))) {
                broken.add("get " + path + " lacks a parameter: " + parameters(get));
            }
            for (JsonNode parameter : get.path("parameters")) {
                JsonNode fields = resolve(parameter);
                if (fields.path("name").asText().equals("fields")
                        && (fields.path("example").isEmpty()
                                || !fields.path("explode").asBoolean())) {
                    broken.add("get " + path + " shows no query");
                }
            }
            if (!answer(get).equals(answer(item.path("post")))) {
                broken.add("get " + path + " has another answer than post");
            }
        });
        assertThat(broken).isEmpty();
    }

    @Test
    void everyCalculationTakesBatchesAndTheSameOptions() {
        List<String> broken = new ArrayList<>();
        eachCalculation((path, item) -> {
            JsonNode post = item.path("post");
            for (String type : List.of("application/x-ndjson", "text/csv")) {
                if (!post.at("/requestBody/content").has(type)
                        || !post.at("/responses/200/content").has(type)) {
                    broken.add("post " + path + " has no " + type);
                }
            }
            if (!parameters(post).containsAll(Set.of("as", "pick", "errors", "theme", "cautions"))) {
                broken.add("post " + path + " lacks a parameter: " + parameters(post));
            }
        });
        assertThat(broken).isEmpty();
    }

    @Test
    void noRequestHasAFieldOfAReservedName() {
        List<String> broken = new ArrayList<>();
        eachCalculation((path, item) -> {
            JsonNode body = item.at("/post/requestBody/content").path("application/json");
            for (Map.Entry<String, JsonNode> field :
                    stream(resolve(body.path("schema")).path("properties"))) {
                // In a query a list has its index in its names: pick.0 is no pick.
                boolean list = field.getValue().path("type").asText().equals("array");
                if (!list && RESERVED.contains(field.getKey())) {
                    broken.add(path + " " + field.getKey());
                }
            }
        });
        assertThat(broken).isEmpty();
    }

    private static void eachCalculation(BiConsumer<String, JsonNode> visitor) {
        for (Map.Entry<String, JsonNode> path : stream(contract.path("paths"))) {
            if (path.getValue().has("post")) {
                visitor.accept(path.getKey(), path.getValue());
            }
        }
    }

    private static Set<String> parameters(JsonNode operation) {
        Set<String> names = new LinkedHashSet<>();
        operation
                .path("parameters")
                .forEach(p -> names.add(resolve(p).path("name").asText()));
        return names;
    }

    private static JsonNode answer(JsonNode operation) {
        return operation.at("/responses/200/content").path("application/json").path("schema");
    }

    private static void eachOperation(BiConsumer<String, JsonNode> visitor) {
        for (Map.Entry<String, JsonNode> path : stream(contract.path("paths"))) {
            for (Map.Entry<String, JsonNode> operation : stream(path.getValue())) {
                visitor.accept(operation.getKey() + " " + path.getKey(), operation.getValue());
            }
        }
    }

    private static void eachProperty(Set<String> schemas, BiConsumer<String, JsonNode> visitor) {
        for (String name : schemas) {
            JsonNode schema = contract.at("/components/schemas").path(name);
            List<JsonNode> parts = new ArrayList<>(List.of(schema));
            schema.path("allOf").forEach(parts::add);
            for (JsonNode part : parts) {
                for (Map.Entry<String, JsonNode> property : stream(part.path("properties"))) {
                    visitor.accept(name + "." + property.getKey(), property.getValue());
                }
            }
        }
    }

    private static Set<String> schemas() {
        Set<String> names = new LinkedHashSet<>();
        contract.at("/components/schemas").fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static Set<String> reachableFromRequests() {
        Deque<String> open = new ArrayDeque<>();
        schemas().stream().filter(name -> name.endsWith("Request")).forEach(open::add);
        Set<String> seen = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            String name = open.pop();
            if (seen.add(name)) {
                for (JsonNode reference :
                        contract.at("/components/schemas").path(name).findValues("$ref")) {
                    open.add(reference.asText().replaceFirst(".*/", ""));
                }
            }
        }
        return seen;
    }

    private static JsonNode resolve(JsonNode node) {
        return node.has("$ref") ? contract.at(node.path("$ref").asText().substring(1)) : node;
    }

    private static Set<Map.Entry<String, JsonNode>> stream(JsonNode object) {
        return object.properties();
    }
}
