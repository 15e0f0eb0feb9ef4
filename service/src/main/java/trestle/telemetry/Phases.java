package trestle.telemetry;

import java.util.ArrayList;
import java.util.List;

/**
 * Divides a flight into phases. It flies where its speed (through the air, else over the ground; else its power) is
 * above half of what is usual; every threshold has a wider one to leave by, so that noise at it makes no phases.
 * All thresholds are common practice, no source.
 */
final class Phases {
    private static final double USUAL_QUANTILE = 0.9;
    private static final double FLYING_SHARE = 0.5;
    private static final double LANDED_SHARE = 0.35;
    private static final double SLOWEST_M_PER_S = 4;
    private static final double CLIMB_M_PER_S = 0.7;
    private static final double LEVEL_M_PER_S = 0.35;
    private static final double TURN_RAD_PER_S = Math.toRadians(6);
    private static final double STRAIGHT_RAD_PER_S = Math.toRadians(3);
    private static final double GLIDE_POWER_SHARE = 0.1;

    /** Shorter phases are taken as part of the one before, s. */
    private static final double LEAST_S = 4;

    /** Slower than a flight for less than this is a flight with a gust or a stall in it, s. */
    private static final double LEAST_GROUND_S = 15;

    private final Screened log;
    private final Telemetry rows;
    private final Motion motion;
    private final PhaseKind[] kinds;

    private Phases(Screened log, Motion motion) {
        this.log = log;
        this.rows = log.rows();
        this.motion = motion;
        this.kinds = new PhaseKind[rows.count()];
    }

    static List<Phase> of(Screened log, Motion motion) {
        return new Phases(log, motion).phases();
    }

    /** Whether each row lies in a phase of flight. */
    static boolean[] airborne(Telemetry rows, List<Phase> phases) {
        boolean[] airborne = new boolean[rows.count()];
        int phase = 0;
        for (int i = 0; i < airborne.length; i++) {
            while (phase + 1 < phases.size()
                    && rows.timeS(i) >= phases.get(phase).endS()) {
                phase++;
            }
            PhaseKind kind = phases.get(phase).kind();
            airborne[i] = kind != PhaseKind.ON_THE_GROUND && kind != PhaseKind.LANDED;
        }
        return airborne;
    }

    private List<Phase> phases() {
        boolean[] flying = flying();
        double[] powers = new double[rows.count()];
        for (int i = 0; i < powers.length; i++) {
            powers[i] = rows.powerW(i);
        }
        double glideW = GLIDE_POWER_SHARE * Statistics.quantile(powers, USUAL_QUANTILE);
        int lastFlying = -1;
        for (int i = 0; i < flying.length; i++) {
            lastFlying = flying[i] ? i : lastFlying;
        }
        PhaseKind now = PhaseKind.ON_THE_GROUND;
        for (int i = 0; i < kinds.length; i++) {
            if (flying[i]) {
                now = kind(now, i, glideW);
            } else {
                now = i > lastFlying && lastFlying >= 0 ? PhaseKind.LANDED : PhaseKind.ON_THE_GROUND;
            }
            kinds[i] = now;
        }
        return gathered();
    }

    private PhaseKind kind(PhaseKind before, int row, double glideW) {
        double climb = motion.climbMPerS(row);
        double turn = Math.abs(motion.turnRadPerS(row));
        if (climb > (before == PhaseKind.CLIMB ? LEVEL_M_PER_S : CLIMB_M_PER_S)) {
            return PhaseKind.CLIMB;
        }
        boolean sinking = before == PhaseKind.DESCENT || before == PhaseKind.GLIDE;
        if (climb < -(sinking ? LEVEL_M_PER_S : CLIMB_M_PER_S)) {
            return rows.powerW(row) < glideW ? PhaseKind.GLIDE : PhaseKind.DESCENT;
        }
        return turn > (before == PhaseKind.TURN ? STRAIGHT_RAD_PER_S : TURN_RAD_PER_S)
                ? PhaseKind.TURN
                : PhaseKind.CRUISE;
    }

    /** Whether it flies, row by row. */
    private boolean[] flying() {
        double[] signal = signal();
        boolean speed = rows.has(Channel.AIRSPEED) || rows.has(Channel.GROUND_SPEED) || motion.hasVelocity();
        double usual = Statistics.quantile(signal, USUAL_QUANTILE);
        double floor = speed ? SLOWEST_M_PER_S : 0;
        boolean[] flying = new boolean[signal.length];
        boolean now = false;
        for (int i = 0; i < signal.length; i++) {
            now = signal[i] > Math.max(floor, (now ? LANDED_SHARE : FLYING_SHARE) * usual);
            flying[i] = now;
        }
        fill(flying, true, LEAST_GROUND_S);
        fill(flying, false, LEAST_S);
        return flying;
    }

    private double[] signal() {
        double[] signal = new double[rows.count()];
        for (int i = 0; i < signal.length; i++) {
            if (rows.has(Channel.AIRSPEED)) {
                signal[i] = rows.at(Channel.AIRSPEED, i);
            } else if (rows.has(Channel.GROUND_SPEED)) {
                signal[i] = rows.at(Channel.GROUND_SPEED, i);
            } else {
                signal[i] =
                        motion.hasVelocity() ? Math.hypot(motion.northMPerS(i), motion.eastMPerS(i)) : rows.powerW(i);
            }
        }
        return signal;
    }

    /** Turns stretches of the other kind that are too short, and not at an end of the log, into this kind. */
    private void fill(boolean[] flying, boolean with, double leastS) {
        int since = 0;
        for (int i = 1; i < flying.length; i++) {
            if (flying[i] == flying[i - 1]) {
                continue;
            }
            if (flying[i] == with && since > 0 && rows.timeS(i) - rows.timeS(since) < leastS) {
                java.util.Arrays.fill(flying, since, i, with);
            }
            since = i;
        }
    }

    private List<Phase> gathered() {
        List<int[]> stretches = new ArrayList<>();
        int since = 0;
        for (int i = 1; i <= kinds.length; i++) {
            if (i < kinds.length && kinds[i] == kinds[since]) {
                continue;
            }
            boolean brief = i < kinds.length && rows.timeS(i) - rows.timeS(since) < LEAST_S;
            boolean same = !stretches.isEmpty() && kinds[stretches.get(stretches.size() - 1)[0]] == kinds[since];
            if (!stretches.isEmpty() && (brief || same)) {
                stretches.get(stretches.size() - 1)[1] = Math.min(i, kinds.length - 1);
            } else {
                stretches.add(new int[] {since, Math.min(i, kinds.length - 1)});
            }
            since = i;
        }
        return stretches.stream().map(s -> phase(s[0], s[1])).toList();
    }

    private Phase phase(int from, int to) {
        double energy = 0;
        for (int i = from; i < to; i++) {
            double step = log.joined(i) ? rows.timeS(i + 1) - rows.timeS(i) : 0;
            energy += step * (rows.powerW(i) + rows.powerW(i + 1)) / 2;
        }
        return new Phase(kinds[from], rows.timeS(from), rows.timeS(to), energy);
    }
}
