package trestle.launch;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A launch from standstill to its climb speed or its failure, in a lull of its wind.
 *
 * @param outcome how it ends
 * @param meanWindMPerS mean wind at the height of release, m/s; below 0 for a tailwind
 * @param lullMPerS what is left of it in a lull, m/s
 * @param releaseGroundSpeedMPerS speed over the ground at release, in the lull, m/s
 * @param releaseAirspeedMPerS airspeed at release in the mean wind, m/s; the fastest reached where it never left
 * @param releaseAirspeedInLullMPerS the same in the lull, m/s: what is judged
 * @param stillAirspeedMPerS the same in still air, m/s
 * @param marginFraction that in the lull over the stall speed, less 1; below 0 under the stall
 * @param heightLostM height lost from release to the lowest point, m
 * @param timeToClimbSpeedS from release to the climb speed, s; empty where it is not reached
 * @param groundRunM way along ground, ramp or rail, m; empty for a throw
 * @param runTimeS time of that, s; 0 for a throw
 * @param meanAccelerationMPerS2 mean acceleration along it, m/s²; empty for a throw
 * @param loads what it does to the aircraft
 * @param needed the least that would do
 * @param path the aircraft from release on, moments about a hundredth of a second apart; empty where it never left
 */
public record LaunchFlight(
        LaunchOutcome outcome,
        double meanWindMPerS,
        double lullMPerS,
        double releaseGroundSpeedMPerS,
        double releaseAirspeedMPerS,
        double releaseAirspeedInLullMPerS,
        double stillAirspeedMPerS,
        double marginFraction,
        double heightLostM,
        OptionalDouble timeToClimbSpeedS,
        OptionalDouble groundRunM,
        double runTimeS,
        OptionalDouble meanAccelerationMPerS2,
        LaunchLoads loads,
        Needed needed,
        List<Moment> path) {
    /** Copies the list. */
    public LaunchFlight {
        path = List.copyOf(path);
    }

    static LaunchFlight of(LaunchAndClimbTask task, double stallMPerS, double climbSpeedMPerS) {
        double heightM = task.launch().releaseHeightM();
        double meanWindMPerS = task.wind().meanMPerS(heightM);
        double lullMPerS = task.wind().lullMPerS(heightM);
        Release inLull = new GroundRun(task, lullMPerS).release();
        Release inMean = meanWindMPerS == lullMPerS ? inLull : new GroundRun(task, meanWindMPerS).release();
        Release still = lullMPerS == 0 ? inLull : new GroundRun(task, 0).release();
        FlightPath.End end = inLull.left()
                ? new FlightPath(task, climbSpeedMPerS).from(inLull)
                : new FlightPath.End(LaunchOutcome.NEVER_RELEASED, 0, OptionalDouble.empty(), List.of());
        return new LaunchFlight(
                end.outcome(),
                meanWindMPerS,
                lullMPerS,
                inLull.groundSpeedMPerS(),
                inMean.airspeedMPerS(),
                inLull.airspeedMPerS(),
                still.airspeedMPerS(),
                inLull.airspeedMPerS() / stallMPerS - 1,
                end.heightLostM(),
                end.timeToClimbSpeedS(),
                inLull.runM(),
                inLull.runTimeS(),
                inLull.meanAccelerationMPerS2(),
                LaunchLoads.of(task, inLull),
                Needed.of(task, stallMPerS, inLull),
                end.path());
    }

    /** Whether it ends at the climb speed. */
    boolean succeeds() {
        return outcome == LaunchOutcome.CLIMB_SPEED_REACHED;
    }

    /** Whether it lacks speed at release, which is then why it fails or sinks. */
    boolean isShort() {
        return marginFraction < Needed.USUAL_MARGIN_FRACTION;
    }
}
