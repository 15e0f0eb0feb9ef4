package trestle.sheet;

/**
 * A number that a builder looks at first.
 *
 * @param label what it is
 * @param value the number as text
 * @param unit its unit; empty for none
 */
public record KeyNumber(String label, String value, String unit) {}
