/**
 * Charging a lithium pack at constant current, then at constant voltage: how long, how warm, what it takes from the
 * supply, and whether the cells may take it. {@link trestle.charging.PackCharge} is the way in.
 *
 * <p>The model: each segment is one cell of the model of {@link trestle.battery} with the current turned round. The
 * current is the least of what was set, what the cells may take, what the charger and the supply give, and what keeps
 * every cell at or below its hold voltage; the charge ends when that has fallen to the end current. Below 25 °C what the
 * cells may take falls as {@code exp(−3200 (1/T − 1/298.15))}: the largest rate at which the negative electrode of
 * published porous-electrode sets stays above 0 V against lithium [1, 2] follows that form, computed here with a general
 * battery library. It is a caution, not a permission.
 *
 * <p>Sources: [1] S. O'Kane et al., Phys. Chem. Chem. Phys. 24 (2022) 7909; [2] C.-H. Chen et al., J. Electrochem. Soc.
 * 167 (2020) 080534; [3] W. Peukert's relation for lead-acid batteries, from memory; storage at half charge: makers' usual
 * advice, from memory, and P. Keil et al., J. Electrochem. Soc. 163 (2016) A1872 (abstract). That lithium cells are not
 * charged below 0 °C and above 60 °C, and less above 45 °C: common limits of data sheets, from memory.
 */
package trestle.charging;
