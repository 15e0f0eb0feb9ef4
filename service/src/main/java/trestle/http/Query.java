package trestle.http;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import trestle.binding.DottedField;
import trestle.binding.Faults;
import trestle.binding.FieldPath;
import trestle.binding.Nearest;
import trestle.binding.Reason;

/**
 * The query of a request: what is asked of the HTTP layer, and the fields of the calculation.
 *
 * @param options parameters whose names are reserved for the HTTP layer
 * @param fields all other parameters, in their order
 */
record Query(List<Parameter> options, List<DottedField> fields) {
    /** Names that no request of a calculation may use for a field of its own. */
    static final List<String> RESERVED =
            List.of("as", "pick", "errors", "workings", "cautions", "theme", "bands", "estimates", "part", "run");

    /**
     * A parameter for the HTTP layer, decoded.
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
        List<DottedField> fields = new ArrayList<>();
        for (String pair : raw == null ? new String[0] : raw.split("&")) {
            int sign = pair.indexOf('=');
            String name = decoded(sign < 0 ? pair : pair.substring(0, sign));
            String value = sign < 0 ? "" : decoded(pair.substring(sign + 1));
            if (name.isEmpty() || value.isBlank()) {
                continue;
            }
            if (RESERVED.contains(name)) {
                options.add(new Parameter(name, value));
            } else {
                fields.add(new DottedField(name, value));
            }
        }
        return new Query(options, fields);
    }

    /** Refuses parameters that a request with a body has no use for. */
    void requireNoFields() {
        Faults faults = new Faults();
        for (DottedField field : fields) {
            faults.add(
                    FieldPath.ofDotted(field.name()).pointer(),
                    "unknown_parameter",
                    () -> Nearest.to(field.name(), RESERVED, "a parameter beside a body"));
        }
        faults.refuseIfAny(Reason.INVALID);
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            throw new Denial(Problems.Kind.MALFORMED_QUERY, "a percent sign must be followed by two digits");
        }
    }
}
