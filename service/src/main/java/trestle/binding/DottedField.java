package trestle.binding;

/**
 * A field of a request as a query or a row of a table has it.
 *
 * @param name its dotted name
 * @param value its value in text, never blank: a field without a value is absent
 */
public record DottedField(String name, String value) {}
