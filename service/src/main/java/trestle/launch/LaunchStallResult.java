package trestle.launch;

import java.util.List;
import java.util.OptionalDouble;
import trestle.finding.Assumption;
import trestle.finding.Finding;

/**
 * What {@link LaunchStall} answers.
 *
 * @param stallSpeedMPerS stall speed in level flight, m/s
 * @param stallSpeedTurningMPerS stall speed in the turn, m/s
 * @param safeClimbSpeedMPerS 1.3 stall speeds, m/s
 * @param launch the launch
 * @param climb climb at the safe climb speed
 * @param glide glide with the motor off
 * @param turnAirspeedMPerS airspeed of the turn, m/s
 * @param turnRadiusM its radius, m; empty without bank
 * @param kineticEnergyJ kinetic energy at the safe climb speed in still air, J
 * @param densityKgPerM3 density, kg/m³
 * @param densityAltitudeM density altitude, m
 * @param findings judgements
 * @param assumptions model choices
 */
public record LaunchStallResult(
        double stallSpeedMPerS,
        double stallSpeedTurningMPerS,
        double safeClimbSpeedMPerS,
        LaunchFlight launch,
        Climb climb,
        Glide glide,
        double turnAirspeedMPerS,
        OptionalDouble turnRadiusM,
        double kineticEnergyJ,
        double densityKgPerM3,
        double densityAltitudeM,
        List<Finding> findings,
        List<Assumption> assumptions) {
    /** Copies the lists. */
    public LaunchStallResult {
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /** The same numbers with what there is to say about them. */
    LaunchStallResult judged(List<Finding> itsFindings, List<Assumption> itsAssumptions) {
        return new LaunchStallResult(
                stallSpeedMPerS,
                stallSpeedTurningMPerS,
                safeClimbSpeedMPerS,
                launch,
                climb,
                glide,
                turnAirspeedMPerS,
                turnRadiusM,
                kineticEnergyJ,
                densityKgPerM3,
                densityAltitudeM,
                itsFindings,
                itsAssumptions);
    }
}
