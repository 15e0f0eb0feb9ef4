package trestle.massbalance;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/** A place along the fuselage: an arm, or a share of the wing's mean chord. */
public sealed interface Station extends Target permits Station.AtArm, Station.AtMacFraction {
    /**
     * A distance aft of the datum.
     *
     * @param distanceM arm, m
     */
    record AtArm(double distanceM) implements Station {
        /** Checks the number. */
        public AtArm {
            Guard.finite("distanceM", distanceM);
        }

        @Override
        public OptionalDouble armM(Optional<Planform> planform, Optional<NeutralPoint> neutralPoint) {
            return OptionalDouble.of(distanceM);
        }
    }

    /**
     * A share of the mean chord, from its leading edge.
     *
     * @param macFraction 0 at the leading edge, 1 at the trailing edge; may lie outside
     */
    record AtMacFraction(double macFraction) implements Station {
        /** Checks the number. */
        public AtMacFraction {
            Guard.finite("macFraction", macFraction);
        }

        @Override
        public OptionalDouble armM(Optional<Planform> planform, Optional<NeutralPoint> neutralPoint) {
            return planform.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(planform.get().armM(macFraction));
        }
    }
}
