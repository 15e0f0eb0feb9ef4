package trestle.charging;

/**
 * A moment of a charge.
 *
 * @param timeS since the start, s
 * @param currentA current from the charger, A
 * @param voltageV voltage at its output, V
 * @param cellV highest voltage of a cell, V
 * @param fraction lowest state of charge of a segment, of its capacity as it is now
 * @param temperatureK highest temperature of a cell, K
 * @param energyJ energy given so far, J
 */
public record ChargePoint(
        double timeS,
        double currentA,
        double voltageV,
        double cellV,
        double fraction,
        double temperatureK,
        double energyJ) {
    /** The same in a charge that began later, when others had taken an energy. */
    ChargePoint after(double laterS, double beforeJ) {
        return new ChargePoint(timeS + laterS, currentA, voltageV, cellV, fraction, temperatureK, energyJ + beforeJ);
    }
}
