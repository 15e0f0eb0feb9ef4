package trestle.rails;

import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * A consumer on a rail, or several alike.
 *
 * @param name what it is called
 * @param quantityCount how many, 1 or more
 * @param typicalA current of one while it works, A, 0 or more
 * @param peakA its greatest current, A (a servo's stall), not below the typical one; empty for the
 *     same
 * @param dutyFraction share of the time it works, 0 to 1
 * @param simultaneous whether its peak can fall together with those of others
 * @param role what it is to the flight
 */
public record Load(
        String name,
        int quantityCount,
        double typicalA,
        OptionalDouble peakA,
        double dutyFraction,
        boolean simultaneous,
        LoadRole role) {
    /** Checks the physics. */
    public Load {
        Guard.present("name", name);
        Guard.present("role", role);
        if (quantityCount < 1) {
            throw new ImpossibleValue("quantityCount", "a load counts at least 1");
        }
        Guard.notNegative("typicalA", typicalA);
        Guard.within("dutyFraction", dutyFraction, 0, 1);
        if (peakA.isPresent()) {
            Guard.finite("peakA", peakA.getAsDouble());
            if (peakA.getAsDouble() < typicalA) {
                throw new ImpossibleValue("peakA", "a load's peak current is not below its typical one");
            }
        }
    }

    /**
     * Mean current of all of them.
     *
     * @return quantity times current times duty, A
     */
    public double meanA() {
        return workingA() * dutyFraction;
    }

    /**
     * Current of all of them while they work.
     *
     * @return current, A
     */
    public double workingA() {
        return quantityCount * typicalA;
    }

    /**
     * Current of all of them at their peak.
     *
     * @return current, A
     */
    public double allPeakA() {
        return quantityCount * peakA.orElse(typicalA);
    }
}
