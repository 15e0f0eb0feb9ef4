package trestle.figure;

import java.util.OptionalDouble;

/** From the least to the greatest of some values. */
final class Reach {
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;

    Reach to(double value) {
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
        return this;
    }

    Reach to(OptionalDouble value) {
        value.ifPresent(this::to);
        return this;
    }

    double least() {
        return least;
    }

    double greatest() {
        return greatest;
    }

    double span() {
        return greatest - least;
    }

    /** Widened about its middle to a span, and by a share of that at both ends. */
    void atLeast(double span, double share) {
        double wider = Math.max(span, span()) * (1 + 2 * share);
        double middle = least + span() / 2;
        least = middle - wider / 2;
        greatest = middle + wider / 2;
    }
}
