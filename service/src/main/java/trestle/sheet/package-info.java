/**
 * The sheet to print and file: one self-contained HTML page, nothing fetched, no script, the same
 * bytes for the same input.
 *
 * <p>{@code Sheet} is what stands on it, as text that is already composed and as SVG of {@code
 * trestle.figure}; {@code SheetPage} lays it out; {@code Markup} writes elements, and is the only
 * place where text becomes HTML, so that nothing goes in unescaped. The page is well-formed XML
 * too. Its look is {@code sheet.css}: A4 when printed, any width on a screen, and always dark on
 * light, as paper is.
 */
package trestle.sheet;
