package trestle.finding;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Something that was judged, or could have been.
 *
 * @param code stable kebab-case name of what is judged, the same whatever the outcome
 * @param about what is judged, in a builder's words
 * @param subject where it stands
 * @param outcome how it came out
 * @param value the number that was judged; empty where there is none
 * @param limit what it was held against, same unit; empty where there is none
 * @param unit of both, as printed; empty for a pure number or none
 * @param marginPercent how far the value keeps from the limit, % of the limit, negative beyond it
 * @param basis where the limit is from
 * @param give what would let it be judged; empty where it was
 * @param essential whether the verdict cannot be fit without it
 */
public record Check(
        String code,
        String about,
        Subject subject,
        Outcome outcome,
        OptionalDouble value,
        OptionalDouble limit,
        String unit,
        OptionalDouble marginPercent,
        Basis basis,
        List<Subject> give,
        boolean essential) {
    /** Copies the list. */
    public Check {
        give = List.copyOf(give);
    }
}
