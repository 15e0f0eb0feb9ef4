package trestle.sheet;

/**
 * A number that a builder looks at first.
 *
 * @param label what it is
 * @param value the number as text
 * @param unit its unit; empty for none
 * @param band where it lies in eight cases of ten, as text; empty where it rests on given numbers alone
 */
public record KeyNumber(String label, String value, String unit, String band) {}
