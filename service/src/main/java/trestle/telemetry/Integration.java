package trestle.telemetry;

import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;

/** Adds up a log by the trapezium rule and by geodesics. */
final class Integration {
    /** Faster steps of position are errors of it, m/s. */
    static final double FASTEST_M_PER_S = 100;

    /** Positions nearer than this to the last one that counted are noise rather than way, m. */
    private static final double LEAST_STEP_M = 5;

    /** Metres in a radian of latitude, to tell without a geodesic that a step is short. */
    private static final double M_PER_RAD = 6.37e6;

    private final Screened log;
    private final Telemetry rows;
    private int jumps;

    private Integration(Screened log) {
        this.log = log;
        this.rows = log.rows();
    }

    static Totals of(Screened log) {
        return new Integration(log).totals();
    }

    private Totals totals() {
        int lowest = 0;
        for (int i = 1; i < rows.count(); i++) {
            lowest = rows.at(Channel.VOLTAGE, i) < rows.at(Channel.VOLTAGE, lowest) ? i : lowest;
        }
        OptionalDouble ground = ground();
        return new Totals(
                sum(i -> 1),
                sum(i -> rows.at(Channel.CURRENT, i)),
                sum(rows::powerW),
                ground,
                rows.has(Channel.AIRSPEED)
                        ? OptionalDouble.of(sum(i -> Math.max(0, rows.at(Channel.AIRSPEED, i))))
                        : OptionalDouble.empty(),
                jumps,
                rows.at(Channel.VOLTAGE, lowest),
                rows.timeS(lowest),
                counted());
    }

    private double sum(IntToDoubleFunction value) {
        double sum = 0;
        for (int i = 0; i + 1 < rows.count(); i++) {
            if (log.joined(i)) {
                sum += (rows.timeS(i + 1) - rows.timeS(i)) * (value.applyAsDouble(i) + value.applyAsDouble(i + 1)) / 2;
            }
        }
        return sum;
    }

    private OptionalDouble counted() {
        if (!rows.has(Channel.CHARGE_COUNTER)) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (int i = 0; i + 1 < rows.count(); i++) {
            sum += log.joined(i) ? rows.at(Channel.CHARGE_COUNTER, i + 1) - rows.at(Channel.CHARGE_COUNTER, i) : 0;
        }
        return OptionalDouble.of(sum);
    }

    private OptionalDouble ground() {
        if (rows.has(Channel.LATITUDE, Channel.LONGITUDE)) {
            return OptionalDouble.of(geodesicM());
        }
        if (rows.has(Channel.GROUND_SPEED)) {
            return OptionalDouble.of(sum(i -> rows.at(Channel.GROUND_SPEED, i)));
        }
        return rows.has(Channel.VELOCITY_NORTH, Channel.VELOCITY_EAST)
                ? OptionalDouble.of(
                        sum(i -> Math.hypot(rows.at(Channel.VELOCITY_NORTH, i), rows.at(Channel.VELOCITY_EAST, i))))
                : OptionalDouble.empty();
    }

    private double geodesicM() {
        double way = 0;
        int last = 0;
        for (int i = 1; i < rows.count(); i++) {
            if (!log.joined(i - 1)) {
                last = i;
                continue;
            }
            if (roughM(last, i) < LEAST_STEP_M) {
                continue;
            }
            double step = geodesicM(last, i);
            if (step > FASTEST_M_PER_S * (rows.timeS(i) - rows.timeS(last))) {
                jumps++;
                continue;
            }
            way += step;
            last = i;
        }
        return way;
    }

    private double roughM(int from, int to) {
        double north = rows.at(Channel.LATITUDE, to) - rows.at(Channel.LATITUDE, from);
        double east = rows.at(Channel.LONGITUDE, to) - rows.at(Channel.LONGITUDE, from);
        return M_PER_RAD * Math.hypot(north, east * Math.cos(rows.at(Channel.LATITUDE, from)));
    }

    private double geodesicM(int from, int to) {
        return Geodesic.WGS84.Inverse(
                        Math.toDegrees(rows.at(Channel.LATITUDE, from)),
                        Math.toDegrees(rows.at(Channel.LONGITUDE, from)),
                        Math.toDegrees(rows.at(Channel.LATITUDE, to)),
                        Math.toDegrees(rows.at(Channel.LONGITUDE, to)),
                        GeodesicMask.DISTANCE)
                .s12;
    }
}
