/**
 * Lithium packs: what a pack gives at a load, above a cutoff, in the cold, and what it leaves
 * below it.
 *
 * <p>The model, per cell: open-circuit voltage is the difference of two electrode potentials, each
 * taken at its own surface charge, which lags the mean by three first-order modes of diffusion in a
 * sphere [1]. Electrolyte depletion is one more lag. Ohmic resistance and exchange current follow
 * Arrhenius laws; charge transfer is an {@code asinh}; in the cold both drops grow further, as
 * measured cells show [7]. A lumped cell temperature gains what the
 * reaction does not deliver and loses it through the pack's outer surface. Segments in series carry
 * one current, found by Newton's method from the power asked for; cells in parallel share it.
 *
 * <p>The formulation is our own; its parameters were fitted to published sets:
 *
 * <ol>
 *   <li>J. Crank, The Mathematics of Diffusion, 2nd ed., 1975, chapter 6 (sphere eigenvalues; from memory).
 *   <li>S. O'Kane et al., Physical Chemistry Chemical Physics 24 (2022) 7909: NMC811 21700 cell.
 *   <li>W. Ai et al., J. Electrochem. Soc. 167 (2020) 013512, and B. Rieger et al., J. Electrochem.
 *       Soc. 163 (2016) A3099: LCO pouch cell, set and measured discharges.
 *   <li>E. Prada et al., J. Electrochem. Soc. 160 (2013) A616: iron phosphate cell.
 *   <li>M. Ecker et al., J. Electrochem. Soc. 162 (2015) A1836: NMC pouch cell, checks only.
 *   <li>C.-H. Chen et al., J. Electrochem. Soc. 167 (2020) 080534: heat transfer of the 21700 cell.
 *   <li>P. Kollmeyer et al., McMaster University, open cell data, doi 10.17632/cp3473x7xv.3 and
 *       10.17632/4fx8cjprxm.1; G. Plett, Battery Management Systems 1, 2015, open cell data.
 * </ol>
 */
package trestle.battery;
