package trestle.telemetry;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a log says.
 *
 * @param screened its rows in order, and what was wrong with them
 * @param totals charge, energy, distance
 * @param phases the flight in phases
 * @param wind the wind and the directions flown; empty where no ground velocity was recorded
 * @param resistance of the pack; empty where the load hardly stepped
 * @param stretches steady level flight
 * @param curve power over airspeed
 */
public record FlightLog(
        Screened screened,
        Totals totals,
        List<Phase> phases,
        Optional<WindFit> wind,
        Optional<PackResistance> resistance,
        List<SteadyStretch> stretches,
        PowerCurve curve) {
    /** Ground velocities that a wind is fitted to at most: every so many rows of a longer log. */
    private static final int MOST_VELOCITIES = 6000;

    /** Copies the lists. */
    public FlightLog {
        phases = List.copyOf(phases);
        stretches = List.copyOf(stretches);
    }

    /**
     * Whether there is a log at all.
     *
     * @param log its rows
     * @return whether two rows follow each other in time
     */
    public static boolean isReadable(Telemetry log) {
        return Screening.of(log).isPresent();
    }

    /**
     * Works out a log.
     *
     * @param log its rows
     * @param flown what is known of the aircraft and the day
     * @return what it says; empty where fewer than two rows follow each other in time
     */
    public static Optional<FlightLog> of(Telemetry log, Flown flown) {
        return Screening.of(log).map(screened -> of(screened, flown));
    }

    private static FlightLog of(Screened screened, Flown flown) {
        Motion motion = Motion.of(screened);
        List<Phase> phases = Phases.of(screened, motion);
        boolean[] airborne = Phases.airborne(screened.rows(), phases);
        Optional<WindFit> wind =
                motion.hasVelocity() ? Optional.of(wind(screened.rows(), motion, airborne)) : Optional.empty();
        Optional<Wind> seen = wind.flatMap(WindFit::wind);
        List<SteadyStretch> stretches =
                SteadyStretches.of(screened, motion, airborne, seen, flown.climbPowerPerSpeedN());
        return new FlightLog(
                screened,
                Integration.of(screened),
                phases,
                wind,
                LoadSteps.of(screened),
                stretches,
                curve(screened.rows(), seen, stretches, flown));
    }

    private static PowerCurve curve(Telemetry rows, Optional<Wind> wind, List<SteadyStretch> stretches, Flown flown) {
        OptionalDouble massKg = flown.massKg();
        if (!rows.has(Channel.AIRSPEED) && wind.isEmpty()) {
            return PowerCurve.none(PowerCurve.Reason.NO_AIRSPEED);
        }
        return massKg.isPresent()
                ? PowerCurve.of(stretches, massKg.getAsDouble(), flown.densityKgPerM3(), flown.systemsPowerW())
                : PowerCurve.none(PowerCurve.Reason.NO_MASS);
    }

    private static WindFit wind(Telemetry rows, Motion motion, boolean[] airborne) {
        int stride = 1 + rows.count() / MOST_VELOCITIES;
        double[] north = new double[rows.count()];
        double[] east = new double[rows.count()];
        double[] airspeed = new double[rows.count()];
        boolean known = rows.has(Channel.AIRSPEED);
        int count = 0;
        for (int i = 0; i < rows.count(); i += stride) {
            if (airborne[i]) {
                north[count] = motion.northMPerS(i);
                east[count] = motion.eastMPerS(i);
                airspeed[count] = known ? rows.at(Channel.AIRSPEED, i) : 0;
                count++;
            }
        }
        return WindFit.of(
                Arrays.copyOf(north, count),
                Arrays.copyOf(east, count),
                known ? Arrays.copyOf(airspeed, count) : new double[0]);
    }
}
