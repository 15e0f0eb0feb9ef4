package trestle.endpoint.buildreview;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.binding.Refusal;
import trestle.catalogue.Catalogue;
import trestle.contract.Contract;
import trestle.contract.End;
import trestle.contract.Trees;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.MissingFields;
import trestle.review.Aircraft;
import trestle.review.Review;

/**
 * A part of a review answers what its calculation answers to the request that the review amounts to,
 * whichever field of the document is changed: a field that the review forgets answers something else.
 */
class ReviewPartsTest {
    private static final BuildReviewEndpoint REVIEW = new BuildReviewEndpoint();
    private static final JsonNode SCHEMA = Contract.request("build-review");

    /** What stands elsewhere, or is said in other names, in the review. */
    private static final List<String> ELSEWHERE =
            List.of("at", "give", "message", "about", "assumptions", "cautions", "computed_by");

    /** What no calculation can be told by itself: cells warmer than the air, and a launch in the wind of a flight. */
    private static final Set<String> ONLY_IN_THE_REVIEW =
            Set.of("/flight/pack_temperature_c", "/flight/launch/wind/from_flight");

    /** Known to be refused as implausible by the calculation alone, until the review does so too. */
    private static final Set<String> KNOWN = Set.of("/propulsion/static_thrust_n most");

    private static final double ROUNDING = 1e-6;

    /**
     * A part of the review.
     *
     * @param calculation its name
     * @param answer place of its answer in the review's
     * @param root the fields below this place of the document only
     * @param request the request that it amounts to
     * @param unseen fields that leave the calculation's answer to this document as it is
     */
    private record Part(
            String calculation,
            String answer,
            String root,
            Function<SingleRequests, ObjectNode> request,
            Set<String> unseen) {
        private Part below(String place) {
            return new Part(calculation, answer, place, request, unseen);
        }

        private Part leaving(String... fields) {
            return new Part(calculation, answer, root, request, Set.of(fields));
        }

        private boolean takes(String at) {
            return at.startsWith(root)
                    && SharedFields.all()
                            .anyMatch(shared -> shared.calculation().equals(calculation) && shared.carries(at));
        }

        @Override
        public String toString() {
            return answer;
        }
    }

    static Stream<Part> parts() {
        return Stream.of(
                // Heights tell only together, and the front of a bay that the pack stays behind does not; the mass of a
                // panel is for loads.
                part("mass-balance", "/mass_balance", SingleRequests::balance)
                        .leaving(
                                "/airframe/tail/vertical_mm",
                                "/airframe/tailless",
                                "/airframe/wing/root_vertical_mm",
                                "/airframe/wing/panels/{}/mass_g",
                                "/packs/{}/movable_from_mm"),
                // What a cell is estimated from touches nothing where all of it is given.
                part("pack-energy", "/pack_energy", SingleRequests::pack)
                        .leaving("/packs/{}/cell/format", "/packs/{}/cell/kind", "/packs/{}/cell/printed_rating_c"),
                // One run lies in a bay, the other in foam; a gauge is of its own system; no capacitance is told.
                part("wire-sizing", "/wire_sizing/0/answer", r -> r.wire(0))
                        .below("/wiring/0")
                        .leaving(
                                "/wiring/{}/foam_wall_mm",
                                "/wiring/{}/gauge_system",
                                "/wiring/{}/peak_duration_s",
                                "/wiring/{}/full_voltage_v",
                                "/wiring/{}/source_resistance_milliohm",
                                "/wiring/{}/precharge/energy_rating_j",
                                "/wiring/{}/precharge/resistance_milliohm"),
                part("wire-sizing", "/wire_sizing/1/answer", r -> r.wire(1))
                        .below("/wiring/1")
                        .leaving(
                                "/wiring/{}/bay_temperature_c",
                                "/wiring/{}/gauge_system",
                                "/wiring/{}/full_voltage_v",
                                "/wiring/{}/source_resistance_milliohm",
                                "/wiring/{}/precharge/energy_rating_j",
                                "/wiring/{}/precharge/resistance_milliohm"),
                part("endurance", "/endurance", SingleRequests::endurance).leaving("/systems_power_w"),
                // A linear regulator takes no efficiency.
                part("rail-budget", "/rail_budget", SingleRequests::rails)
                        .leaving("/rails/{}/essential", "/rails/{}/regulator/kind"),
                // The fields of another kind of launch contradict it.
                part("launch-and-climb", "/launch_and_climb", SingleRequests::launch)
                        .leaving("/flight/launch/dolly_mass_g", "/flight/launch/kind"),
                part("compass-clearance", "/compass_clearance", SingleRequests::compass),
                // At the current of one charger a battery of either kind gives the share that may be drawn.
                part("pack-charge", "/pack_charge", SingleRequests::charge).leaving("/charging/supply/battery/kind"),
                // Rings that are longer or shorter are the same ring again, or none.
                part("survey-coverage", "/survey_coverage", SingleRequests::survey)
                        .leaving("/survey/area/coordinates", "/survey/area/coordinates/{}/{}", "/survey/area/type"));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void aPartAnswersAsItsCalculationDoes(Part part) {
        ObjectNode document = document();
        List<String> wrong = new ArrayList<>();
        Set<String> blind = new TreeSet<>();
        Set<String> seen = new TreeSet<>();
        JsonNode before = told(document, part, "as it is", wrong).orElseThrow(() -> new AssertionError(wrong));
        for (End end : End.of(document, SCHEMA)) {
            if (!part.takes(end.at()) || ONLY_IN_THE_REVIEW.contains(end.field())) {
                continue;
            }
            ObjectNode changed = Trees.with(document, SCHEMA, end.at(), end.value());
            told(changed, part, end.key(), wrong)
                    .ifPresent(after -> (after.equals(before) ? blind : seen).add(end.field()));
        }
        blind.removeAll(seen);
        assertThat(wrong).isEmpty();
        assertThat(blind).isSubsetOf(part.unseen());
    }

    /** What the calculation says, where both it and the review say anything; the review has to say the same. */
    private static Optional<JsonNode> told(JsonNode document, Part part, String which, List<String> wrong) {
        JsonNode whole;
        ObjectNode request;
        try {
            Done<ApiBuildReviewRequest, Aircraft, Review> done =
                    REVIEW.done(Binder.bind(document.deepCopy(), ApiBuildReviewRequest.class));
            whole = Json.MAPPER.valueToTree(REVIEW.answer(done));
            if (whole.at(part.answer()).isMissingNode()) {
                return Optional.empty();
            }
            request = part.request().apply(new SingleRequests(document, done.work()));
        } catch (Refusal | ImpossibleRequest | MissingFields refused) {
            return Optional.empty();
        }
        try {
            JsonNode single = single(Catalogue.named(part.calculation()).orElseThrow(), request);
            difference(single, whole.at(part.answer()), "")
                    .ifPresent(difference -> wrong.add(which + ": " + difference));
            return Optional.of(single);
        } catch (Refusal | MissingFields larger) {
            // A whole aircraft may have more of something than a request of its own takes.
        } catch (ImpossibleRequest refused) {
            if (!KNOWN.contains(which)) {
                wrong.add(which + ": the calculation refuses " + refused.faults());
            }
        }
        return Optional.empty();
    }

    private static <Q, R, W, A> JsonNode single(Calculation<Q, R, W, A> calculation, JsonNode request) {
        return Json.MAPPER.valueToTree(
                calculation.answer(calculation.done(Binder.bind(request.deepCopy(), calculation.requestType()))));
    }

    /** The first place where two answers are not the same. */
    private static Optional<String> difference(JsonNode one, JsonNode other, String at) {
        if (one.isNumber() && other.isNumber()) {
            double off = ROUNDING * Math.max(1e-3, Math.abs(one.asDouble()));
            return Math.abs(one.asDouble() - other.asDouble()) <= off
                    ? Optional.empty()
                    : Optional.of(at + " is " + one + " but " + other);
        }
        if (!one.isContainerNode() || one.size() != other.size()) {
            return one.equals(other) ? Optional.empty() : Optional.of(at + " is " + one + " but " + other);
        }
        if (one.isArray()) {
            for (int i = 0; i < one.size(); i++) {
                var found = difference(one.get(i), other.get(i), at + "/" + i);
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        }
        for (Map.Entry<String, JsonNode> field : one.properties()) {
            if (!ELSEWHERE.contains(field.getKey())) {
                var found = difference(field.getValue(), other.path(field.getKey()), at + "/" + field.getKey());
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** The example, by efficiencies: thrust is a line there, which a launch can be told. */
    private static ObjectNode document() {
        ObjectNode document = (ObjectNode) Contract.example("build-review");
        ObjectNode propulsion = document.putObject("propulsion");
        propulsion
                .putObject("efficiency")
                .put("propeller", 0.66)
                .put("motor", 0.82)
                .put("controller", 0.94);
        propulsion.put("full_throttle_power_w", 700).put("static_thrust_n", 31).put("pitch_speed_m_per_s", 27);
        return document;
    }

    private static Part part(String calculation, String answer, Function<SingleRequests, ObjectNode> request) {
        return new Part(calculation, answer, "", request, Set.of());
    }
}
