package trestle.telemetry;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * What was written down after a landing.
 *
 * @param durationS time in the air, s
 * @param chargeC charge out of the pack, C
 * @param energyJ energy out of the pack, J
 * @param airspeedMPerS mean airspeed, m/s
 * @param distanceM way over the ground, m
 * @param restVoltageV pack voltage at rest afterwards, V
 * @param lowestVoltageV lowest pack voltage in flight, V
 */
public record Landing(
        double durationS,
        OptionalDouble chargeC,
        OptionalDouble energyJ,
        OptionalDouble airspeedMPerS,
        OptionalDouble distanceM,
        OptionalDouble restVoltageV,
        OptionalDouble lowestVoltageV) {
    /** How well a current sensor of this kind counts, as a share: common practice, no source. */
    public static final double CHARGE_DEVIATION = 0.05;

    /** How well a label tells a capacity, as a share: common practice, no source. */
    static final double CAPACITY_DEVIATION = 0.05;

    /** Readings further apart than so many deviations cannot all be true. */
    private static final double DEVIATIONS_APART = 2;

    /** Checks the physics. */
    public Landing {
        Guard.positive("durationS", durationS);
    }

    /**
     * Charge, capacity and rest voltage held against each other.
     *
     * @param curve rest voltage of the pack
     * @return what they say; empty where one is missing
     */
    public Optional<Reconciliation> reconciled(RestCurve curve) {
        if (chargeC.isEmpty() || restVoltageV.isEmpty()) {
            return Optional.empty();
        }
        double said = chargeC.getAsDouble();
        double restV = restVoltageV.getAsDouble();
        double shown = Math.max(
                0, curve.usedC(restV).orElse(restV > curve.voltageV(0) ? 0 : curve.capacityC()) - curve.startUsedC());
        double deviation = Math.sqrt(square(CHARGE_DEVIATION * said)
                + square(CAPACITY_DEVIATION * shown)
                + square(curve.usedDeviationC(restV)));
        return Optional.of(new Reconciliation(
                said,
                shown,
                deviation,
                curve.capacityC(),
                restV,
                curve.voltageV(curve.startUsedC() + said),
                Math.abs(said - shown) > DEVIATIONS_APART * deviation));
    }

    private static double square(double x) {
        return x * x;
    }
}
