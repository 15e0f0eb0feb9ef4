package trestle.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** A JSON tree as its plain values by dotted name. */
public final class Flat {
    private Flat() {}

    /** Every plain value, as text. */
    public static Map<String, String> all(JsonNode tree) {
        Map<String, String> values = new LinkedHashMap<>();
        collect("", tree, true, values);
        return values;
    }

    /** The plain values that stand in no list. */
    public static Map<String, String> outsideLists(JsonNode tree) {
        Map<String, String> values = new LinkedHashMap<>();
        collect("", tree, false, values);
        return values;
    }

    private static void collect(String name, JsonNode node, boolean lists, Map<String, String> values) {
        String prefix = name.isEmpty() ? "" : name + ".";
        if (node.isObject()) {
            node.properties().forEach(e -> collect(prefix + e.getKey(), e.getValue(), lists, values));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size() && lists; i++) {
                collect(prefix + i, node.get(i), true, values);
            }
        } else {
            values.put(name, node.asText());
        }
    }
}
