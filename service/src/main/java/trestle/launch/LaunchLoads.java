package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.OptionalDouble;

/**
 * What a launch does to the aircraft.
 *
 * @param meanLoadFactor mean acceleration over that of gravity
 * @param peakLoadFactor its peak
 * @param hookForceN greatest force on the hook or the carriage, N; empty by hand and on a dolly
 * @param cordEnergyJ energy in the stretched cord, J; empty without one
 */
public record LaunchLoads(
        double meanLoadFactor, double peakLoadFactor, OptionalDouble hookForceN, OptionalDouble cordEnergyJ) {
    /** Way of the hand in a throw, arm and step: common practice, no source. */
    static final double STROKE_M = 1.8;

    /** Peak over mean of a catapult's pull: common practice, no source. */
    static final double CATAPULT_PEAK_RATIO = 1.5;

    static LaunchLoads of(LaunchAndClimbTask task, Release release) {
        Launch launch = task.launch();
        double weightN = task.airframe().massKg() * GRAVITY_M_PER_S2;
        if (launch instanceof Launch.Hand hand) {
            double thrown = loadFactor(hand.releaseSpeedMPerS(), STROKE_M);
            return new LaunchLoads(thrown, thrown, OptionalDouble.empty(), OptionalDouble.empty());
        }
        if (launch instanceof Launch.Catapult catapult) {
            double mean = loadFactor(catapult.releaseSpeedMPerS(), catapult.railLengthM());
            double peak = CATAPULT_PEAK_RATIO * mean;
            double hookN = weightN * (peak + Math.sin(catapult.angleRad()));
            return new LaunchLoads(mean, peak, OptionalDouble.of(hookN), OptionalDouble.empty());
        }
        double mean = release.meanAccelerationMPerS2().orElse(0) / GRAVITY_M_PER_S2;
        if (launch instanceof Launch.Bungee bungee) {
            double pullN = bungee.stiffnessNPerM() * bungee.stretchM();
            double energyJ = 0.5 * pullN * bungee.stretchM();
            return new LaunchLoads(mean, pullN / weightN, OptionalDouble.of(pullN), OptionalDouble.of(energyJ));
        }
        Launch.Dolly dolly = (Launch.Dolly) launch;
        double rollingN = weightN + dolly.dollyMassKg() * GRAVITY_M_PER_S2;
        double start = task.thrust().thrustN(0) / rollingN - dolly.rollingResistance();
        return new LaunchLoads(mean, Math.max(mean, start), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Load factor of an even acceleration from rest: {@code V² / (2 s g)}. */
    static double loadFactor(double speedMPerS, double wayM) {
        return speedMPerS * speedMPerS / (2 * wayM * GRAVITY_M_PER_S2);
    }
}
