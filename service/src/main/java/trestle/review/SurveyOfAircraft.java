package trestle.review;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.PackEnergy;
import trestle.flight.SpeedPoint;
import trestle.survey.Position;
import trestle.survey.SurveyEnergy;
import trestle.survey.SurveyPlan;
import trestle.survey.SurveyTask;

/**
 * A block that an aircraft is to cover.
 *
 * @param plan the survey but for the aircraft
 * @param overheadJ energy of launch, climb and landing of each flight, J
 * @param home where flights begin and end; empty where it is not known
 * @param wayM way out where home is not known, m
 */
public record SurveyOfAircraft(SurveyPlan plan, double overheadJ, Optional<Position> home, double wayM) {

    /** In cruise, on the energy of the packs at that power. */
    SurveyTask task(SpeedPoint cruise, PackEnergy pack, double reserveFraction) {
        double usableJ = pack.budget().usableEnergyJ();
        return plan.at(
                cruise.airspeedMPerS(),
                usableJ > 0
                        ? Optional.of(new SurveyEnergy(
                                cruise.powerW(),
                                OptionalDouble.empty(),
                                usableJ,
                                reserveFraction,
                                overheadJ,
                                home,
                                wayM))
                        : Optional.empty());
    }
}
