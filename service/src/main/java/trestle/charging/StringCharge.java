package trestle.charging;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The charge of segments that share one current.
 *
 * @param end why it ended
 * @param limit what set the current at the start
 * @param startA current at the start, A
 * @param timeTo80S until every segment has 80 % of its capacity as it is now, s; empty where none is reached
 * @param timeToTargetS until what was asked for, s; empty where it is not reached
 * @param timeToFullS until the current has fallen to its end, s; empty where it is not reached
 * @param constantCurrentS time before the hold, on the way to full, s
 * @param constantCurrentFraction share of the charge on the way to full that goes in before the hold
 * @param chargeC charge to what was asked for, C
 * @param energyJ energy at the charger's output to it, J
 * @param heatJ heat in the cells to it, J
 * @param highestK highest temperature of a cell on the way to it, K
 * @param peakW greatest power at the charger's output, W
 * @param segments how each segment stands at what was asked for, in their order
 * @param curve the way to it
 */
public record StringCharge(
        ChargeEnd end,
        LimitedBy limit,
        double startA,
        OptionalDouble timeTo80S,
        OptionalDouble timeToTargetS,
        OptionalDouble timeToFullS,
        double constantCurrentS,
        double constantCurrentFraction,
        double chargeC,
        double energyJ,
        double heatJ,
        double highestK,
        double peakW,
        List<SegmentCharge> segments,
        List<ChargePoint> curve) {
    /** Copies the lists. */
    public StringCharge {
        segments = List.copyOf(segments);
        curve = List.copyOf(curve);
    }

    /**
     * Time of the hold.
     *
     * @return time, s; 0 where full is not reached
     */
    public double constantVoltageS() {
        return timeToFullS.isPresent() ? timeToFullS.getAsDouble() - constantCurrentS : 0;
    }
}
