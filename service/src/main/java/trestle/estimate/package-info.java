/**
 * What a builder does not know: usual values with their spread, and how sure an answer is that rests on them.
 *
 * <p>A rule gives the {@link trestle.estimate.Spread} of one number from what is known of the part. A
 * {@link trestle.estimate.Draw} puts a deviate on every unknown; a model that is worked at many draws has a
 * {@link trestle.estimate.Band} for each of its figures, and each unknown a share in it: what to measure first.
 *
 * <p>Not in the bands: what is not listed as an estimate (wind, pilot, turns), a kind that was chosen wrongly, and the
 * errors of the models themselves, except where a rule says so.
 */
package trestle.estimate;
