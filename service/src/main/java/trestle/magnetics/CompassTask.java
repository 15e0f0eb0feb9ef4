package trestle.magnetics;

import java.util.List;
import trestle.finding.Basis;
import trestle.numeric.Guard;

/**
 * What compass clearance is asked.
 *
 * @param runs the leads that pass the compass
 * @param earthHorizontalT horizontal part of the earth's field, T, above 0 to 70 µT
 * @param allowedHeadingErrorRad maximum heading error, rad, above 0 to 45°
 * @param allowedBasis where that is from
 */
public record CompassTask(
        List<LeadRun> runs, double earthHorizontalT, double allowedHeadingErrorRad, Basis allowedBasis) {
    /** Mid latitudes; the whole field is 25 to 65 µT, and steep there. Common practice. */
    public static final double USUAL_EARTH_HORIZONTAL_T = 20e-6;

    /** What heading control tolerates; common practice, no source. */
    public static final double USUAL_ALLOWED_ERROR_RAD = Math.toRadians(2);

    private static final double STRONGEST_EARTH_T = 70e-6;
    private static final double GREATEST_ALLOWED_RAD = Math.PI / 4;

    /** Copies the list and checks the physics. */
    public CompassTask {
        runs = List.copyOf(runs);
        Guard.positive("earthHorizontalT", earthHorizontalT);
        Guard.within("earthHorizontalT", earthHorizontalT, 0, STRONGEST_EARTH_T);
        Guard.positive("allowedHeadingErrorRad", allowedHeadingErrorRad);
        Guard.within("allowedHeadingErrorRad", allowedHeadingErrorRad, 0, GREATEST_ALLOWED_RAD);
        Guard.present("allowedBasis", allowedBasis);
    }

    /**
     * Whether it is known what flows at full throttle.
     *
     * @return true where any run has a peak current
     */
    public boolean knowsFullThrottle() {
        return runs.stream().anyMatch(run -> run.peakCurrentA().isPresent());
    }

    /**
     * The field that, from its worst side, turns the compass by the allowed error.
     *
     * @return flux density, T
     */
    public double allowedFieldT() {
        return earthHorizontalT * Math.sin(allowedHeadingErrorRad);
    }
}
