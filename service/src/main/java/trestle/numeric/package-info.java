/**
 * Numerics that Hipparchus lacks, guards at the doors of formulas, and the refusal of an impossible
 * value.
 */
package trestle.numeric;
