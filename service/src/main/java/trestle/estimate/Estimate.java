package trestle.estimate;

import java.util.Optional;
import trestle.numeric.Guard;

/**
 * What stands in for a number that the builder does not know.
 *
 * @param spread the number at each draw
 * @param from what it was estimated from, in a builder's words
 * @param source where the rule and its scatter are from
 * @param link what it moves with; empty where it moves by itself
 */
public record Estimate(Spread spread, String from, String source, Optional<Link> link) {
    /** How a rule of thumb is named, and a number from memory: nobody measured it for us. */
    public static final String USUAL_PRACTICE = "usual practice";

    /** Refuses what is missing. */
    public Estimate {
        Guard.present("spread", spread);
        Guard.present("from", from);
        Guard.present("source", source);
    }

    /**
     * An estimate that moves by itself.
     *
     * @param spread the number at each draw
     * @param from what it was estimated from
     * @param source where the rule is from
     * @return the estimate
     */
    public static Estimate of(Spread spread, String from, String source) {
        return new Estimate(spread, from, source, Optional.empty());
    }

    /**
     * This estimate, moving with another.
     *
     * @param unknown name of the other
     * @param correlation of their deviates, −1 to 1
     * @return the estimate
     */
    public Estimate movingWith(String unknown, double correlation) {
        return new Estimate(spread, from, source, Optional.of(new Link(unknown, correlation)));
    }

    /**
     * What an estimate moves with.
     *
     * @param unknown name of the other
     * @param correlation of their deviates, −1 to 1
     */
    public record Link(String unknown, double correlation) {
        /** Refuses what no correlation is. */
        public Link {
            Guard.within("correlation", correlation, -1, 1);
        }

        /**
         * The deviate that this link leaves of two independent ones.
         *
         * @param other deviate of the other
         * @param own deviate of one's own
         * @return a standard normal deviate
         */
        public double deviate(double other, double own) {
            return correlation * other + Math.sqrt(1 - correlation * correlation) * own;
        }
    }
}
