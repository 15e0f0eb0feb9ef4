package trestle.http;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The query of a request: what is asked of the front door, and the fields of the calculation.
 *
 * @param options parameters whose names are reserved for the front door
 * @param fields all other parameters, in their order
 */
record Query(List<Parameter> options, List<Parameter> fields) {
    /** Names that no request of a calculation may use for a field of its own. */
    static final List<String> RESERVED = List.of("as", "pick", "errors", "workings", "theme");

    /**
     * A parameter, decoded.
     *
     * @param name its name
     * @param value its value, never blank: an empty cell of a spreadsheet means absent
     */
    record Parameter(String name, String value) {}

    /** Copies the lists. */
    Query {
        options = List.copyOf(options);
        fields = List.copyOf(fields);
    }

    /** Reads the part of an address behind its question mark; null where there is none. */
    static Query of(String raw) {
        List<Parameter> options = new ArrayList<>();
        List<Parameter> fields = new ArrayList<>();
        for (String pair : raw == null ? new String[0] : raw.split("&")) {
            int sign = pair.indexOf('=');
            String name = decoded(sign < 0 ? pair : pair.substring(0, sign));
            String value = sign < 0 ? "" : decoded(pair.substring(sign + 1));
            if (!name.isEmpty() && !value.isBlank()) {
                (RESERVED.contains(name) ? options : fields).add(new Parameter(name, value));
            }
        }
        return new Query(options, fields);
    }

    /** Refuses parameters that a request with a body has no use for. */
    void requireNoFields() {
        Faults faults = new Faults();
        for (Parameter field : fields) {
            faults.add(
                    FieldPath.ofDotted(field.name).pointer(),
                    "unknown_parameter",
                    () -> Nearest.to(field.name, RESERVED, "a parameter beside a body"));
        }
        faults.refuseIfAny(Problems.Kind.INVALID_REQUEST);
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            throw new Refusal(Problems.Kind.MALFORMED_QUERY, "a percent sign must be followed by two digits");
        }
    }
}
