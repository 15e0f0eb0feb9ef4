/**
 * Getting into the air and staying there: stall, launch, climb, glide, turn.
 *
 * <p>The model: a point mass in still or steadily moving air. Before release it is thrown, rolls on
 * a dolly, is pulled by a rubber cord or runs along a catapult; after release its path is
 * integrated in time with thrust that falls and drag that rises with airspeed. The lift coefficient
 * is what holds the path level, at most 0.9 of the greatest one: below that airspeed the aircraft
 * sinks. The flight ends at the climb speed, on the ground, or after 10 s. Climb, glide and
 * turn are steady.
 *
 * <p>The launch has a wind of its own. One that was measured at another height is brought to the height of release by
 * the logarithmic law of neutral air over even ground, and the launch is judged in a lull of it. Acceleration, force on
 * the hook, energy of the cord and speed at release have upper limits, whatever launches the aircraft.
 *
 * <p>Not in the model: pitch dynamics, ground effect (it would help), propeller wash over the wing,
 * stall beyond the greatest lift coefficient, gusts.
 *
 * <p>Sources:
 *
 * <ol>
 *   <li>J. D. Anderson, <i>Introduction to Flight</i>, chapter 6 (from memory): take-off, climb, glide, turn.
 *   <li>Lord Rayleigh, <i>The Theory of Sound</i>, volume 1, §156: a third of the mass of a spring
 *       moves with its end (from memory).
 *   <li>Common practice, no source: climb speed 1.3 stall speeds (as the airworthiness rules
 *       of small aeroplanes have it), throwing speeds, rolling resistance 0.03 to 0.08.
 *   <li>Classes of roughness of A. G. Davenport and J. Wieringa, as tabled in course notes after R. B. Stull,
 *       <i>Meteorology for Scientists and Engineers</i> (read): logarithmic law and roughness lengths.
 *   <li>H. A. Panofsky and J. A. Dutton, <i>Atmospheric Turbulence</i>, 1984 (from memory): intensity of the
 *       turbulence near the ground.
 * </ol>
 */
package trestle.launch;
