package trestle.launch;

import trestle.numeric.Guard;

/** How the aircraft gets away. Speeds are over the ground, heights above it. */
public sealed interface Launch {
    /** Steepest way up that is still a launch and not a shot: 60°. */
    double STEEPEST_RAD = Math.PI / 3;

    /**
     * The height at which the aircraft is let go.
     *
     * @return height above the ground, m, above 0
     */
    double releaseHeightM();

    /**
     * The angle at which the aircraft is let go.
     *
     * @return angle above the horizon, rad; 0 off a dolly
     */
    double angleRad();

    /**
     * Thrown by hand.
     *
     * @param releaseSpeedMPerS speed of the hand over the ground at release, m/s
     * @param angleRad angle of the throw above the horizon, rad
     * @param releaseHeightM height of release, m
     */
    record Hand(double releaseSpeedMPerS, double angleRad, double releaseHeightM) implements Launch {
        /** Checks the physics. */
        public Hand {
            Guard.notNegative("releaseSpeedMPerS", releaseSpeedMPerS);
            Guard.within("angleRad", angleRad, 0, STEEPEST_RAD);
            Guard.positive("releaseHeightM", releaseHeightM);
        }
    }

    /**
     * Rolling on a dolly or wheels with the motor on from a standstill.
     *
     * @param liftOff airspeed at which it leaves the dolly
     * @param rollingResistance rolling resistance coefficient; 0.03 on tarmac to 0.08 on grass
     * @param rollLiftCoefficient lift coefficient at the attitude it rolls in
     * @param dollyMassKg mass of the dolly, kg; 0 for wheels of its own
     * @param releaseHeightM height of the aircraft as it leaves, m
     */
    record Dolly(
            LiftOff liftOff,
            double rollingResistance,
            double rollLiftCoefficient,
            double dollyMassKg,
            double releaseHeightM)
            implements Launch {
        /** Checks the physics. */
        public Dolly {
            Guard.present("liftOff", liftOff);
            Guard.within("rollingResistance", rollingResistance, 0, 1);
            Guard.within("rollLiftCoefficient", rollLiftCoefficient, 0, 3);
            Guard.notNegative("dollyMassKg", dollyMassKg);
            Guard.positive("releaseHeightM", releaseHeightM);
        }

        @Override
        public double angleRad() {
            return 0;
        }
    }

    /**
     * Pulled by a rubber cord along the ground or a ramp, motor off, until the cord is slack.
     *
     * @param stiffnessNPerM cord stiffness, N/m
     * @param stretchM stretch at the start, m
     * @param cordMassKg mass of the cord, kg; a third of it moves along
     * @param energyReturnFraction share of the stored energy that the rubber gives back
     * @param slidingFriction friction coefficient on the ramp
     * @param angleRad angle of the ramp above the horizon, rad
     * @param releaseHeightM height at the end of the ramp, m
     */
    record Bungee(
            double stiffnessNPerM,
            double stretchM,
            double cordMassKg,
            double energyReturnFraction,
            double slidingFriction,
            double angleRad,
            double releaseHeightM)
            implements Launch {
        /** Checks the physics. */
        public Bungee {
            Guard.positive("stiffnessNPerM", stiffnessNPerM);
            Guard.positive("stretchM", stretchM);
            Guard.notNegative("cordMassKg", cordMassKg);
            Guard.positive("energyReturnFraction", energyReturnFraction);
            Guard.within("energyReturnFraction", energyReturnFraction, 0, 1);
            Guard.within("slidingFriction", slidingFriction, 0, 1);
            Guard.within("angleRad", angleRad, 0, STEEPEST_RAD);
            Guard.positive("releaseHeightM", releaseHeightM);
        }

        /** The same cord at another stretch, m. */
        Bungee withStretchM(double otherM) {
            return new Bungee(
                    stiffnessNPerM,
                    otherM,
                    cordMassKg,
                    energyReturnFraction,
                    slidingFriction,
                    angleRad,
                    releaseHeightM);
        }
    }

    /**
     * Brought to a known speed by a catapult.
     *
     * @param releaseSpeedMPerS speed over the ground at the end of the rail, m/s
     * @param railLengthM length of the rail, m
     * @param angleRad angle of the rail above the horizon, rad
     * @param releaseHeightM height of the end of the rail, m
     */
    record Catapult(double releaseSpeedMPerS, double railLengthM, double angleRad, double releaseHeightM)
            implements Launch {
        /** Checks the physics. */
        public Catapult {
            Guard.positive("releaseSpeedMPerS", releaseSpeedMPerS);
            Guard.positive("railLengthM", railLengthM);
            Guard.within("angleRad", angleRad, 0, STEEPEST_RAD);
            Guard.positive("releaseHeightM", releaseHeightM);
        }
    }
}
