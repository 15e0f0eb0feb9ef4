package trestle.battery;

import java.util.List;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/** What the pack feeds. */
public sealed interface Load {
    /**
     * A constant power at the end of the leads.
     *
     * @param powerW power, W, above 0
     */
    record Power(double powerW) implements Load {
        /** Checks the physics. */
        public Power {
            Guard.positive("powerW", powerW);
        }
    }

    /**
     * A constant current.
     *
     * @param currentA current, A, above 0
     */
    record Current(double currentA) implements Load {
        /** Checks the physics. */
        public Current {
            Guard.positive("currentA", currentA);
        }
    }

    /**
     * Powers one after the other, such as the legs of a flight. After the last one it stops.
     *
     * @param steps the steps, in order, one or more, one of them above 0 W
     */
    record Profile(List<PowerStep> steps) implements Load {
        /** Checks the physics and copies the list. */
        public Profile {
            steps = List.copyOf(steps);
            if (steps.stream().noneMatch(it -> it.powerW() > 0)) {
                throw new ImpossibleValue("steps", "a profile has one step or more above 0 W");
            }
        }

        double durationS() {
            return steps.stream().mapToDouble(PowerStep::durationS).sum();
        }

        double meanPowerW() {
            return steps.stream()
                            .mapToDouble(it -> it.powerW() * it.durationS())
                            .sum()
                    / durationS();
        }
    }
}
