package trestle.api;

/**
 * A field of an object of the contract: every generated model has a constant for each of its own.
 *
 * @param name its name on the wire
 * @param fallback what the contract takes where it is absent; null where it states no default
 * @param <T> type of its value
 */
public record Field<T>(String name, T fallback) {
    /**
     * The place of this field.
     *
     * @param owner JSON Pointer of the object that it belongs to, empty for the request
     * @return its JSON Pointer
     */
    public String at(String owner) {
        return owner + "/" + name;
    }
}
