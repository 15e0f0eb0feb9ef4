package trestle.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Judge;

/**
 * Endurance, range and legs of an aircraft on its energy.
 *
 * <p>Best endurance is the least pack power: since a store gives less energy at more power, it is
 * also the longest time. Best range is the greatest distance over the ground to the reserve. Both
 * keep 1.2 times the stall speed.
 */
public final class Endurance {
    private static final int CURVE_POINTS = 40;

    /** The curve ends this far above the best-range airspeed, or just above what was asked for. */
    private static final double CURVE_BEYOND_BEST_RANGE = 1.6;

    private static final double CURVE_BEYOND_ASKED = 1.1;

    private final EnduranceTask task;
    private final SteadyFlight flight;

    private Endurance(EnduranceTask task) {
        this.task = task;
        this.flight = new SteadyFlight(task.airframe(), task.power(), task.air().densityKgPerM3());
    }

    /**
     * Works out a flight.
     *
     * @param task the question
     * @return the answer
     */
    public static EnduranceResult of(EnduranceTask task) {
        Endurance endurance = new Endurance(task);
        OptionalDouble slowest = endurance.flight.leastPowerAirspeedMPerS();
        return slowest.isPresent() ? endurance.flown(slowest.getAsDouble()) : endurance.notFlyable();
    }

    /**
     * The asked airspeed alone, to the reserve: what an answer has for it, without the rest.
     *
     * @param task the question
     * @return the flight at it; empty where none is asked, or it cannot be flown
     */
    public static Optional<SpeedPoint> atAirspeed(EnduranceTask task) {
        if (task.airspeedMPerS().isEmpty()) {
            return Optional.empty();
        }
        Endurance endurance = new Endurance(task);
        return endurance.flight.leastPowerAirspeedMPerS().isPresent() ? endurance.atAirspeed() : Optional.empty();
    }

    /**
     * The asked airspeed, or about that of best range, to the reserve: for a first guess.
     *
     * @param task the question
     * @return the flight; empty where none can be flown
     */
    public static Optional<SpeedPoint> aboutBestRange(EnduranceTask task) {
        Optional<SpeedPoint> asked = atAirspeed(task);
        if (asked.isPresent()) {
            return asked;
        }
        Endurance endurance = new Endurance(task);
        return endurance.flight.furthestAirspeedMPerS(task.headwindMPerS(), powerW -> 1).stream()
                .mapToObj(endurance::point)
                .findFirst();
    }

    private EnduranceResult flown(double bestEnduranceMPerS) {
        double[] airspeeds = curveAirspeeds();
        UsableEnergy usable = usableEnergy(airspeeds, bestEnduranceMPerS);
        SpeedPoint bestEndurance = point(bestEnduranceMPerS);
        OptionalDouble furthest = flight.furthestAirspeedMPerS(task.headwindMPerS(), usable::energyJ);
        Optional<SpeedPoint> bestRange = furthest.stream().mapToObj(this::point).findFirst();
        Optional<SpeedPoint> atAirspeed = atAirspeed();
        LegPlanner planner = new LegPlanner(flight, usable, bestEnduranceMPerS, task.headwindMPerS());
        List<PlannedLeg> planned = task.legs().stream().map(planner::plan).toList();
        EnergyBudget energy = FlightPlan.fly(planned, task.store(), bestEndurance.powerW(), task.reserveFraction());
        double bestEnduranceEnergyJ = bestEndurance.enduranceS() * bestEndurance.powerW();
        return result(
                Optional.of(bestEndurance),
                bestRange,
                atAirspeed,
                radiusOfActionM(usable),
                energy,
                lowestVoltageV(energy, atAirspeed.or(() -> bestRange).orElse(bestEndurance)),
                curve(airspeeds, usable),
                task.pack().flatMap(b -> PackSizing.of(flight, b, bestEnduranceEnergyJ)));
    }

    private EnduranceResult notFlyable() {
        return result(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                new EnergyBudget(0, 0, 0, 0, List.of(), Optional.empty()),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty());
    }

    private EnduranceResult result(
            Optional<SpeedPoint> bestEndurance,
            Optional<SpeedPoint> bestRange,
            Optional<SpeedPoint> atAirspeed,
            OptionalDouble radiusOfActionM,
            EnergyBudget energy,
            OptionalDouble lowestVoltageV,
            List<CurvePoint> curve,
            Optional<PackOptimum> packOptimum) {
        EnduranceResult plain = new EnduranceResult(
                flight.stallSpeedMPerS(),
                flight.floorMPerS(),
                flight.densityKgPerM3(),
                StandardAtmosphere.densityAltitudeM(flight.densityKgPerM3()),
                bestEndurance,
                bestRange,
                atAirspeed,
                radiusOfActionM,
                energy,
                lowestVoltageV,
                curve,
                packOptimum,
                new Judge().judgement());
        Judge judge = new Judge();
        EnduranceChecks.judge(task, flight, plain, judge);
        EnduranceAssumptions.assume(task, flight, plain, judge);
        return plain.judged(judge.judgement());
    }

    /** Over the legs, or in level flight down to the reserve. */
    private OptionalDouble lowestVoltageV(EnergyBudget energy, SpeedPoint cruise) {
        if (energy.legs().isEmpty() && cruise.enduranceS() == 0) {
            return OptionalDouble.empty();
        }
        List<OptionalDouble> voltages = energy.legs().isEmpty()
                ? task.store().fly(List.of(new Step(cruise.powerW(), cruise.enduranceS()))).steps().stream()
                        .map(FlownStep::lowestVoltageV)
                        .toList()
                : energy.legs().stream().map(LegResult::lowestVoltageV).toList();
        return voltages.stream().flatMapToDouble(OptionalDouble::stream).min();
    }

    /** Flight at an airspeed to the reserve; the store is asked at exactly that power. */
    private SpeedPoint point(double airspeedMPerS) {
        double powerW = flight.powerW(airspeedMPerS);
        Draw draw = task.store().constantPower(powerW);
        double enduranceS = (1 - task.reserveFraction()) * draw.durationS();
        double groundMPerS = airspeedMPerS - task.headwindMPerS();
        return new SpeedPoint(
                airspeedMPerS,
                task.airframe().liftCoefficient(flight.densityKgPerM3(), airspeedMPerS),
                powerW,
                draw.meanCurrentA(),
                enduranceS,
                enduranceS * airspeedMPerS,
                enduranceS * Math.max(0, groundMPerS),
                groundMPerS > 0 ? OptionalDouble.of(powerW / groundMPerS) : OptionalDouble.empty(),
                draw.end());
    }

    private Optional<SpeedPoint> atAirspeed() {
        OptionalDouble asked = task.airspeedMPerS();
        boolean flyable = asked.isPresent()
                && asked.getAsDouble() >= flight.stallSpeedMPerS()
                && Double.isFinite(flight.powerW(asked.getAsDouble()));
        return flyable ? Optional.of(point(asked.getAsDouble())) : Optional.empty();
    }

    /**
     * Out against the wind and back with it, each at its own best airspeed. Each way uses up a
     * share of the discharge, its time over the time that the store holds its power; the shares add
     * up to what is above the reserve.
     */
    private OptionalDouble radiusOfActionM(UsableEnergy usable) {
        double windMPerS = Math.abs(task.headwindMPerS());
        OptionalDouble out = flight.furthestAirspeedMPerS(windMPerS, usable::energyJ);
        OptionalDouble back = flight.furthestAirspeedMPerS(-windMPerS, usable::energyJ);
        if (out.isEmpty() || back.isEmpty()) {
            return OptionalDouble.empty();
        }
        double shareOutPerM =
                1 / ((out.getAsDouble() - windMPerS) * usable.durationS(flight.powerW(out.getAsDouble())));
        double shareBackPerM =
                1 / ((back.getAsDouble() + windMPerS) * usable.durationS(flight.powerW(back.getAsDouble())));
        return OptionalDouble.of((1 - task.reserveFraction()) / (shareOutPerM + shareBackPerM));
    }

    private double[] curveAirspeeds() {
        AirspeedRange valid = flight.validAirspeeds();
        double least = Math.max(flight.stallSpeedMPerS(), valid.leastMPerS());
        double against = Math.abs(task.headwindMPerS());
        double furthest = flight.furthestAirspeedMPerS(against, powerW -> 1).orElse(least);
        double wanted = Math.max(
                CURVE_BEYOND_BEST_RANGE * furthest,
                CURVE_BEYOND_ASKED * task.airspeedMPerS().orElse(0));
        double greatest = Math.min(Math.min(wanted, valid.greatestMPerS()), SteadyFlight.GREATEST_AIRSPEED_M_PER_S);
        List<Double> airspeeds = new ArrayList<>();
        for (int i = 0; i < CURVE_POINTS; i++) {
            double airspeed = least + (greatest - least) * i / (CURVE_POINTS - 1);
            if (Double.isFinite(flight.powerW(airspeed))) {
                airspeeds.add(airspeed);
            }
        }
        return airspeeds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private UsableEnergy usableEnergy(double[] airspeeds, double bestEnduranceMPerS) {
        double leastW = flight.powerW(bestEnduranceMPerS);
        double greatestW = leastW;
        for (double airspeed : airspeeds) {
            leastW = Math.min(leastW, flight.powerW(airspeed));
            greatestW = Math.max(greatestW, flight.powerW(airspeed));
        }
        return UsableEnergy.of(task.store(), leastW, greatestW);
    }

    private List<CurvePoint> curve(double[] airspeeds, UsableEnergy usable) {
        List<CurvePoint> curve = new ArrayList<>();
        for (double airspeed : airspeeds) {
            double powerW = flight.powerW(airspeed);
            double enduranceS = (1 - task.reserveFraction()) * usable.durationS(powerW);
            double groundMPerS = Math.max(0, airspeed - task.headwindMPerS());
            curve.add(new CurvePoint(airspeed, powerW, enduranceS, enduranceS * groundMPerS));
        }
        return curve;
    }
}
