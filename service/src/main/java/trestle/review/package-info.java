/**
 * The whole aircraft: feeds the result of each discipline to the next and draws one verdict. Knows
 * every discipline; none of them knows this package.
 */
package trestle.review;
