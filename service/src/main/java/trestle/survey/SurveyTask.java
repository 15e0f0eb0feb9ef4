package trestle.survey;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A survey.
 *
 * @param camera the camera
 * @param heightM height above the ground, m, above 0
 * @param forwardOverlap share of a photo that the next one shows again, 0 to 0.95
 * @param sideOverlap share that the next line shows again, 0 to 0.95
 * @param beyond photos beyond each end of a line
 * @param block the ground
 * @param directionRad direction of the lines, clockwise from north, rad; empty: the one that takes least time
 * @param airspeedMPerS airspeed, m/s, above 0
 * @param wind the wind
 * @param bankRad bank of the turns, rad, above 0
 * @param crosshatch whether a second pass crosses the first
 * @param energy what each flight has; empty where that is not looked at
 */
public record SurveyTask(
        Camera camera,
        double heightM,
        double forwardOverlap,
        double sideOverlap,
        int beyond,
        Block block,
        OptionalDouble directionRad,
        double airspeedMPerS,
        Wind wind,
        double bankRad,
        boolean crosshatch,
        Optional<SurveyEnergy> energy) {
    private static final double MOST_OVERLAP = 0.95;

    /** Checks the physics. */
    public SurveyTask {
        Guard.present("camera", camera);
        Guard.positive("heightM", heightM);
        Guard.within("forwardOverlap", forwardOverlap, 0, MOST_OVERLAP);
        Guard.within("sideOverlap", sideOverlap, 0, MOST_OVERLAP);
        Guard.within("beyond", beyond, 0, 100);
        Guard.present("block", block);
        Guard.positive("airspeedMPerS", airspeedMPerS);
        Guard.present("wind", wind);
        Guard.positive("bankRad", bankRad);
    }

    /** Distance of the lines: a footprint less the side overlap, m. */
    public double betweenLinesM() {
        return camera.footprintAcrossM(heightM) * (1 - sideOverlap);
    }

    /** Distance of the photos: a footprint less the forward overlap, m. */
    public double betweenPhotosM() {
        return camera.footprintAlongM(heightM) * (1 - forwardOverlap);
    }

    LineSpacing spacing() {
        return new LineSpacing(betweenLinesM(), betweenPhotosM(), beyond);
    }

    Flying flying() {
        return new Flying(airspeedMPerS, wind, bankRad);
    }
}
