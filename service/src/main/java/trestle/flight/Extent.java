package trestle.flight;

import trestle.numeric.Guard;

/** How much of a cruise: so far over the ground, or so long. */
public sealed interface Extent {
    /**
     * A distance over the ground.
     *
     * @param distanceM distance, m
     */
    record Distance(double distanceM) implements Extent {
        /** Checks the physics. */
        public Distance {
            Guard.positive("distanceM", distanceM);
        }
    }

    /**
     * A time.
     *
     * @param durationS time, s
     */
    record Duration(double durationS) implements Extent {
        /** Checks the physics. */
        public Duration {
            Guard.positive("durationS", durationS);
        }
    }
}
