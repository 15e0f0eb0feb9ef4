/**
 * Regulated supplies for servos, avionics and payload: what each rail carries, what its regulator
 * turns to heat, what it draws from the pack, and whether pack and regulator fit each other. {@link
 * Rails} is the way in.
 *
 * <p>The model: a switching regulator draws its output power over its efficiency; a linear one
 * draws its output current and burns the rest of the voltage [1]. Typical current is the sum over
 * the loads of quantity, current and duty; peak current that of the peaks that can fall together.
 * The regulator must bear the full pack's voltage and still regulate at its lowest, under load.
 * Temperature is ambient plus heat times thermal resistance [1].
 *
 * <p>Sources: [1] P. Horowitz and W. Hill, The Art of Electronics, 3rd edition, chapter 9 (linear
 * and switching regulators, heat sinks), cited from memory; the worked values in the tests name
 * their own. The judgements (80 % of a rating, servos on a rail of their own, stall current as the
 * peak) are common practice, no source.
 */
package trestle.rails;
