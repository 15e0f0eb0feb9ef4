package trestle.finding;

import java.util.List;
import trestle.numeric.Guard;

/**
 * What a finding or an assumption is about, in the discipline's own words.
 *
 * @param part a constant of the discipline's own enum of parts, for example {@code
 *     BalancePart.ITEM}
 * @param indices position in each list on the way to the part, outermost first, from 0; empty for a
 *     part that is not in a list
 */
public record Subject(Enum<?> part, List<Integer> indices) {
    /** Copies the list. */
    public Subject {
        Guard.present("part", part);
        indices = List.copyOf(indices);
    }

    /**
     * The subject for one part.
     *
     * @param part constant of a discipline's enum of parts
     * @param indices position in each list on the way, from 0
     * @return the subject
     */
    public static Subject of(Enum<?> part, Integer... indices) {
        return new Subject(part, List.of(indices));
    }
}
