package trestle.sheet;

/**
 * An assumption on the sheet.
 *
 * @param where JSON Pointer to what would override it; empty for a choice that no field governs
 * @param assumed what was taken
 * @param because why
 */
public record Assumed(String where, String assumed, String because) {}
