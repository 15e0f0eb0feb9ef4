package trestle.battery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.units.Time;

/**
 * What a pack gives at a load: the energy above the cutoff, what is left below it, the curve,
 * and what is to be said about it.
 *
 * @param ratings what the pack is
 * @param cutoffVoltageV voltage of the pack at the cutoff when all cells are alike, V
 * @param discharge the discharge to the cutoff
 * @param budget where the energy goes
 * @param allowed greatest power for a moment; empty where the rating of any cell is not known
 * @param times when the cutoff is reached, by the pack and by the weakest cell
 * @param cRatePerH mean current over capacity, 1/h
 * @param chargeTimeS time to charge back to where the run began, s; empty until it is worked out, and where it is too cold
 * @param curve the discharge in points, ends and knees kept
 * @param lowest the moment of the lowest voltage
 * @param lowestEarly the same in the first half, by energy
 * @param judgement what is to be said of it
 */
public record PackEnergy(
        PackRatings ratings,
        double cutoffVoltageV,
        Discharge discharge,
        EnergyBudget budget,
        Optional<PowerAllowed> allowed,
        CutoffTimes times,
        double cRatePerH,
        OptionalDouble chargeTimeS,
        List<CurvePoint> curve,
        CurvePoint lowest,
        CurvePoint lowestEarly,
        Judgement judgement) {
    /** Points of the curve that is returned. */
    static final int MOST_POINTS = 200;

    /** Copies the list. */
    public PackEnergy {
        curve = List.copyOf(curve);
    }

    /**
     * Works out what a pack gives.
     *
     * @param task pack, load, cutoff, surroundings and reserve
     * @return the answer
     */
    public static PackEnergy of(PackTask task) {
        PackState start = PackState.of(task.pack(), task.surroundings());
        Limits limits = Limits.of(task.cutoff(), task.pack());
        List<CurvePoint> points = new ArrayList<>();
        Discharge discharge = Discharge.of(start, task.load(), limits, now -> points.add(CurvePoint.of(now)));
        PackRatings ratings = PackRatings.of(task.pack());
        EnergyBudget budget = BudgetDraft.of(task, discharge, points);
        PackEnergy plain = new PackEnergy(
                ratings,
                task.cutoff().packVoltageV(task.pack()),
                discharge,
                budget,
                allowed(start, task.load(), limits, discharge, ratings),
                CutoffTimes.of(start, task.load(), task.cutoff(), discharge),
                rate(task, discharge, ratings),
                OptionalDouble.empty(),
                CurveThinning.thin(points, MOST_POINTS),
                lowest(points, discharge.energyJ()),
                lowest(points, discharge.energyJ() / 2),
                new Judge().judgement());
        Judge judge = new Judge();
        PackChecks.judge(task, start, plain, judge);
        PackChoices.note(task, judge);
        return plain.with(judge.judgement());
    }

    /**
     * The same with the time that charging takes.
     *
     * @param timeS time, s; empty where it is too cold
     * @return the answer
     */
    public PackEnergy withChargeTimeS(OptionalDouble timeS) {
        return with(timeS, judgement);
    }

    private PackEnergy with(Judgement made) {
        return with(chargeTimeS, made);
    }

    private PackEnergy with(OptionalDouble timeS, Judgement made) {
        return new PackEnergy(
                ratings,
                cutoffVoltageV,
                discharge,
                budget,
                allowed,
                times,
                cRatePerH,
                timeS,
                curve,
                lowest,
                lowestEarly,
                made);
    }

    private static CurvePoint lowest(List<CurvePoint> points, double untilJ) {
        return points.stream()
                .filter(it -> it.energyJ() <= untilJ)
                .min(Comparator.comparingDouble(CurvePoint::voltageV))
                .orElse(points.get(0));
    }

    private static Optional<PowerAllowed> allowed(
            PackState start, Load load, Limits limits, Discharge discharge, PackRatings ratings) {
        if (ratings.maxContinuousCurrentA().isEmpty()) {
            return Optional.empty();
        }
        double ratedA = ratings.maxContinuousCurrentA().getAsDouble();
        Discharge half = Discharge.during(discharge.durationS() / 2, start, load, limits);
        return Optional.of(new PowerAllowed(
                PowerLimit.largestW(start, limits, ratedA),
                PowerLimit.largestW(half.end(), limits, ratedA),
                PowerLimit.largestW(discharge.end(), limits, ratedA)));
    }

    /** Mean current over capacity; at the nominal voltage where the load cannot be fed at all. */
    private static double rate(PackTask task, Discharge discharge, PackRatings ratings) {
        double meanA = discharge.durationS() > 0
                ? discharge.chargeC() / discharge.durationS()
                : BudgetDraft.meanPowerW(task) / ratings.nominalVoltageV();
        return meanA * Time.sFromH(1) / ratings.capacityC();
    }
}
