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
    /** Even; leaves less than a thousandth at fifteen sixteenths of the airspeed, as the test has it. */
    private static final int PARTS = 24;

    /** Enough where the wind is at most half of the airspeed. */
    private static final int FEWER_PARTS = 8;

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
     * for as far as the ends lie apart. The turn keeps its circle over the ground, so each part of it takes as long as
     * the wind there has it: more in all than at the airspeed, since the slow part lasts longer.
     */
    double betweenS(Line line, Line next, double directionRad, double radiusM) {
        if (line.strip() == next.strip()) {
            return straightS(line.toM(), next.fromM());
        }
        double east = next.fromM().get(0) - line.toM().get(0);
        double north = next.fromM().get(1) - line.toM().get(1);
        double along = Math.abs(east * Math.sin(directionRad) + north * Math.cos(directionRad));
        double beside = east * Math.cos(directionRad) - north * Math.sin(directionRad);
        double headingRad = Math.atan2(
                line.toM().get(0) - line.fromM().get(0),
                line.toM().get(1) - line.fromM().get(1));
        boolean onward = Math.cos(headingRad - directionRad) >= 0;
        double side = beside >= 0 == onward ? 1 : -1;
        double slowest = slowestMPerS(directionRad);
        return turnS(onward ? directionRad : directionRad + Math.PI, side, Math.abs(beside), radiusM)
                + along / Math.max(slowest, 1e-9);
    }

    /**
     * Time of a turn back, along the way of {@link Turns#wayM}.
     *
     * @param trackRad track at its beginning, rad
     * @param side 1 to the right, -1 to the left
     * @param besideM distance of the lines, m, 0 or more
     * @param radiusM radius, m, above 0
     * @return time, s; infinite where the wind is as fast as the aircraft
     */
    double turnS(double trackRad, double side, double besideM, double radiusM) {
        double across = besideM - 2 * radiusM;
        if (across >= 0) {
            double ground = groundMPerS(trackRad + side * Math.PI / 2);
            return radiusM * arcSPerM(trackRad, trackRad + side * Math.PI)
                    + (across == 0 ? 0 : ground > 0 ? across / ground : Double.POSITIVE_INFINITY);
        }
        double away = side * Turns.awayRad(besideM, radiusM);
        return radiusM
                * (arcSPerM(trackRad, trackRad - away)
                        + arcSPerM(trackRad - away, trackRad + side * Math.PI + away)
                        + arcSPerM(trackRad + side * Math.PI + away, trackRad + side * Math.PI));
    }

    /**
     * Time round an arc of radius 1: the integral of one over the ground speed, by Simpson's rule. One over the wind
     * triangle's speed is {@code (√(V² − w² sin²) + w cos) / (V² − w²)}, smooth in any wind below the airspeed.
     */
    private double arcSPerM(double fromRad, double toRad) {
        double speed = airspeedMPerS;
        double blowing = wind.speedMPerS();
        if (blowing >= speed) {
            return Double.POSITIVE_INFINITY;
        }
        int parts = blowing <= speed / 2 ? FEWER_PARTS : PARTS;
        double sum = 0;
        for (int i = 0; i <= parts; i++) {
            double off = wind.fromRad() - (fromRad + (toRad - fromRad) * i / parts);
            double across = blowing * Math.sin(off);
            double one = Math.sqrt(speed * speed - across * across) + blowing * Math.cos(off);
            sum += one * (i == 0 || i == parts ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * Math.abs(toRad - fromRad) / (3.0 * parts) / (speed * speed - blowing * blowing);
    }
}
