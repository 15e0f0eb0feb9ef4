package trestle.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashSet;
import java.util.Set;

/** Every place of a request that an answer points at, its parts' too. */
public final class Places {
    private Places() {}

    /** The places of an answer that no request of a schema has. */
    public static Set<String> unknown(JsonNode answer, JsonNode schema) {
        Set<String> places = new LinkedHashSet<>();
        gather(answer, places);
        places.removeIf(at -> Contract.hasPlace(schema, at));
        return places;
    }

    private static void gather(JsonNode answer, Set<String> places) {
        for (String list : new String[] {"findings", "checks", "assumptions"}) {
            for (JsonNode said : answer.path(list)) {
                places.add(said.path("at").asText("no pointer"));
                said.path("give").forEach(at -> places.add(at.asText()));
            }
        }
        for (JsonNode part : answer) {
            if (part.isContainerNode()) {
                gather(part, places);
            }
        }
    }
}
