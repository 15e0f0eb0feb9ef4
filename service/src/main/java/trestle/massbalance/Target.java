package trestle.massbalance;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/** Where the CG should be. */
public sealed interface Target permits Station, Target.StaticMargin {
    /**
     * The target as an arm.
     *
     * @param planform the wing, where there is one
     * @param neutralPoint the neutral point, where it is known
     * @return arm, m; empty where what the target refers to is not known
     */
    OptionalDouble armM(Optional<Planform> planform, Optional<NeutralPoint> neutralPoint);

    /**
     * A CG that leaves a static margin.
     *
     * @param marginFraction (neutral point − CG) / mean chord
     */
    record StaticMargin(double marginFraction) implements Target {
        /** Checks the number. */
        public StaticMargin {
            Guard.finite("marginFraction", marginFraction);
        }

        @Override
        public OptionalDouble armM(Optional<Planform> planform, Optional<NeutralPoint> neutralPoint) {
            if (planform.isEmpty() || neutralPoint.isEmpty()) {
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(
                    neutralPoint.get().armM() - marginFraction * planform.get().meanAerodynamicChordM());
        }
    }
}
