/**
 * Propeller, motor and controller on one supply: what they pull, what they draw, how fast they fly.
 *
 * <ol>
 *   <li>Propeller: thrust and power coefficient over advance ratio, from a measured table, or from
 *       diameter, pitch and blades by blade elements in their own induced flow [1, 2], if need be
 *       scaled to one static test, which counts less the faster the propeller flies.
 *   <li>Motor: {@code V = ω / Kv + I R}, {@code Q = (I − I0(ω)) / Kv} [3].
 *   <li>Controller: an averaging stage, {@code V_motor = throttle · V_supply − I R_on}; what it
 *       draws is what it passes on and its own loss, which is greatest below full throttle.
 *   <li>Supply: a terminal voltage that answers to the very current that the motors draw.
 *   <li>One bracketed root in rotation joins them; every operating point, curve and top speed is
 *       read off that.
 * </ol>
 *
 * <p>Sources:
 *
 * <ol>
 *   <li>S. A. Ning, "A simple solution method for the blade element momentum equations with
 *       guaranteed convergence", Wind Energy 17 (2014), doi 10.1002/we.1636, from memory: the idea
 *       of one bracketed unknown, the inflow angle. The residual used here is derived anew, without
 *       divisions, so that it holds at rest.
 *   <li>J. B. Brandt, R. W. Deters, G. K. Ananda, O. D. Dantsker, M. S. Selig, UIUC Propeller Data
 *       Site, volumes 1 to 4, University of Illinois: the measurements that the blade constants
 *       were fitted on (one half) and are checked against (the other half).
 *   <li>M. Drela, "First-Order DC Electric Motor Model", MIT Aero &amp; Astro, 2007, quoted second
 *       hand.
 *   <li>W. J. M. Rankine, R. E. Froude: momentum theory of the actuator disc, the limit of any
 *       propeller's efficiency. Textbook, from memory.
 * </ol>
 */
package trestle.propulsion;
