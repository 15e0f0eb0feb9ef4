package trestle.massbalance;

import java.util.List;
import trestle.numeric.ImpossibleValue;

/**
 * The aircraft on scales, in level attitude.
 *
 * @param supports two or three scales; two give the arm of the CG, three its lateral place too
 */
public record Weighing(List<Support> supports) {
    private static final int FEWEST = 2;
    private static final int MOST = 3;

    /** Copies the list and checks its length. */
    public Weighing {
        supports = List.copyOf(supports);
        if (supports.size() < FEWEST || supports.size() > MOST) {
            throw new ImpossibleValue("supports", "a weighing takes two or three supports");
        }
    }
}
