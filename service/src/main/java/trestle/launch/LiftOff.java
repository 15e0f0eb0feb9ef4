package trestle.launch;

import trestle.numeric.Guard;

/** The airspeed at which an aircraft leaves its dolly, which may rest on a stall speed that is not known yet. */
public sealed interface LiftOff {
    /**
     * The airspeed.
     *
     * @param stallSpeedMPerS stall speed in level flight, m/s
     * @return airspeed, m/s
     */
    double airspeedMPerS(double stallSpeedMPerS);

    /**
     * An airspeed that is given.
     *
     * @param givenMPerS airspeed, m/s, above 0
     */
    record Airspeed(double givenMPerS) implements LiftOff {
        /** Checks the physics. */
        public Airspeed {
            Guard.positive("givenMPerS", givenMPerS);
        }

        @Override
        public double airspeedMPerS(double stallSpeedMPerS) {
            return givenMPerS;
        }
    }

    /**
     * A multiple of the stall speed.
     *
     * @param ratio stall speeds, above 0
     */
    record StallSpeeds(double ratio) implements LiftOff {
        /** Checks the physics. */
        public StallSpeeds {
            Guard.positive("ratio", ratio);
        }

        @Override
        public double airspeedMPerS(double stallSpeedMPerS) {
            return ratio * stallSpeedMPerS;
        }
    }
}
