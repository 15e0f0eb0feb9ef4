package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.flight.AirframeChecks;
import trestle.flight.LevelFlight;

/** Stall, launch, climb, glide and turn of an aircraft. */
public final class LaunchAndClimb {
    /** Climb speed in stall speeds, [3]. */
    static final double CLIMB_IN_STALL_SPEEDS = 1.3;

    private LaunchAndClimb() {}

    /**
     * Works out a launch and what follows.
     *
     * @param task the question
     * @return the answer
     */
    public static LaunchAndClimbResult of(LaunchAndClimbTask task) {
        double density = task.air().densityKgPerM3();
        double massKg = task.airframe().massKg();
        double stall = task.airframe().stallSpeedMPerS(density);
        double turningStall = task.turn().stallSpeedMPerS(stall);
        double climbing = CLIMB_IN_STALL_SPEEDS * stall;
        double turnAirspeed = task.turnAirspeedMPerS().orElse(CLIMB_IN_STALL_SPEEDS * turningStall);
        LaunchAndClimbResult plain = new LaunchAndClimbResult(
                stall,
                turningStall,
                climbing,
                LaunchFlight.of(task, stall, climbing),
                Climb.of(task.thrust().thrustN(climbing), dragN(task, climbing), massKg * GRAVITY_M_PER_S2, climbing),
                Glide.of(task.airframe(), task.polar(), density),
                turnAirspeed,
                task.turn().radiusM(turnAirspeed),
                0.5 * massKg * climbing * climbing,
                density,
                StandardAtmosphere.densityAltitudeM(density),
                new Judge().judgement());
        Judge judge = new Judge();
        LaunchChecks.judge(task, plain, judge);
        LaunchLimitChecks.judge(task, plain, judge);
        ClimbChecks.judge(task, plain, judge);
        AirframeChecks.judge(
                task.airframe(), Subject.of(LaunchPart.WING_SPAN), Subject.of(LaunchPart.TAKEOFF_MASS), judge);
        AirframeChecks.judge(task.airframe(), task.polar(), Subject.of(LaunchPart.DRAG), judge);
        LaunchAssumptions.assume(task, judge);
        return plain.judged(judge.judgement());
    }

    /** Drag of level flight at an airspeed, N. */
    static double dragN(LaunchAndClimbTask task, double airspeedMPerS) {
        return LevelFlight.dragN(
                task.polar(),
                task.airframe().massKg(),
                task.airframe().wingAreaM2(),
                task.air().densityKgPerM3(),
                airspeedMPerS);
    }
}
