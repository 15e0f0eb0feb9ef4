package trestle.review;

import java.util.Optional;
import trestle.wiring.GaugeAnswer;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;

/**
 * A run of wire as the review judged it.
 *
 * @param carriesPackCurrent whether it lies between packs and controllers
 * @param task what it had to stand, with the currents of this aircraft
 * @param sizing how the gauges do
 */
public record RunReview(boolean carriesPackCurrent, WireTask task, WireSizing sizing) {
    /**
     * The gauge that was weighed and whose resistance was counted.
     *
     * @return the one fitted, else the recommended one; empty where none meets the limits
     */
    public Optional<GaugeAnswer> fitted() {
        return sizing.chosen();
    }
}
