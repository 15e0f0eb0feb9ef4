package trestle.charging;

import java.util.OptionalDouble;

/**
 * What the charge takes from the supply.
 *
 * @param energyJ energy, J
 * @param peakW greatest power, W
 * @param chargeC charge of a field battery, C; empty without one
 * @param usableC charge that it gives at this mean current, C; empty without one
 */
public record SupplyUse(double energyJ, double peakW, OptionalDouble chargeC, OptionalDouble usableC) {
    /**
     * How many such charges the battery gives.
     *
     * @return charges; empty without a battery
     */
    public OptionalDouble charges() {
        return chargeC.isPresent() && chargeC.getAsDouble() > 0
                ? OptionalDouble.of(usableC.getAsDouble() / chargeC.getAsDouble())
                : OptionalDouble.empty();
    }

    static SupplyUse of(ChargeTask task, double energyJ, double peakW, double timeS) {
        double takenJ = energyJ / task.charger().efficiencyFraction();
        double takenW = peakW / task.charger().efficiencyFraction();
        var battery = task.supply().flatMap(ChargeSupply::battery);
        if (battery.isEmpty() || !(timeS > 0)) {
            return new SupplyUse(takenJ, takenW, OptionalDouble.empty(), OptionalDouble.empty());
        }
        double takenC = takenJ / battery.get().nominalVoltageV();
        return new SupplyUse(
                takenJ,
                takenW,
                OptionalDouble.of(takenC),
                OptionalDouble.of(battery.get().usableC(takenC / timeS)));
    }
}
