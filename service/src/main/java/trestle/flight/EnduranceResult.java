package trestle.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Judgement;

/**
 * What {@link Endurance} answers.
 *
 * @param stallSpeedMPerS stall speed in level flight, m/s
 * @param leastRecommendedAirspeedMPerS 1.2 times that, m/s
 * @param densityKgPerM3 density, kg/m³
 * @param densityAltitudeM density altitude, m
 * @param bestEndurance flight at least pack power; empty where no airspeed can be flown, with a
 *     finding that says why
 * @param bestRange flight that gets furthest over the ground; empty where no airspeed beats the
 *     wind, with a finding
 * @param atAirspeed flight at the airspeed asked for; empty where none was asked for or it cannot
 *     be flown, with a finding
 * @param radiusOfActionM greatest distance out against the wind and back with it, above the
 *     reserve, m; empty where no airspeed beats the wind
 * @param energy where the energy goes
 * @param lowestVoltageV lowest voltage of the legs, or, without legs, of level flight down to the reserve, V; empty
 *     where the store has none
 * @param curve curves over airspeed, from the stall speed up; empty where no airspeed can be flown
 * @param packOptimum the pack mass that flies longest under the mass limit; empty where none is given or asked for
 * @param judgement what is to be said of it
 */
public record EnduranceResult(
        double stallSpeedMPerS,
        double leastRecommendedAirspeedMPerS,
        double densityKgPerM3,
        double densityAltitudeM,
        Optional<SpeedPoint> bestEndurance,
        Optional<SpeedPoint> bestRange,
        Optional<SpeedPoint> atAirspeed,
        OptionalDouble radiusOfActionM,
        EnergyBudget energy,
        OptionalDouble lowestVoltageV,
        List<CurvePoint> curve,
        Optional<PackOptimum> packOptimum,
        Judgement judgement) {
    /** Copies the list. */
    public EnduranceResult {
        curve = List.copyOf(curve);
    }

    /** The same numbers with what there is to say about them. */
    EnduranceResult judged(Judgement itsJudgement) {
        return new EnduranceResult(
                stallSpeedMPerS,
                leastRecommendedAirspeedMPerS,
                densityKgPerM3,
                densityAltitudeM,
                bestEndurance,
                bestRange,
                atAirspeed,
                radiusOfActionM,
                energy,
                lowestVoltageV,
                curve,
                packOptimum,
                itsJudgement);
    }
}
