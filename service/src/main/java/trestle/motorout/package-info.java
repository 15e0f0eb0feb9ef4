/**
 * One motor of several stops: whether fin and rudder hold the nose, and whether it still climbs. {@link MotorOut} is the
 * way in.
 *
 * <p>The model: the outermost motor is dead; the one opposite pulls, its own drags, and both yaw with {@code (T + D) y}. The
 * fin's lift slope after Helmbold, with 1.55 of its aspect ratio where a tailplane closes its end [1]; the rudder by thin
 * aerofoils [2], times 0.8 for gap, thickness and angle (common practice, no source). The bank carries the rudder's own
 * side force and earns no further credit. Rigid, small angles, no spin: an aircraft that yaws at low speed can depart
 * before any rudder answers.
 *
 * <p>Sources: [1] D. Raymer, Aircraft Design, from memory. [2] E. Houghton and P. Carpenter, Aerodynamics for Engineering
 * Students, equation 4.57. [3] 14 CFR 23.149: at most 5° of bank at the minimum control speed.
 */
package trestle.motorout;
