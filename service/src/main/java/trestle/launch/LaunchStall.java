package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.OptionalDouble;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Judge;
import trestle.flight.LevelFlight;

/** Stall, launch, climb, glide and turn of an aircraft. */
public final class LaunchStall {
    /** Safe climb speed in stall speeds, [3]. */
    static final double CLIMB_IN_STALL_SPEEDS = 1.3;

    private LaunchStall() {}

    /**
     * Works out a launch and what follows.
     *
     * @param task the question
     * @return the answer
     */
    public static LaunchStallResult of(LaunchStallTask task) {
        double density = task.air().densityKgPerM3();
        double massKg = task.airframe().massKg();
        double stall = task.airframe().stallSpeedMPerS(density);
        double turningStall = task.turn().stallSpeedMPerS(stall);
        double safe = CLIMB_IN_STALL_SPEEDS * stall;
        double turnAirspeed = task.turnAirspeedMPerS().orElse(CLIMB_IN_STALL_SPEEDS * turningStall);
        LaunchStallResult plain = new LaunchStallResult(
                stall,
                turningStall,
                safe,
                launch(task, stall, safe),
                Climb.of(task.thrust().thrustN(safe), dragN(task, safe), massKg * GRAVITY_M_PER_S2, safe),
                Glide.of(task.airframe(), task.polar(), density),
                turnAirspeed,
                task.turn().radiusM(turnAirspeed),
                0.5 * massKg * safe * safe,
                density,
                StandardAtmosphere.densityAltitudeM(density),
                new Judge().judgement());
        Judge judge = new Judge();
        LaunchChecks.judge(task, plain, judge);
        LaunchAssumptions.assume(task, judge);
        return plain.judged(judge.judgement());
    }

    private static LaunchFlight launch(LaunchStallTask task, double stall, double safe) {
        Release release = new GroundRun(task).release();
        FlightPath.End end = release.left()
                ? new FlightPath(task, safe).from(release)
                : new FlightPath.End(LaunchOutcome.NEVER_RELEASED, 0, OptionalDouble.empty());
        return new LaunchFlight(
                end.outcome(),
                release.airspeedMPerS(),
                release.airspeedMPerS() / stall - 1,
                end.heightLostM(),
                end.timeToSafeSpeedS(),
                release.runM(),
                release.runTimeS(),
                release.meanAccelerationMPerS2());
    }

    /** Drag of level flight at an airspeed, N. */
    static double dragN(LaunchStallTask task, double airspeedMPerS) {
        return LevelFlight.dragN(
                task.polar(),
                task.airframe().massKg(),
                task.airframe().wingAreaM2(),
                task.air().densityKgPerM3(),
                airspeedMPerS);
    }
}
