package trestle.charging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import trestle.battery.ChargingCell;
import trestle.finding.Judge;
import trestle.finding.Judgement;

/**
 * The charge of a pack.
 *
 * @param strings the charges that it is made of: one of all segments, or one of each
 * @param timeTo80S until every segment has 80 % of its capacity as it is now, s; empty where none is reached
 * @param timeToTargetS until what was asked for, s; empty where it is not reached
 * @param timeToFullS until full, s; empty where it is not reached
 * @param chargeC charge into the first segment, or into the string, C
 * @param energyJ energy at the charger's outputs, J
 * @param heatJ heat in the cells, J
 * @param highestK highest temperature of a cell, K
 * @param peakW greatest power at the outputs together, W
 * @param supply what that takes from the supply
 * @param balanceS time to bring the cells together at the end, s
 * @param rest how the pack rests well
 * @param curve the charge over time; of segments side by side the longest
 * @param judgement what is to be said of it
 */
public record PackCharge(
        List<StringCharge> strings,
        OptionalDouble timeTo80S,
        OptionalDouble timeToTargetS,
        OptionalDouble timeToFullS,
        double chargeC,
        double energyJ,
        double heatJ,
        double highestK,
        double peakW,
        SupplyUse supply,
        double balanceS,
        Rest rest,
        List<ChargePoint> curve,
        Judgement judgement) {
    /** Points of the curve that are kept. */
    private static final int MOST_POINTS = 200;

    /** Copies the lists. */
    public PackCharge {
        strings = List.copyOf(strings);
        curve = List.copyOf(curve);
    }

    /**
     * Works out a charge.
     *
     * @param task the question
     * @return the answer
     */
    public static PackCharge of(ChargeTask task) {
        PackCharge plain = unjudged(task);
        Judge judge = new Judge();
        ChargeChecks.judge(task, plain, judge);
        return plain.judged(judge.judgement());
    }

    /**
     * How long a charge takes, and no more: with longer steps.
     *
     * @param task the question, of one string
     * @return time until the target, s; empty where it is not reached
     */
    public static OptionalDouble timeToTargetS(ChargeTask task) {
        List<ChargingCell> cells = ChargingCell.of(task.pack(), task.surroundings());
        List<Integer> all = IntStream.range(0, cells.size()).boxed().toList();
        return new ChargeRun(task, all, cells, Double.POSITIVE_INFINITY, ChargeRun.COARSE)
                .toTarget()
                .timeToTargetS();
    }

    /** The numbers alone. */
    static PackCharge unjudged(ChargeTask task) {
        List<StringCharge> strings = strings(task);
        boolean oneByOne = task.connection() == Connection.ONE_AFTER_ANOTHER;
        OptionalDouble toTargetS = together(strings, StringCharge::timeToTargetS, oneByOne);
        double energyJ = strings.stream().mapToDouble(StringCharge::energyJ).sum();
        double peakW = oneByOne
                ? strings.stream().mapToDouble(StringCharge::peakW).max().orElse(0)
                : strings.stream().mapToDouble(StringCharge::peakW).sum();
        List<ChargePoint> curve =
                oneByOne ? following(strings) : longest(strings).curve();
        double durationS = curve.isEmpty() ? 0 : curve.get(curve.size() - 1).timeS();
        return new PackCharge(
                strings,
                oneByOne ? lastTo80S(strings) : together(strings, StringCharge::timeTo80S, false),
                toTargetS,
                together(strings, StringCharge::timeToFullS, oneByOne),
                strings.get(0).chargeC(),
                energyJ,
                strings.stream().mapToDouble(StringCharge::heatJ).sum(),
                strings.stream().mapToDouble(StringCharge::highestK).max().orElseThrow(),
                peakW,
                SupplyUse.of(task, energyJ, peakW, durationS),
                balanceS(task),
                rest(task),
                thinned(curve),
                new Judge().judgement());
    }

    private PackCharge judged(Judgement made) {
        return new PackCharge(
                strings,
                timeTo80S,
                timeToTargetS,
                timeToFullS,
                chargeC,
                energyJ,
                heatJ,
                highestK,
                peakW,
                supply,
                balanceS,
                rest,
                curve,
                made);
    }

    /**
     * The string that takes longest.
     *
     * @return the string
     */
    public StringCharge slowest() {
        return longest(strings);
    }

    /**
     * How each segment is charged.
     *
     * @return the segments in the order of the pack
     */
    public List<SegmentCharge> segments() {
        return strings.stream()
                .flatMap(string -> string.segments().stream())
                .sorted(Comparator.comparingInt(SegmentCharge::index))
                .toList();
    }

    /**
     * Whether anything is charged.
     *
     * @return whether there is a way to the target
     */
    public boolean runs() {
        return curve.size() > 1;
    }

    private static List<StringCharge> strings(ChargeTask task) {
        List<ChargingCell> cells = ChargingCell.of(task.pack(), task.surroundings());
        List<Integer> all = IntStream.range(0, cells.size()).boxed().toList();
        double supplyW = task.supply().map(ChargeSupply::maxPowerW).orElse(OptionalDouble.empty()).stream()
                .map(powerW -> powerW * task.charger().efficiencyFraction())
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        if (task.connection() == Connection.IN_SERIES) {
            return List.of(new ChargeRun(task, all, cells, supplyW).run());
        }
        double[] share = shares(task, cells);
        return all.stream()
                .map(k -> new ChargeRun(task, List.of(k), List.of(cells.get(k)), share[k] * supplyW).run())
                .toList();
    }

    /** Of the supply, to each segment in proportion to what it would take at the start; all of it one after another. */
    private static double[] shares(ChargeTask task, List<ChargingCell> cells) {
        double[] wanted = new double[cells.size()];
        double sum = 0;
        CurrentLimits limits = new CurrentLimits(task, Double.POSITIVE_INFINITY);
        for (int k = 0; k < wanted.length; k++) {
            CellString string =
                    new CellString(List.of(cells.get(k).copy()), task.pack().leadResistanceOhm());
            string.prepare();
            double currentA = limits.withoutHold(string).currentA();
            wanted[k] = currentA * string.voltageV(currentA);
            sum += wanted[k];
        }
        for (int k = 0; k < wanted.length; k++) {
            wanted[k] = task.connection() == Connection.ONE_AFTER_ANOTHER || sum == 0 ? 1 : wanted[k] / sum;
        }
        return wanted;
    }

    private static OptionalDouble together(
            List<StringCharge> strings, Function<StringCharge, OptionalDouble> time, boolean oneByOne) {
        if (strings.stream().anyMatch(string -> time.apply(string).isEmpty())) {
            return OptionalDouble.empty();
        }
        var times = strings.stream().mapToDouble(string -> time.apply(string).getAsDouble());
        return oneByOne ? OptionalDouble.of(times.sum()) : times.max();
    }

    /** Each is charged to its target before the next begins. */
    private static OptionalDouble lastTo80S(List<StringCharge> strings) {
        StringCharge last = strings.get(strings.size() - 1);
        OptionalDouble beforeS = strings.size() == 1
                ? OptionalDouble.of(0)
                : together(strings.subList(0, strings.size() - 1), StringCharge::timeToTargetS, true);
        return beforeS.isEmpty() || last.timeTo80S().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(beforeS.getAsDouble() + last.timeTo80S().getAsDouble());
    }

    private static StringCharge longest(List<StringCharge> strings) {
        return strings.stream()
                .max(Comparator.comparingDouble(string -> string.timeToTargetS().orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow();
    }

    private static List<ChargePoint> following(List<StringCharge> strings) {
        List<ChargePoint> all = new ArrayList<>();
        for (StringCharge string : strings) {
            double laterS = all.isEmpty() ? 0 : all.get(all.size() - 1).timeS();
            double beforeJ = all.isEmpty() ? 0 : all.get(all.size() - 1).energyJ();
            string.curve().forEach(point -> all.add(point.after(laterS, beforeJ)));
        }
        return all;
    }

    /** Every so many points, with the ends. */
    private static List<ChargePoint> thinned(List<ChargePoint> points) {
        if (points.size() <= MOST_POINTS) {
            return points;
        }
        return IntStream.range(0, MOST_POINTS)
                .mapToObj(i -> points.get((int) Math.round((double) i * (points.size() - 1) / (MOST_POINTS - 1))))
                .toList();
    }

    /** The larger of the cells' spread and what the segments of a string differ by, at the balancer's current. */
    private static double balanceS(ChargeTask task) {
        double spread = task.imbalanceFraction();
        if (task.connection() == Connection.IN_SERIES) {
            var fractions = task.pack().segments().stream()
                    .mapToDouble(segment -> segment.stateOfChargeFraction())
                    .summaryStatistics();
            spread = Math.max(spread, fractions.getMax() - fractions.getMin());
        }
        return spread * task.pack().capacityC() / task.charger().balanceCurrentA();
    }

    private static Rest rest(ChargeTask task) {
        double fraction = ChargeTarget.STORAGE_FRACTION;
        ChargingCell cell = ChargingCell.of(task.pack(), task.surroundings()).get(0);
        double capacityC = cell.capacityC() * cell.segment().parallelCount();
        return new Rest(fraction, cell.restVoltageV(fraction), (fraction - cell.chargeFraction()) * capacityC);
    }
}
