package trestle.battery;

import java.util.OptionalDouble;

/**
 * Lets a voltage dip below its limit for a moment. Controllers filter what they measure, and a
 * crossing in the middle of a burst hangs on a few millivolts. Not thread-safe; lives inside one
 * run.
 */
final class Debounce {
    private final double holdS;
    private double belowSinceS = Double.POSITIVE_INFINITY;
    private OptionalDouble firstDipS = OptionalDouble.empty();

    private Debounce(double holdS) {
        this.holdS = holdS;
    }

    /** The first moment below the limit counts. */
    static Debounce none() {
        return new Debounce(0);
    }

    static Debounce of(double holdS) {
        return new Debounce(holdS);
    }

    boolean isNone() {
        return holdS == 0;
    }

    /** Notes a margin, V, at a time, s. */
    void see(double marginV, double timeS) {
        if (marginV >= 0) {
            belowSinceS = Double.POSITIVE_INFINITY;
        } else if (belowSinceS == Double.POSITIVE_INFINITY) {
            belowSinceS = timeS;
            if (firstDipS.isEmpty()) {
                firstDipS = OptionalDouble.of(timeS);
            }
        }
    }

    /** When the limit counts as reached if nothing recovers, s; infinite while above it. */
    double endS() {
        return belowSinceS + holdS;
    }

    /** When the voltage was first below its limit, s. */
    OptionalDouble firstDipS() {
        return firstDipS;
    }
}
