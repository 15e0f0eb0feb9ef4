package trestle.structure;

/**
 * The part that gives way first.
 *
 * @param part in a builder's words
 * @param lateralM where, m
 * @param mode how
 * @param reserve at the design load
 * @param limitLoadFactor load factor that it may bear, the factor of safety within
 * @param failureLoadFactor at which it gives way, by these strengths
 */
public record Weakest(
        String part,
        double lateralM,
        FailureMode mode,
        double reserve,
        double limitLoadFactor,
        double failureLoadFactor) {
    static Weakest of(String part, double lateralM, FailureMode mode, double reserve, LoadsTask task) {
        double limit = task.designLoadFactor() * reserve;
        return new Weakest(part, lateralM, mode, reserve, limit, limit * task.factorOfSafety());
    }
}
