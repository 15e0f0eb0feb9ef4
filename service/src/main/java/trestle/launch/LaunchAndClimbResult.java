package trestle.launch;

import java.util.OptionalDouble;
import trestle.finding.Judgement;

/**
 * What {@link LaunchAndClimb} answers.
 *
 * @param stallSpeedMPerS stall speed in level flight, m/s
 * @param stallSpeedTurningMPerS stall speed in the turn, m/s
 * @param climbSpeedMPerS 1.3 stall speeds, m/s
 * @param launch the launch
 * @param climb climb at that speed
 * @param glide glide with the motor off
 * @param turnAirspeedMPerS airspeed of the turn, m/s
 * @param turnRadiusM its radius, m; empty without bank
 * @param kineticEnergyJ kinetic energy at the climb speed in still air, J
 * @param densityKgPerM3 density, kg/m³
 * @param densityAltitudeM density altitude, m
 * @param judgement what is to be said of it
 */
public record LaunchAndClimbResult(
        double stallSpeedMPerS,
        double stallSpeedTurningMPerS,
        double climbSpeedMPerS,
        LaunchFlight launch,
        Climb climb,
        Glide glide,
        double turnAirspeedMPerS,
        OptionalDouble turnRadiusM,
        double kineticEnergyJ,
        double densityKgPerM3,
        double densityAltitudeM,
        Judgement judgement) {

    /** The same numbers with what there is to say about them. */
    LaunchAndClimbResult judged(Judgement itsJudgement) {
        return new LaunchAndClimbResult(
                stallSpeedMPerS,
                stallSpeedTurningMPerS,
                climbSpeedMPerS,
                launch,
                climb,
                glide,
                turnAirspeedMPerS,
                turnRadiusM,
                kineticEnergyJ,
                densityKgPerM3,
                densityAltitudeM,
                itsJudgement);
    }
}
