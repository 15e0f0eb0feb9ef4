/**
 * Mass and balance of the whole aircraft: from a list of items, from scales, or both; the wing's
 * mean chord, the neutral point, and what to move, or what to add, to bring the centre of gravity
 * (CG) where it should be. {@link MassBalance} is the way in.
 *
 * <p>The model: x runs aft from the datum, y to the right, z up. Mass and moments add up; the CG is
 * moment over mass [1]. A tolerance is a bound of two standard deviations; independent tolerances
 * add by root sum of squares. The wing is a row of straight-edged panels; its mean aerodynamic
 * chord is their area-weighted mean [2]. The neutral point is the wing's quarter mean chord plus
 * what the tail's lift in the wing's downwash moves it, less what the fuselage takes [3, 5], with lift
 * slopes of finite wings after Helmbold [4]; a V-tail acts with its area times the squared cosine [6].
 *
 * <p>Sources: [1] FAA-H-8083-1B, Aircraft Weight and Balance Handbook, chapters 2, 3 and 7; FAA AC
 * 43.13-1B, chapter 10. [2] D. Raymer, Aircraft Design: A Conceptual Approach (mean
 * chord, tail volume). [3] B. Etkin and L. Reid, Dynamics of Flight, chapter 2 (neutral point). [4]
 * USAF Stability and Control DATCOM, section 4.1.3.2 (lift slope), incompressible. [5] R. Gilruth and
 * M. White, NACA Report 711, 1941 (fuselage moment), as tabled since. [6] P. Purser and J. Campbell,
 * NACA Report 823, 1945 (V-tails), summary. Sources 2 to 5 are cited from memory for the equations;
 * the values in the tests name their own.
 */
package trestle.massbalance;
