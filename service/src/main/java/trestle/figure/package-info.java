/**
 * Pictures of results: one class per calculation, a pure function of its task and its result.
 *
 * <p>A figure is an SVG document: real text, no script, nothing fetched, the same bytes for the
 * same input. It is 400 units wide, so that its smallest text is as large as a page's small print
 * on a phone of 360 pixels, and as tall as it needs. Panels stand under each other and share one
 * axis, rather than two scales in one panel. What stands at a place of that axis is named by flags
 * above the first panel, and curves and limits by a key beside the heading, so that no label ever
 * crosses a curve. Widths of text are estimated from a wide sans-serif face, as the reader's own is
 * not known.
 *
 * <p>From the writer up: {@code Svg} writes elements, {@code Theme} and {@code Style} give them
 * colour, {@code Font} and {@code TextFit} measure, {@code Axis} has ticks, {@code Plot} maps
 * values to places, {@code Panels} and {@code Page} lay out, and a {@code ...Figure} draws our
 * records.
 */
package trestle.figure;
