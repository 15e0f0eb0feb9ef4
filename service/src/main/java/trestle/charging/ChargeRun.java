package trestle.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trestle.battery.ChargingCell;

/**
 * Charges one string to full and notes on the way when it has what was asked for. Not thread-safe; lives inside one
 * call.
 */
final class ChargeRun {
    /** Charge of a step over the capacity, before the hold. */
    private static final double STEP_CHARGE = 0.0025;

    /** Fall of the current in a step of the hold. */
    private static final double STEP_FALL = 0.01;

    private static final double FIRST_HOLD_STEP_S = 1;
    private static final double LONGEST_STEP_S = 120;
    private static final double SHORTEST_STEP_S = 1e-3;
    private static final double LONGEST_S = 24 * 3600;
    private static final double FIELD_DAY_FRACTION = 0.8;

    /** So near to the hold is at the hold, over the current. */
    private static final double AT_HOLD = 1e-6;

    private static final int MOST_STEPS = 100_000;

    /** Steps as stated, and so many times as long: times then hold to half a percent. */
    static final double FINE = 1;

    static final double COARSE = 4;

    private final ChargeTask task;
    private final double coarseness;
    private final CurrentLimits limits;
    private final List<Integer> indices;
    private final CellString string;
    private final CellString before;
    private final double endA;
    private final double targetFraction;
    private final List<ChargePoint> curve = new ArrayList<>();
    private final double[] startFraction;
    private final double[] highestCellV;
    private final List<CurrentLimits.Limit> allowedAtStart;

    private double timeS;
    private double chargeC;
    private double energyJ;
    private double heatJ;
    private double highestK;
    private double peakW;
    private double movedJ;
    private double movedHeatJ;
    private double constantCurrentS;
    private double constantCurrentC;
    private boolean held;
    private OptionalDouble to80S = OptionalDouble.empty();
    private StringCharge atTarget;
    private boolean endsAtTarget;

    /**
     * Makes ready.
     *
     * @param task the question
     * @param indices positions of the segments in the pack
     * @param cells their cells
     * @param supplyW power that the supply leaves at this output, W
     */
    ChargeRun(ChargeTask task, List<Integer> indices, List<ChargingCell> cells, double supplyW) {
        this(task, indices, cells, supplyW, FINE);
    }

    ChargeRun(ChargeTask task, List<Integer> indices, List<ChargingCell> cells, double supplyW, double coarseness) {
        this.task = task;
        this.coarseness = coarseness;
        this.indices = indices;
        limits = new CurrentLimits(task, supplyW);
        string = new CellString(cells, task.pack().leadResistanceOhm());
        string.prepare();
        before = string.copy();
        endA = task.endRatePerS() * string.capacityC();
        targetFraction = task.target().kind() == ChargeTarget.Kind.FULL
                ? Double.POSITIVE_INFINITY
                : task.target().fraction();
        startFraction = cells.stream().mapToDouble(ChargingCell::chargeFraction).toArray();
        highestCellV = new double[cells.size()];
        allowedAtStart = cells.stream().map(limits::allowed).toList();
        highestK = string.highestK();
    }

    /** The charge to what was asked for, without the way on to full. */
    StringCharge toTarget() {
        endsAtTarget = true;
        return run();
    }

    StringCharge run() {
        CurrentLimits.Limit start = limits.withoutHold(string);
        double holdA = limits.holdA(string);
        CurrentLimits.Limit first = start.least(holdA, LimitedBy.HOLD_VOLTAGE);
        if (start.currentA() <= 0) {
            return result(start.by() == LimitedBy.HOT ? ChargeEnd.TOO_HOT : ChargeEnd.TOO_COLD, first);
        }
        boolean fullAlready = first.by() == LimitedBy.HOLD_VOLTAGE && first.currentA() <= endA;
        if (fullAlready || string.lowestFraction() >= targetFraction) {
            return result(ChargeEnd.NOTHING_TO_CHARGE, first);
        }
        see(first.currentA());
        LimitedBy mode = first.by();
        double stepS = FIRST_HOLD_STEP_S;
        double growthPerS = 0;
        for (int n = 0; n < MOST_STEPS; n++) {
            CurrentLimits.Limit unheld = limits.withoutHold(string);
            double heldA = limits.holdA(string);
            boolean holding = heldA <= unheld.currentA() * (1 + AT_HOLD);
            CurrentLimits.Limit now = holding ? new CurrentLimits.Limit(heldA, LimitedBy.HOLD_VOLTAGE) : unheld;
            if (now.by() != mode) {
                mode = now.by();
                growthPerS = 0;
            }
            if (holding && !held) {
                held = true;
                constantCurrentS = timeS;
                constantCurrentC = chargeC;
            }
            if (unheld.currentA() <= 0) {
                return whatever(ChargeEnd.TOO_HOT, first);
            }
            if (holding && now.currentA() <= endA * (1 + AT_HOLD)) {
                return whatever(ChargeEnd.REACHED, first);
            }
            if (timeS >= LONGEST_S) {
                return whatever(ChargeEnd.TOO_LONG, first);
            }
            double dtS = holding
                    ? stepS
                    : Math.min(
                            coarseness * LONGEST_STEP_S,
                            coarseness * STEP_CHARGE * string.capacityC() / now.currentA());
            double meanA = Math.max(0, now.currentA() + growthPerS * dtS / 2);
            dtS = step(meanA, Math.min(dtS, toTargetS(meanA)), now.currentA(), holding);
            double thenA = Math.min(limits.withoutHold(string).currentA(), limits.holdA(string));
            growthPerS = (thenA - now.currentA()) / dtS;
            if (holding) {
                stepS = nextHoldStepS(dtS, thenA, growthPerS);
            }
            see(thenA);
            noteMilestones(first, meanA, dtS);
            if (endsAtTarget && atTarget != null) {
                return atTarget;
            }
        }
        return whatever(ChargeEnd.TOO_LONG, first);
    }

    private double nextHoldStepS(double dtS, double currentA, double growthPerS) {
        double wantedS = growthPerS < 0 ? coarseness * STEP_FALL * currentA / -growthPerS : 2 * dtS;
        return Math.min(coarseness * LONGEST_STEP_S, Math.max(dtS / 2, Math.min(2 * dtS, wantedS)));
    }

    /**
     * A step that would go past where the hold begins, or past its end, ends there.
     *
     * @return how long it was, s
     */
    private double step(double meanA, double wantedS, double nowA, boolean holding) {
        before.take(string);
        double roomA = limits.holdA(string) - meanA;
        move(meanA, wantedS);
        double thenA = limits.holdA(string);
        double share = 1;
        if (holding && thenA < endA) {
            share = Math.log(nowA / endA) / Math.log(nowA / thenA);
        } else if (!holding && meanA - thenA > AT_HOLD * meanA) {
            share = roomA / (roomA + meanA - thenA);
        }
        if (share == 1) {
            return wantedS;
        }
        double dtS = Math.max(SHORTEST_STEP_S, share * wantedS);
        back(meanA, wantedS);
        move(meanA, dtS);
        return dtS;
    }

    private void move(double meanA, double dtS) {
        double beforeV = string.voltageV(meanA);
        movedHeatJ = string.heatW(meanA) * dtS;
        string.advance(meanA, dtS);
        movedJ = (beforeV + string.voltageV(meanA)) / 2 * meanA * dtS;
        heatJ += movedHeatJ;
        energyJ += movedJ;
        chargeC += meanA * dtS;
        timeS += dtS;
    }

    private void back(double meanA, double dtS) {
        string.take(before);
        heatJ -= movedHeatJ;
        energyJ -= movedJ;
        chargeC -= meanA * dtS;
        timeS -= dtS;
    }

    /** Time until the lowest segment has what was asked for, at a current, s. */
    private double toTargetS(double currentA) {
        double lacks = targetFraction - string.lowestFraction();
        if (atTarget != null || !(lacks > 0) || Double.isInfinite(lacks)) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.max(1e-6, lacks * string.capacityC() / currentA);
    }

    private void see(double currentA) {
        for (int k = 0; k < highestCellV.length; k++) {
            highestCellV[k] = Math.max(highestCellV[k], string.cellV(k, currentA));
        }
        highestK = Math.max(highestK, string.highestK());
        peakW = Math.max(peakW, currentA * string.voltageV(currentA));
        curve.add(new ChargePoint(
                timeS,
                currentA,
                string.voltageV(currentA),
                string.highestCellV(currentA),
                string.lowestFraction(),
                string.highestK(),
                energyJ));
    }

    private void noteMilestones(CurrentLimits.Limit first, double meanA, double dtS) {
        double fraction = string.lowestFraction();
        if (to80S.isEmpty() && fraction >= FIELD_DAY_FRACTION) {
            double beyondS = (fraction - FIELD_DAY_FRACTION) * string.capacityC() / meanA;
            to80S = OptionalDouble.of(timeS - Math.min(dtS, beyondS));
        }
        if (atTarget == null && fraction >= targetFraction - 1e-9) {
            atTarget = result(ChargeEnd.REACHED, first);
        }
    }

    /** What was noted when the charge had what was asked for; the way on to full says how long that takes. */
    private StringCharge whatever(ChargeEnd end, CurrentLimits.Limit first) {
        if (atTarget == null) {
            return result(end, first);
        }
        StringCharge whole = result(end, first);
        return new StringCharge(
                ChargeEnd.REACHED,
                atTarget.limit(),
                atTarget.startA(),
                to80S,
                atTarget.timeToTargetS(),
                whole.timeToFullS(),
                whole.constantCurrentS(),
                whole.constantCurrentFraction(),
                atTarget.chargeC(),
                atTarget.energyJ(),
                atTarget.heatJ(),
                atTarget.highestK(),
                atTarget.peakW(),
                atTarget.segments(),
                atTarget.curve());
    }

    private StringCharge result(ChargeEnd end, CurrentLimits.Limit first) {
        boolean reached = end == ChargeEnd.REACHED || end == ChargeEnd.NOTHING_TO_CHARGE;
        boolean full = Double.isInfinite(targetFraction) || atTarget != null;
        double shownA = curve.isEmpty() ? 0 : curve.get(curve.size() - 1).currentA();
        List<SegmentCharge> segments = new ArrayList<>();
        for (int k = 0; k < indices.size(); k++) {
            ChargingCell cell = string.cells().get(k);
            CurrentLimits.Limit allowed = allowedAtStart.get(k);
            segments.add(new SegmentCharge(
                    indices.get(k),
                    startFraction[k],
                    cell.chargeFraction(),
                    string.cellV(k, shownA),
                    Math.max(highestCellV[k], string.cellV(k, shownA)),
                    first.currentA(),
                    timeS,
                    allowed.currentA(),
                    allowed.by()));
        }
        return new StringCharge(
                end,
                first.by(),
                first.currentA(),
                startFraction80() ? OptionalDouble.of(0) : to80S,
                reached ? OptionalDouble.of(timeS) : OptionalDouble.empty(),
                reached && full ? OptionalDouble.of(timeS) : OptionalDouble.empty(),
                held ? constantCurrentS : timeS,
                chargeC > 0 && held ? constantCurrentC / chargeC : 1,
                chargeC,
                energyJ,
                heatJ,
                highestK,
                peakW,
                segments,
                curve);
    }

    private boolean startFraction80() {
        for (double fraction : startFraction) {
            if (fraction < FIELD_DAY_FRACTION) {
                return false;
            }
        }
        return true;
    }
}
