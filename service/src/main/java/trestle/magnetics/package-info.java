/**
 * The field of power leads at the compass: how far off the heading is, and how far away the compass
 * must sit. {@link CompassClearance} is the way in.
 *
 * <p>The model: straight conductors by the law of Biot and Savart [1]; each run is an
 * out-and-return pair, the compass in its plane, which is the worst side. Endless unless a length
 * is given. A twisted pair counts as one of a twentieth of its separation. Runs add as magnitudes
 * at worst, by root sum of squares as likely. From its worst side a field turns the compass by {@code
 * asin(B / Bh)} against the earth's horizontal field; a stronger one leaves no heading. Cruise and full throttle are
 * judged apart. Steady currents only: what alternates too fast averages
 * out.
 *
 * <p>Sources: [1] any text of electromagnetism, for example D. Griffiths, Introduction to
 * Electrodynamics, 4th edition, section 5.2 (cited from memory); the worked values in the tests
 * name their own. The twentieth for twisted pairs is common practice, no source.
 */
package trestle.magnetics;
