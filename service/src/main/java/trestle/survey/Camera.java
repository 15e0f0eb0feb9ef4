package trestle.survey;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A camera that looks straight down.
 *
 * @param sensorAcrossM side of the sensor that lies across the track, m, above 0
 * @param sensorAlongM side along the track, m, above 0
 * @param pixelsAcross pixels of the side across
 * @param pixelsAlong pixels of the side along
 * @param focalM focal length, m, above 0
 * @param leastIntervalS shortest time between two photos, s; empty where it is not known
 * @param exposureS exposure time, s; empty where it is not known
 */
public record Camera(
        double sensorAcrossM,
        double sensorAlongM,
        int pixelsAcross,
        int pixelsAlong,
        double focalM,
        OptionalDouble leastIntervalS,
        OptionalDouble exposureS) {
    /** Checks the physics. */
    public Camera {
        Guard.positive("sensorAcrossM", sensorAcrossM);
        Guard.positive("sensorAlongM", sensorAlongM);
        Guard.within("pixelsAcross", pixelsAcross, 1, Integer.MAX_VALUE);
        Guard.within("pixelsAlong", pixelsAlong, 1, Integer.MAX_VALUE);
        Guard.positive("focalM", focalM);
        leastIntervalS.ifPresent(it -> Guard.positive("leastIntervalS", it));
        exposureS.ifPresent(it -> Guard.positive("exposureS", it));
    }

    /**
     * Ground under one pixel, across the track: {@code H p / f}, [1].
     *
     * @param heightM height above the ground, m
     * @return ground sample distance, m
     */
    public double sampleM(double heightM) {
        return heightM * sensorAcrossM / pixelsAcross / focalM;
    }

    /**
     * Height that gives a ground sample distance.
     *
     * @param sampleM ground under one pixel, m
     * @return height above the ground, m
     */
    public double heightM(double sampleM) {
        return sampleM * focalM * pixelsAcross / sensorAcrossM;
    }

    /**
     * Ground that a photo shows across the track.
     *
     * @param heightM height above the ground, m
     * @return way, m
     */
    public double footprintAcrossM(double heightM) {
        return heightM * sensorAcrossM / focalM;
    }

    double footprintAlongM(double heightM) {
        return heightM * sensorAlongM / focalM;
    }

    /** Ground under one pixel along the track, m: what the flight smears. */
    double sampleAlongM(double heightM) {
        return heightM * sensorAlongM / pixelsAlong / focalM;
    }
}
