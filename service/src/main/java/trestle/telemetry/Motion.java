package trestle.telemetry;

import java.util.Arrays;

/**
 * How the aircraft moves, row by row: what phases, wind and steady stretches are told by. A rate is the difference over
 * four seconds or so, in which the noise of a barometer and a receiver averages out.
 */
final class Motion {
    /** Half of the time over which a rate is taken, s. */
    private static final double HALF_SPAN_S = 2;

    /** Of a faster log, every so many rows are enough for a rate. */
    private static final int MOST_ROWS_IN_A_RATE = 80;

    private final Screened log;
    private final Telemetry rows;
    private final double[] north;
    private final double[] east;
    private final double[] climb;
    private final double[] turn;

    private Motion(Screened log) {
        this.log = log;
        this.rows = log.rows();
        boolean moves = hasGroundVelocity(rows);
        north = moves ? velocity(true) : new double[0];
        east = moves ? velocity(false) : new double[0];
        climb = rows.has(Channel.ALTITUDE) ? rates(column(Channel.ALTITUDE)) : new double[0];
        turn = moves ? rates(unwrapped()) : new double[0];
    }

    static Motion of(Screened log) {
        return new Motion(log);
    }

    /** Whether the ground velocity is recorded, or follows from positions. */
    static boolean hasGroundVelocity(Telemetry rows) {
        return rows.has(Channel.VELOCITY_NORTH, Channel.VELOCITY_EAST)
                || rows.has(Channel.GROUND_SPEED, Channel.TRACK)
                || rows.has(Channel.LATITUDE, Channel.LONGITUDE);
    }

    boolean hasVelocity() {
        return north.length > 0;
    }

    boolean hasClimb() {
        return climb.length > 0;
    }

    double northMPerS(int row) {
        return north[row];
    }

    double eastMPerS(int row) {
        return east[row];
    }

    /** Rate of climb, m/s; 0 where no height was recorded. */
    double climbMPerS(int row) {
        return hasClimb() ? climb[row] : 0;
    }

    /** Rate of turn over the ground, rad/s, clockwise; 0 where no velocity was recorded. */
    double turnRadPerS(int row) {
        return hasVelocity() ? turn[row] : 0;
    }

    /** First row of the time about a row, without a gap between. */
    private int before(int row) {
        int i = row;
        while (i > 0 && log.joined(i - 1) && rows.timeS(row) - rows.timeS(i - 1) <= HALF_SPAN_S) {
            i--;
        }
        return i;
    }

    private int after(int row) {
        int i = row;
        while (i + 1 < rows.count() && log.joined(i) && rows.timeS(i + 1) - rows.timeS(row) <= HALF_SPAN_S) {
            i++;
        }
        return i;
    }

    private double[] column(Channel channel) {
        double[] values = new double[rows.count()];
        Arrays.setAll(values, i -> rows.at(channel, i));
        return values;
    }

    private double[] velocity(boolean northward) {
        if (rows.has(Channel.VELOCITY_NORTH, Channel.VELOCITY_EAST)) {
            return column(northward ? Channel.VELOCITY_NORTH : Channel.VELOCITY_EAST);
        }
        double[] values = new double[rows.count()];
        if (rows.has(Channel.GROUND_SPEED, Channel.TRACK)) {
            Arrays.setAll(values, i -> {
                double track = rows.at(Channel.TRACK, i);
                return rows.at(Channel.GROUND_SPEED, i) * (northward ? Math.cos(track) : Math.sin(track));
            });
            return values;
        }
        // Positions on the ellipsoid of WGS 84, by its radii of curvature at the first of them.
        double latitude = rows.at(Channel.LATITUDE, 0);
        double squeeze = 1 - 6.69437999014e-3 * Math.sin(latitude) * Math.sin(latitude);
        double meridianM = 6378137 * (1 - 6.69437999014e-3) / Math.pow(squeeze, 1.5);
        double parallelM = 6378137 / Math.sqrt(squeeze) * Math.cos(latitude);
        double[] place = new double[rows.count()];
        Arrays.setAll(
                place,
                i -> northward ? meridianM * rows.at(Channel.LATITUDE, i) : parallelM * rows.at(Channel.LONGITUDE, i));
        return rates(place);
    }

    /** Course over the ground without jumps at north, rad. */
    private double[] unwrapped() {
        double[] course = new double[rows.count()];
        for (int i = 0; i < course.length; i++) {
            double now = Math.atan2(east[i], north[i]);
            course[i] = i == 0 ? now : course[i - 1] + Math.IEEEremainder(now - course[i - 1], 2 * Math.PI);
        }
        return course;
    }

    /**
     * Slope of the straight line through the rows about each row, per second; 0 where there is but one row.
     *
     * <p>At a hundred thousand rows and ten a second, forty rows each are few enough to be added up anew.
     */
    private double[] rates(double[] values) {
        double[] rates = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int from = before(i);
            int to = after(i);
            int stride = 1 + (to - from) / MOST_ROWS_IN_A_RATE;
            double n = 0;
            double t1 = 0;
            double t2 = 0;
            double v1 = 0;
            double tv = 0;
            for (int j = from; j <= to; j += stride) {
                double t = rows.timeS(j) - rows.timeS(i);
                double v = values[j] - values[i];
                n++;
                t1 += t;
                t2 += t * t;
                v1 += v;
                tv += t * v;
            }
            double spread = t2 - t1 * t1 / n;
            rates[i] = spread > 0 ? (tv - t1 * v1 / n) / spread : 0;
        }
        return rates;
    }
}
