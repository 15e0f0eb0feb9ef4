package trestle.endpoint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.Assumption;
import trestle.api.model.Fault;

/**
 * One pass over a request: fills in defaults and notes each as an assumption, and gathers the
 * contradictions, so that a caller hears of all of them at once.
 */
final class Reading {
    private final List<Assumption> assumptions = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    /**
     * The value given, or the contract's default, which is noted as an assumption.
     *
     * @param given value of the request, or null
     * @param fallback the contract's default
     * @param at JSON Pointer of the field
     * @param because why that default
     * @return a value
     */
    <T> T orDefault(T given, T fallback, String at, String because) {
        if (given != null) {
            return given;
        }
        assume(at, FieldUnit.withUnit(fallback, at), because);
        return fallback;
    }

    /** Notes an assumption. */
    void assume(String at, String assumed, String because) {
        assumptions.add(new Assumption(at, assumed, because));
    }

    /** Notes a contradiction. */
    void fault(String at, String code, String message) {
        faults.add(new Fault(at, code, message));
    }

    /**
     * Demands exactly one of several fields of an object.
     *
     * @param at JSON Pointer of the object, empty for the request
     * @param fields the fields, in the order of {@code values}
     * @param values what the request has for each, null where absent
     */
    void exactlyOne(String at, List<String> fields, Object... values) {
        if (atMostOne(at, fields, values)
                && java.util.Arrays.stream(values).allMatch(v -> v == null)) {
            fault(at, "missing_choice", "give one of " + String.join(", ", fields));
        }
    }

    /**
     * Demands at most one of several fields of an object.
     *
     * @param at JSON Pointer of the object, empty for the request
     * @param fields the fields, in the order of {@code values}
     * @param values what the request has for each, null where absent
     * @return whether the demand is met
     */
    boolean atMostOne(String at, List<String> fields, Object... values) {
        List<String> given = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (values[i] != null) {
                given.add(fields.get(i));
            }
        }
        for (String field : given.size() > 1 ? given : List.<String>of()) {
            fault(
                    at + "/" + field,
                    "contradiction",
                    String.join(" and ", given) + " exclude each other: give only one");
        }
        return given.size() <= 1;
    }

    /**
     * Demands a field that something else in the request needs.
     *
     * @param who what needs it, for example "a climb"
     * @param at JSON Pointer of the object that it belongs in, empty for the request
     * @param field its name
     * @param value what the request has for it, null where absent
     * @return whether it is there
     */
    boolean needs(String who, String at, String field, Object value) {
        if (value == null) {
            fault(at + "/" + field, "missing", who + " needs " + field);
        }
        return value != null;
    }

    /**
     * Refuses a field that would be ignored.
     *
     * @param who what has no use for it, for example "a climb"
     * @param at JSON Pointer of the object that it is in, empty for the request
     * @param field its name
     * @param value what the request has for it, null where absent
     * @return whether it is absent
     */
    boolean takesNo(String who, String at, String field, Object value) {
        if (value != null) {
            fault(at + "/" + field, "contradiction", who + " takes no " + field);
        }
        return value == null;
    }

    /** Throws if any contradiction was noted. */
    void refuseContradictions() {
        if (!faults.isEmpty()) {
            throw new ImpossibleRequest(faults);
        }
    }

    /** The assumptions noted so far. */
    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    /** The value given, or a default that goes without saying. */
    static <T> T or(T given, T fallback) {
        return given == null ? fallback : given;
    }

    /** An optional number of a request. */
    static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** An optional list of a request; absent is empty. */
    static <T> List<T> listed(List<T> list) {
        return Optional.ofNullable(list).orElse(List.of());
    }
}
