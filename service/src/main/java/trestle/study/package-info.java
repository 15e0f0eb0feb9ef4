/**
 * Studies: a calculation asked again and again with other values of some of its fields, by JSON Pointer. Runs whatever
 * {@code binding} binds, and so any calculation, and knows no HTTP.
 *
 * <ul>
 *   <li>{@link trestle.study.SolveFor}: what one number has to be;
 *   <li>{@link trestle.study.TradeStudy}: every value of some with every value of the others;
 *   <li>{@link trestle.study.Sensitivity}: which number moves a figure most;
 *   <li>{@link trestle.study.UncertaintyStudy}: how sure a figure is.
 * </ul>
 */
package trestle.study;
