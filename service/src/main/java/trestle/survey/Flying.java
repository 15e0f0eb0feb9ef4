package trestle.survey;

import java.util.List;

/**
 * How long lines take, one after another, in a wind.
 *
 * @param airspeedMPerS airspeed, m/s
 * @param wind the wind
 * @param bankRad bank of the turns, rad
 */
record Flying(double airspeedMPerS, Wind wind, double bankRad) {
    double groundMPerS(double trackRad) {
        return wind.groundMPerS(airspeedMPerS, trackRad);
    }

    /** Time along a straight way, s; infinite where it cannot be flown. */
    double straightS(List<Double> fromM, List<Double> toM) {
        double east = toM.get(0) - fromM.get(0);
        double north = toM.get(1) - fromM.get(1);
        double way = Math.hypot(east, north);
        if (way == 0) {
            return 0;
        }
        double ground = groundMPerS(Math.atan2(east, north));
        return ground > 0 ? way / ground : Double.POSITIVE_INFINITY;
    }

    /** The fastest way along a direction, m/s. */
    double fastestMPerS(double directionRad) {
        return Math.max(groundMPerS(directionRad), groundMPerS(directionRad + Math.PI));
    }

    /** The slowest, m/s. */
    double slowestMPerS(double directionRad) {
        return Math.min(groundMPerS(directionRad), groundMPerS(directionRad + Math.PI));
    }

    /**
     * From the end of a line to the beginning of the next: straight on within a strip; else a turn, and along the track
     * for as far as the ends lie apart. In a turn the wind is with the aircraft and against it, so it takes as long as at
     * its airspeed.
     */
    double betweenS(Line line, Line next, double directionRad, double radiusM) {
        if (line.strip() == next.strip()) {
            return straightS(line.toM(), next.fromM());
        }
        double east = next.fromM().get(0) - line.toM().get(0);
        double north = next.fromM().get(1) - line.toM().get(1);
        double along = Math.abs(east * Math.sin(directionRad) + north * Math.cos(directionRad));
        double beside = Math.abs(east * Math.cos(directionRad) - north * Math.sin(directionRad));
        double slowest = slowestMPerS(directionRad);
        return Turns.wayM(beside, radiusM) / airspeedMPerS + along / Math.max(slowest, 1e-9);
    }
}
