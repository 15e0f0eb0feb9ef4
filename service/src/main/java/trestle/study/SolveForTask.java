package trestle.study;

import trestle.api.model.ApiSolveObjective;
import trestle.binding.FieldPath;

/**
 * What a search is asked.
 *
 * @param studied the calculation with its base
 * @param at the field that is varied
 * @param from one end
 * @param to the other end
 * @param logarithmic whether steps go by even ratios
 * @param pick the figure
 * @param target what it should be; NaN where an extreme is sought
 * @param objective what is sought
 */
record SolveForTask(
        Studied<?, ?, ?> studied,
        FieldPath at,
        double from,
        double to,
        boolean logarithmic,
        FieldPath pick,
        double target,
        ApiSolveObjective objective) {

    /** The value at a share of the way from one end to the other. */
    double value(double share) {
        return logarithmic ? from * Math.pow(to / from, share) : from + share * (to - from);
    }
}
