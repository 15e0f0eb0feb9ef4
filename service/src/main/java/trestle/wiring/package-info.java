/**
 * Wires and connectors: which gauge carries a current to the end of a run, how hot it gets, what it
 * weighs, what it costs in endurance.
 *
 * <p>The model in five lines. Copper resistance rises linearly with temperature. A conductor's heat
 * crosses its insulation by conduction and leaves the surface by natural convection and radiation,
 * or through foam by conduction; a bundle is one cylinder with all its conductors' heat and a
 * warmer core. The steady temperature is a bracketed root; where there is none below the melting
 * point of copper, that is the result. A short peak heats copper and insulation, two lumps, from
 * the steady temperature on. A gauge meets the task when temperature, peak, the surface against what it touches, total drop
 * at the continuous and the peak current, and connectors are within limits; among those the best for endurance weighs
 * watts lost against mass carried.
 *
 * <p>Sources:
 *
 * <ol>
 *   <li>ASTM B258, Standard Specification for Standard Nominal Diameters and Cross-Sectional Areas
 *       of AWG Sizes of Solid Round Wires (diameter law, from memory; its published results are
 *       checked in the tests).
 *   <li>National Bureau of Standards Handbook 100, Copper Wire Tables, 1966, and IEC 60028:
 *       annealed copper of 58 MS/m at 20 °C, 0.00393 /K, 8890 kg/m³.
 *   <li>IEC 60228, Conductors of insulated cables: class 5 (flexible) maximum resistances, read in
 *       secondary tables.
 *   <li>F. Incropera, D. DeWitt, Fundamentals of Heat and Mass Transfer: horizontal cylinder in
 *       free convection, after S. Churchill, H. Chu, International Journal of Heat and Mass
 *       Transfer 18 (1975), 1049; conduction through a cylindrical wall; all from memory.
 *   <li>U.S. Standard Atmosphere, 1976, equations 51 and 53 (from memory): viscosity and conductivity of air.
 *   <li>IEC 60287-2-1: thermal resistivity of insulations (PVC 6.0, XLPE 3.5 K m/W), read in a
 *       secondary table together with silicone rubber, 5.0 K m/W.
 *   <li>FAA AC 43.13-1B with change 1, chapter 11, pages 11-22 to 11-28: drop, harness derating; table 11-6, from memory:
 *       intermittent loads may drop twice as much as continuous ones.
 *   <li>I. Onderdonk and W. Preece, fusing currents, as commonly quoted.
 *   <li>E. Hairer, G. Wanner, Solving Ordinary Differential Equations II; J. Verwer et al., SIAM
 *       Journal on Scientific Computing 20 (1999), 1456 (from memory): the second-order Rosenbrock method ROS2.
 *   <li>ASTM C578, scope: polystyrene foam from -53.9 to 73.9 °C; ISO 13732-1, from memory: burns of the skin; tables of
 *       plastics for continuous use; each row of {@link trestle.wiring.ContactMaterial} says which, and most are from
 *       memory.
 * </ol>
 */
package trestle.wiring;
