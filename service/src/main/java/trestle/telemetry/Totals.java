package trestle.telemetry;

import java.util.OptionalDouble;

/**
 * What a flight took and how far it went. Nothing is added up across a gap.
 *
 * @param coveredS time that the sums are over, s
 * @param chargeC charge out of the pack, C
 * @param energyJ energy out of the pack, J
 * @param groundDistanceM way over the ground, m
 * @param airDistanceM way through the air, m
 * @param jumpCount steps of position that no such aircraft flies, left out
 * @param lowestVoltageV lowest voltage, V
 * @param lowestVoltageAtS when that was, s
 * @param countedC charge by the recorder's own counter over the same time, C
 */
public record Totals(
        double coveredS,
        double chargeC,
        double energyJ,
        OptionalDouble groundDistanceM,
        OptionalDouble airDistanceM,
        int jumpCount,
        double lowestVoltageV,
        double lowestVoltageAtS,
        OptionalDouble countedC) {
    /**
     * Energy over time.
     *
     * @return mean power, W
     */
    public double meanPowerW() {
        return energyJ / coveredS;
    }
}
