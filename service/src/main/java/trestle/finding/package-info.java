/**
 * What a calculation says beside its numbers: findings and assumptions.
 *
 * <p>A discipline names what it speaks of by a {@link Subject}, in its own words;
 * the endpoint that read the request turns the subject into a JSON Pointer.
 */
package trestle.finding;
