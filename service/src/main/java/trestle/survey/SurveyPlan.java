package trestle.survey;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A survey but for the aircraft.
 *
 * @param camera the camera
 * @param heightM height above the ground, m, above 0
 * @param forwardOverlap share of a photo that the next one shows again
 * @param sideOverlap share that the next line shows again
 * @param beyond photos beyond each end of a line
 * @param block the ground
 * @param directionRad direction of the lines, rad; empty: the one that takes least time
 * @param wind the wind
 * @param bankRad bank of the turns, rad, above 0
 * @param crosshatch whether a second pass crosses the first
 */
public record SurveyPlan(
        Camera camera,
        double heightM,
        double forwardOverlap,
        double sideOverlap,
        int beyond,
        Block block,
        OptionalDouble directionRad,
        Wind wind,
        double bankRad,
        boolean crosshatch) {

    /**
     * Flown by an aircraft.
     *
     * @param airspeedMPerS airspeed, m/s, above 0
     * @param energy what each flight has; empty where that is not looked at
     * @return the question
     */
    public SurveyTask at(double airspeedMPerS, Optional<SurveyEnergy> energy) {
        return new SurveyTask(
                camera,
                heightM,
                forwardOverlap,
                sideOverlap,
                beyond,
                block,
                directionRad,
                airspeedMPerS,
                wind,
                bankRad,
                crosshatch,
                energy);
    }
}
