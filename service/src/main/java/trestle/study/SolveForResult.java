package trestle.study;

import java.util.List;
import java.util.OptionalDouble;
import trestle.finding.Judgement;

/**
 * What a search found.
 *
 * @param value what the field has to be; empty where it is nowhere
 * @param picked the figure there
 * @param crossings all values at which the target is met
 * @param runs how often the calculation was run
 * @param curve the figure over the field
 * @param judgement what is to be said of it
 */
record SolveForResult(
        OptionalDouble value,
        OptionalDouble picked,
        List<Double> crossings,
        int runs,
        List<CurvePoint> curve,
        Judgement judgement) {

    /** A point of the curve; the figure is absent where the calculation has none. */
    record CurvePoint(double at, OptionalDouble value) {}
}
