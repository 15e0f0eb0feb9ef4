package trestle.telemetry;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a charge between two rest voltages says of the pack's capacity.
 *
 * @param capacityC capacity, C
 * @param deviationC standard deviation, C
 */
public record CapacityEstimate(double capacityC, double deviationC) {
    /** Less of the charge than this says too little. Common practice, no source. */
    private static final double LEAST_SHARE = 0.1;

    /**
     * The estimate.
     *
     * @param curve rest voltage of the pack as it is described
     * @param fromV rest voltage before, V; empty: the charge that the pack is said to begin with
     * @param toV rest voltage after, V
     * @param chargeC charge between, C
     * @return capacity; empty where the voltages are off the curve or hardly differ
     */
    public static Optional<CapacityEstimate> of(RestCurve curve, OptionalDouble fromV, double toV, double chargeC) {
        OptionalDouble from =
                fromV.isPresent() ? curve.usedC(fromV.getAsDouble()) : OptionalDouble.of(curve.startUsedC());
        OptionalDouble to = curve.usedC(toV);
        if (from.isEmpty() || to.isEmpty() || chargeC <= 0) {
            return Optional.empty();
        }
        double used = to.getAsDouble() - from.getAsDouble();
        if (used < LEAST_SHARE * curve.capacityC()) {
            return Optional.empty();
        }
        double capacity = curve.capacityC() * chargeC / used;
        double before = fromV.isPresent() ? curve.usedDeviationC(fromV.getAsDouble()) : 0;
        double byVoltage = Math.hypot(before, curve.usedDeviationC(toV)) / used;
        return Optional.of(new CapacityEstimate(capacity, capacity * Math.hypot(byVoltage, Landing.CHARGE_DEVIATION)));
    }
}
