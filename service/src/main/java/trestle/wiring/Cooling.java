package trestle.wiring;

import java.util.OptionalDouble;
import trestle.numeric.Root;

/** How a wire cools once its current is off. */
final class Cooling {
    private static final double ACCURACY_S = 0.1;

    /** Beyond a day nobody waits. */
    private static final double LONGEST_S = 86_400;

    private static final double FIRST_S = 1;

    private Cooling() {}

    /**
     * Time until the surface has cooled to a temperature. What lies about the wire stores nothing in this model; in
     * foam it takes longer.
     *
     * @param wire the wire
     * @param path the way of its heat
     * @param from where it starts, above {@code surfaceK}
     * @param surfaceK temperature wanted, K
     * @return time, s; empty where the surroundings are no cooler, or it takes over a day
     */
    static OptionalDouble timeS(Wire wire, HeatPath path, SteadyState from, double surfaceK) {
        if (path.sinkK() >= surfaceK) {
            return OptionalDouble.empty();
        }
        double longS = FIRST_S;
        while (longS < LONGEST_S && surfaceK(wire, path, from, longS) > surfaceK) {
            longS *= 2;
        }
        return Root.between(t -> surfaceK(wire, path, from, t) - surfaceK, 0, longS, ACCURACY_S);
    }

    private static double surfaceK(Wire wire, HeatPath path, SteadyState from, double durationS) {
        return durationS <= 0
                ? from.surfaceK()
                : PeakRise.end(wire, path, from, 0, durationS)
                        .map(PeakEnd::surfaceK)
                        .orElse(from.surfaceK());
    }
}
