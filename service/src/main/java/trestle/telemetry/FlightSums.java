package trestle.telemetry;

import java.util.OptionalDouble;

/**
 * The sums of a flight, wherever they are from.
 *
 * @param durationS from first to last, s
 * @param coveredS time that the sums are over, s
 * @param groundDistanceM way over the ground, m
 * @param airDistanceM way through the air, m
 * @param chargeC charge out of the pack, C
 * @param energyJ energy out of the pack, J
 * @param lowestVoltageV lowest pack voltage, V
 */
public record FlightSums(
        double durationS,
        double coveredS,
        OptionalDouble groundDistanceM,
        OptionalDouble airDistanceM,
        OptionalDouble chargeC,
        OptionalDouble energyJ,
        OptionalDouble lowestVoltageV) {

    static FlightSums of(FlightLog log) {
        Totals totals = log.totals();
        return new FlightSums(
                log.screened().durationS(),
                totals.coveredS(),
                totals.groundDistanceM(),
                totals.airDistanceM(),
                OptionalDouble.of(totals.chargeC()),
                OptionalDouble.of(totals.energyJ()),
                OptionalDouble.of(totals.lowestVoltageV()));
    }

    /** The sums of a landing; charge and energy give each other by the pack's mean rest voltage, where it is known. */
    static FlightSums of(Landing landing, java.util.Optional<FlownPack> pack) {
        OptionalDouble charge = landing.chargeC();
        OptionalDouble energy = landing.energyJ();
        if (pack.isPresent() && charge.isPresent() && energy.isEmpty()) {
            energy = OptionalDouble.of(charge.getAsDouble() * meanV(pack.get().rest(), charge.getAsDouble()));
        }
        return new FlightSums(
                landing.durationS(),
                landing.durationS(),
                landing.distanceM(),
                landing.airspeedMPerS().isPresent()
                        ? OptionalDouble.of(landing.airspeedMPerS().getAsDouble() * landing.durationS())
                        : OptionalDouble.empty(),
                charge,
                energy,
                landing.lowestVoltageV());
    }

    private static double meanV(RestCurve curve, double chargeC) {
        return (curve.voltageV(curve.startUsedC()) + curve.voltageV(curve.startUsedC() + chargeC)) / 2;
    }

    /**
     * Energy over time.
     *
     * @return mean power, W
     */
    public OptionalDouble meanPowerW() {
        return energyJ.isPresent() && coveredS > 0
                ? OptionalDouble.of(energyJ.getAsDouble() / coveredS)
                : OptionalDouble.empty();
    }

    /**
     * Way over time.
     *
     * @return mean speed over the ground, m/s
     */
    public OptionalDouble meanGroundSpeedMPerS() {
        return groundDistanceM.isPresent() && coveredS > 0
                ? OptionalDouble.of(groundDistanceM.getAsDouble() / coveredS)
                : OptionalDouble.empty();
    }

    /**
     * Energy over way.
     *
     * @return J/m; empty where either is not known or nothing
     */
    public OptionalDouble energyPerGroundMJ() {
        return energyJ.isPresent() && groundDistanceM.isPresent() && groundDistanceM.getAsDouble() > 1
                ? OptionalDouble.of(energyJ.getAsDouble() / groundDistanceM.getAsDouble())
                : OptionalDouble.empty();
    }
}
