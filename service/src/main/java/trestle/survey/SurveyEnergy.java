package trestle.survey;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * What each flight has.
 *
 * @param cruisePowerW power at the airspeed of the survey, W, above 0
 * @param highPowerW power that nine flights of ten stay below, W; empty where it is not known
 * @param usableJ energy to the cutoff, J, above 0
 * @param reserveFraction share of it to be left, 0 to 0.9
 * @param overheadJ energy of launch, climb and landing of each flight, J, not negative
 * @param home where flights begin and end; empty where it is not known
 * @param wayM way out, and as much back, where home is not known, m, not negative
 */
public record SurveyEnergy(
        double cruisePowerW,
        OptionalDouble highPowerW,
        double usableJ,
        double reserveFraction,
        double overheadJ,
        Optional<Position> home,
        double wayM) {
    /** Checks the physics. */
    public SurveyEnergy {
        Guard.positive("cruisePowerW", cruisePowerW);
        highPowerW.ifPresent(it -> Guard.positive("highPowerW", it));
        Guard.positive("usableJ", usableJ);
        Guard.within("reserveFraction", reserveFraction, 0, 0.9);
        Guard.notNegative("overheadJ", overheadJ);
        Guard.notNegative("wayM", wayM);
    }

    /** Energy of a flight above the reserve, J. */
    double availableJ() {
        return usableJ * (1 - reserveFraction);
    }
}
