package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Judgement;

/**
 * Mass and balance of an aircraft.
 *
 * @param centre mass and CG of what flies: the scales' as far as they tell, else the list's
 * @param list mass and CG of the list of items
 * @param moments the table of moments, in the order of the items
 * @param inertia moments of inertia; empty unless an item is spread over the wing
 * @param planform the wing from above; empty without a wing
 * @param cgMacFraction CG in the mean chord; empty without a wing
 * @param wingLoadingKgPerM2 mass over wing area, kg/m²; empty without a wing
 * @param neutralPoint the neutral point; empty without a wing and a known tail behind it
 * @param staticMarginFraction (neutral point − CG) / mean chord; empty without a neutral point
 * @param staticMarginToleranceFraction what that may be off by, neutral point and CG together, a bound of two standard
 *     deviations; empty without a neutral point
 * @param weighed what the scales say; empty without a weighing or with one that cannot be used
 * @param aim ways to the target; empty where there is no target, or none that can be placed
 * @param judgement what was judged, found and assumed
 */
public record Balance(
        Centre centre,
        Centre list,
        List<Moment> moments,
        Optional<Inertia> inertia,
        Optional<Planform> planform,
        OptionalDouble cgMacFraction,
        OptionalDouble wingLoadingKgPerM2,
        Optional<NeutralPoint> neutralPoint,
        OptionalDouble staticMarginFraction,
        OptionalDouble staticMarginToleranceFraction,
        Optional<Weighed> weighed,
        Optional<Aim> aim,
        Judgement judgement) {
    /** Copies the list. */
    public Balance {
        moments = List.copyOf(moments);
    }
}
