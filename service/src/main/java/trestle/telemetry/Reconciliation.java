package trestle.telemetry;

/**
 * Charge used, capacity and rest voltage, of which any two give the third.
 *
 * @param chargeSaidC charge as counted, C
 * @param chargeShownC charge that the rest voltage shows on this capacity, C
 * @param deviationC standard deviation of their difference, C
 * @param capacityC capacity as described, C
 * @param restVoltageV rest voltage as read, V
 * @param restVoltageDueV rest voltage that the counted charge leaves, V
 * @param apart whether they cannot all be true
 */
public record Reconciliation(
        double chargeSaidC,
        double chargeShownC,
        double deviationC,
        double capacityC,
        double restVoltageV,
        double restVoltageDueV,
        boolean apart) {
    /**
     * True charge over the counted one, if the other two hold.
     *
     * @return factor
     */
    public double chargeFactor() {
        return chargeShownC / chargeSaidC;
    }

    /**
     * True capacity over the described one, if the other two hold.
     *
     * @return factor; infinite where the voltage shows no charge used
     */
    public double capacityFactor() {
        return chargeSaidC / chargeShownC;
    }

    /**
     * True rest voltage over the one that was read, if the other two hold.
     *
     * @return factor
     */
    public double voltageFactor() {
        return restVoltageDueV / restVoltageV;
    }
}
