package trestle.wiring;

import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.numeric.Guard;

/**
 * What a run may drop.
 *
 * @param continuousFraction at the continuous current, of the supply voltage, above 0 to 1
 * @param continuousBasis where that is from
 * @param peakFraction at the peak current, above 0 to 1
 * @param peakBasis where that is from
 */
public record DropLimits(double continuousFraction, Basis continuousBasis, double peakFraction, Basis peakBasis) {
    /** Drop limit where none is given. Common practice, no source; [7] has 2 % for main feeders. */
    public static final double USUAL_FRACTION = 0.03;

    /** Intermittent over continuous loads, [7] table 11-6: 1 over 0.5 V at 14 V, 2 over 1 V at 28 V. */
    public static final double PEAK_RATIO = 2;

    /** Where {@link #PEAK_RATIO} is from. */
    public static final Basis INTERMITTENT = Basis.source("FAA AC 43.13-1B, table 11-6, from memory");

    /** Checks the physics. */
    public DropLimits {
        fraction("maxDropFraction", continuousFraction);
        Guard.present("continuousBasis", continuousBasis);
        fraction("maxPeakDropFraction", peakFraction);
        Guard.present("peakBasis", peakBasis);
    }

    /**
     * The limits given, and for each that is not the usual one.
     *
     * @param continuous at the continuous current, 0 to 1
     * @param peak at the peak current, 0 to 1; twice the other where it is not given
     * @return the limits
     */
    public static DropLimits of(OptionalDouble continuous, OptionalDouble peak) {
        double fraction = continuous.orElse(USUAL_FRACTION);
        return new DropLimits(
                fraction,
                continuous.isPresent() ? Basis.REQUEST : Basis.COMMON_PRACTICE,
                peak.orElse(Math.min(1, PEAK_RATIO * fraction)),
                peak.isPresent() ? Basis.REQUEST : INTERMITTENT);
    }

    private static void fraction(String name, double value) {
        Guard.positive(name, value);
        Guard.within(name, value, 0, 1);
    }
}
