package trestle.estimate;

/**
 * One draw of everything that is not known: a standard normal deviate for each unknown, by its name. Equal parts share
 * one unknown, since a builder buys them of one kind.
 */
@FunctionalInterface
public interface Draw {
    /** Every unknown at its middle. */
    Draw MEDIANS = unknown -> 0;

    /**
     * The deviate of an unknown.
     *
     * @param unknown its name
     * @return standard normal deviate, within ±2.6
     */
    double z(String unknown);
}
