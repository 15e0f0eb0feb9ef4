/**
 * Steady flight of a battery-electric fixed-wing aircraft: power, endurance, range, legs, pack
 * mass.
 *
 * <p>The model: lift equals weight; drag is a parabolic polar over the lift coefficient; pack power
 * is thrust power over the efficiency of propeller, motor and controller, plus a constant systems
 * power. A measured power curve or a calibration from a flight log may stand in place of polar and
 * efficiencies. Time comes from the discharge of an {@link EnergyStore} at that
 * power, not from energy over power. Speeds are found numerically, since systems power, sag and
 * wind move them; recommended speeds keep 1.2 times the stall speed.
 *
 * <p>Not in the model: Peukert's law (the energy store carries the discharge), compressibility,
 * change of density along a leg, turning flight.
 *
 * <p>Sources:
 *
 * <ol>
 *   <li>J. D. Anderson, <i>Introduction to Flight</i>, chapters 5 and 6 (from memory): lift, drag polar, stall,
 *       power required, glide, climb, turn.
 *   <li>L. W. Traub, <i>Range and Endurance Estimates for Battery-Powered Aircraft</i>, Journal of
 *       Aircraft 48(2), 2011, 703–707, doi 10.2514/1.C031027: power required of a battery aircraft.
 *   <li>F. N. Fritsch, J. Butland, <i>A method for constructing local monotone piecewise cubic
 *       interpolants</i>, SIAM J. Sci. Stat. Comput. 5(2), 1984, 300–304 (from memory).
 *   <li>Reduction of measured power to another weight and density at equal lift coefficient, the
 *       usual form of flight-test practice (from memory): speed by the root of weight over density,
 *       power by weight to the 3/2 over the root of density.
 * </ol>
 */
package trestle.flight;
