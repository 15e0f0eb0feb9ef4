package trestle.endpoint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import trestle.api.Field;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiFault;

/**
 * One pass over a request: fills in defaults and notes each as an assumption, and gathers the
 * contradictions, so that a caller hears of all of them at once.
 */
public final class Reading {
    private final List<ApiAssumption> assumptions = new ArrayList<>();
    private final List<ApiFault> faults = new ArrayList<>();

    /**
     * The value given, or the contract's default, which is noted as an assumption.
     *
     * @param given value of the request, or null
     * @param fallback the contract's default
     * @param at JSON Pointer of the field
     * @param because why that default
     * @return a value
     */
    public <T> T orDefault(T given, T fallback, String at, String because) {
        if (given != null) {
            return given;
        }
        assume(at, FieldUnit.withUnit(fallback, at), because);
        return fallback;
    }

    /**
     * The value given, or the contract's default, which is noted as an assumption.
     *
     * @param given value of the request, or null
     * @param field its field, with a default
     * @param owner JSON Pointer of the object that it belongs to
     * @param because why that default
     * @return a value
     */
    public <T> T orDefault(T given, Field<T> field, String owner, String because) {
        return orDefault(given, field.fallback(), field.at(owner), because);
    }

    /** Notes an assumption. */
    public void assume(String at, String assumed, String because) {
        assumptions.add(new ApiAssumption(at, assumed, because));
    }

    /** Notes a contradiction. */
    public void fault(String at, String code, String message) {
        faults.add(new ApiFault(at, code, message));
    }

    /**
     * Demands exactly one of several fields of an object.
     *
     * @param at JSON Pointer of the object, empty for the request
     * @param fields the fields, in the order of {@code values}
     * @param values what the request has for each, null where absent
     */
    public void exactlyOne(String at, List<String> fields, Object... values) {
        if (atMostOne(at, fields, values) && java.util.Arrays.stream(values).allMatch(v -> v == null)) {
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
    public boolean atMostOne(String at, List<String> fields, Object... values) {
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
     * Demands a field of something that cannot do without it.
     *
     * @param what what needs it, with its article
     * @param at JSON Pointer of the object
     * @param field the field
     * @param value what the request has for it, null where absent
     * @return whether it is there
     */
    public boolean needs(String what, String at, String field, Object value) {
        if (value == null) {
            fault(at + "/" + field, "missing", what + " needs " + field);
        }
        return value != null;
    }

    /**
     * Refuses a field of something that has no use for it.
     *
     * @param what what takes none, with its article
     * @param at JSON Pointer of the object
     * @param field the field
     * @param value what the request has for it, null where absent
     * @return whether it is absent
     */
    public boolean takesNo(String what, String at, String field, Object value) {
        if (value != null) {
            fault(at + "/" + field, "contradiction", what + " takes no " + field);
        }
        return value == null;
    }

    /**
     * Refuses a field of something that has no use for it, but for its default: a generated client states the default
     * whatever the kind.
     *
     * @param what what takes none, with its article
     * @param at JSON Pointer of the object
     * @param field the field
     * @param value what the request has for it, null where absent
     * @return whether it is absent or says nothing
     */
    public <T> boolean takesNo(String what, String at, Field<T> field, T value) {
        return value == null || value.equals(field.fallback()) || takesNo(what, at, field.name(), value);
    }

    /**
     * Demands that a number, where given, is not below another of the same object.
     *
     * @param at JSON Pointer of the object
     * @param field the field
     * @param value its number, or null
     * @param bound the field that it must not be below
     * @param limit the number of that
     * @return whether the demand is met
     */
    public boolean notBelow(String at, String field, Double value, String bound, double limit) {
        boolean met = value == null || value >= limit;
        if (!met) {
            fault(
                    at + "/" + field,
                    "contradiction",
                    String.format(
                            "%s is %s, below the %s of %s",
                            field, FieldUnit.withUnit(value, field), FieldUnit.withUnit(limit, bound), bound));
        }
        return met;
    }

    /** Throws if any contradiction was noted. */
    public void refuseContradictions() {
        if (!faults.isEmpty()) {
            throw new ImpossibleRequest(faults);
        }
    }

    /** The assumptions noted so far. */
    public List<ApiAssumption> assumptions() {
        return List.copyOf(assumptions);
    }

    /** The value given, or a default that goes without saying. */
    public static <T> T or(T given, T fallback) {
        return given == null ? fallback : given;
    }

    /** The value given, or the contract's default, where it goes without saying. */
    public static <T> T or(T given, Field<T> field) {
        return or(given, field.fallback());
    }

    /** An optional number of a request. */
    public static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** An optional number of a request in the unit of our records. */
    public static OptionalDouble optional(Double value, DoubleUnaryOperator conversion) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(conversion.applyAsDouble(value));
    }

    /**
     * Reads each entry of a list at its own place.
     *
     * @param given the entries
     * @param at JSON Pointer of the list
     * @param read reads one entry at its pointer; empty where it notes a contradiction
     * @return what was read; empty where any entry could not be
     */
    public static <T, R> Optional<List<R>> each(
            List<? extends T> given, String at, BiFunction<T, String, Optional<R>> read) {
        List<R> whole = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            read.apply(given.get(i), at + "/" + i).ifPresent(whole::add);
        }
        return whole.size() == given.size() ? Optional.of(whole) : Optional.empty();
    }

    /** An optional list of a request; absent is empty. */
    public static <T> List<T> listed(List<T> list) {
        return Optional.ofNullable(list).orElse(List.of());
    }
}
