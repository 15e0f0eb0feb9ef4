package trestle.magnetics;

import java.util.Locale;
import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;
import trestle.units.Length;

/**
 * A pair of power leads, out and return, that passes the compass.
 *
 * @param name what it is called
 * @param currentA steady current in cruise, A, 0 or more
 * @param peakCurrentA at full throttle, A, not below the other; empty where it is not known
 * @param separationM distance between the axes of the two leads, m, above 0
 * @param twisted whether they are twisted about each other
 * @param distanceM from the compass to the middle between them, m, a tenth of a millimetre above half the separation or
 *     more
 * @param lengthM straight length beside the compass, m; empty for endless, which is nearly always
 *     the safe side
 */
public record LeadRun(
        String name,
        double currentA,
        OptionalDouble peakCurrentA,
        double separationM,
        boolean twisted,
        double distanceM,
        OptionalDouble lengthM) {
    /** A twisted pair against one laid parallel; common practice, no source. */
    static final double TWISTED_SHARE = 1.0 / 20;

    /** No lead is thinner than twice this, m: a compass cannot sit nearer to its axis. */
    static final double NEAREST_M = 0.1e-3;

    /** Checks the physics. */
    public LeadRun {
        Guard.present("name", name);
        Guard.notNegative("currentA", currentA);
        peakCurrentA.ifPresent(value -> Guard.finite("peakCurrentA", value));
        if (peakCurrentA.orElse(currentA) < currentA) {
            throw new ImpossibleValue("peakCurrentA", "a run's peak current is not below its current in cruise");
        }
        Guard.positive("separationM", separationM);
        Guard.positive("distanceM", distanceM);
        lengthM.ifPresent(value -> Guard.positive("lengthM", value));
        if (distanceM < separationM / 2 + NEAREST_M) {
            throw new ImpossibleValue(
                    "distanceM",
                    String.format(
                            Locale.ROOT,
                            "a compass %.0f mm from the middle of leads %.0f mm apart may lie on"
                                    + " one of them: lay them together, or set it further off",
                            Length.mmFromM(distanceM),
                            Length.mmFromM(separationM)));
        }
    }

    /**
     * The separation that counts.
     *
     * @return separation, or a twentieth of it where twisted, m
     */
    public double effectiveSeparationM() {
        return twisted ? TWISTED_SHARE * separationM : separationM;
    }

    /**
     * Field at the compass, in the plane of the leads.
     *
     * @return flux density, T
     */
    public double fieldT() {
        return fieldT(distanceM);
    }

    /**
     * Field at another distance, in the plane of the leads.
     *
     * @param otherDistanceM from the middle between them, m, above half the separation that counts
     * @return flux density, T
     */
    public double fieldT(double otherDistanceM) {
        return lengthM.isPresent()
                ? Conductor.pairFieldT(currentA, effectiveSeparationM(), otherDistanceM, lengthM.getAsDouble())
                : Conductor.pairFieldT(currentA, effectiveSeparationM(), otherDistanceM);
    }

    /**
     * The same run with its leads twisted.
     *
     * @return the twisted run
     */
    public LeadRun asTwisted() {
        return new LeadRun(name, currentA, peakCurrentA, separationM, true, distanceM, lengthM);
    }

    /**
     * The same run at full throttle.
     *
     * @return with its peak current, or with the one of cruise where that is all that is known
     */
    public LeadRun atFullThrottle() {
        return new LeadRun(
                name, peakCurrentA.orElse(currentA), OptionalDouble.empty(), separationM, twisted, distanceM, lengthM);
    }
}
