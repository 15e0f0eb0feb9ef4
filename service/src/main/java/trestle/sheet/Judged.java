package trestle.sheet;

/**
 * A finding on the sheet.
 *
 * @param grade how grave
 * @param sentence what it says
 * @param where JSON Pointer into the document; empty for the document as a whole
 */
public record Judged(Grade grade, String sentence, String where) {}
