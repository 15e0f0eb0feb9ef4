package trestle.telemetry;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds steady level flight: five seconds each, without a gap. Bounds are common practice, no source. */
final class SteadyStretches {
    private static final double LENGTH_S = 5;
    private static final double CLIMB_M_PER_S = 0.3;
    private static final double TURN_RAD_PER_S = Math.toRadians(3);
    private static final double ACCELERATION_M_PER_S2 = 0.3;
    private static final int LEAST_ROWS = 4;

    private final Screened log;
    private final Telemetry rows;
    private final Motion motion;
    private final Optional<Wind> wind;

    private SteadyStretches(Screened log, Motion motion, Optional<Wind> wind) {
        this.log = log;
        this.rows = log.rows();
        this.motion = motion;
        this.wind = wind;
    }

    /**
     * The stretches.
     *
     * @param log the rows
     * @param motion their rates
     * @param airborne whether each row flies
     * @param wind gives the airspeed where it was not recorded
     * @param climbPowerPerSpeedN power that a climb takes over its rate, weight over efficiency, N
     */
    static List<SteadyStretch> of(
            Screened log, Motion motion, boolean[] airborne, Optional<Wind> wind, double climbPowerPerSpeedN) {
        SteadyStretches finder = new SteadyStretches(log, motion, wind);
        if (!log.rows().has(Channel.AIRSPEED) && !(wind.isPresent() && motion.hasVelocity())) {
            return List.of();
        }
        List<SteadyStretch> found = new ArrayList<>();
        int from = 0;
        while (from < airborne.length) {
            int to = finder.end(from, airborne);
            Optional<SteadyStretch> stretch = finder.stretch(from, to, climbPowerPerSpeedN);
            stretch.ifPresent(found::add);
            from = to + 1;
        }
        return found;
    }

    static double weightOverEfficiencyN(double massKg, double efficiencyFraction) {
        return massKg * GRAVITY_M_PER_S2 / efficiencyFraction;
    }

    private int end(int from, boolean[] airborne) {
        int i = from;
        while (i + 1 < airborne.length
                && airborne[i + 1]
                && log.joined(i)
                && rows.timeS(i + 1) - rows.timeS(from) <= LENGTH_S) {
            i++;
        }
        return airborne[from] ? i : from;
    }

    private Optional<SteadyStretch> stretch(int from, int to, double climbN) {
        double length = rows.timeS(to) - rows.timeS(from);
        if (to - from < LEAST_ROWS || length < LENGTH_S - 2 * log.usualStepS()) {
            return Optional.empty();
        }
        double n = 0;
        double t1 = 0;
        double t2 = 0;
        double v1 = 0;
        double tv = 0;
        double power = 0;
        double climb = 0;
        double turn = 0;
        for (int i = from; i <= to; i++) {
            double t = rows.timeS(i) - rows.timeS(from);
            double v = airspeed(i);
            n++;
            t1 += t;
            t2 += t * t;
            v1 += v;
            tv += t * v;
            power += rows.powerW(i);
            climb += motion.climbMPerS(i);
            turn += motion.turnRadPerS(i);
        }
        double acceleration = (tv - t1 * v1 / n) / (t2 - t1 * t1 / n);
        boolean steady = Math.abs(climb / n) < CLIMB_M_PER_S
                && Math.abs(turn / n) < TURN_RAD_PER_S
                && Math.abs(acceleration) < ACCELERATION_M_PER_S2;
        double level = power / n - climbN * climb / n;
        return steady && level > 0 && v1 > 0
                ? Optional.of(new SteadyStretch(rows.timeS(from), v1 / n, level))
                : Optional.empty();
    }

    private double airspeed(int row) {
        return rows.has(Channel.AIRSPEED)
                ? rows.at(Channel.AIRSPEED, row)
                : Math.hypot(
                        motion.northMPerS(row) - wind.orElseThrow().northMPerS(),
                        motion.eastMPerS(row) - wind.orElseThrow().eastMPerS());
    }
}
