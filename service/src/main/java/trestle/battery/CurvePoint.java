package trestle.battery;

/**
 * A moment of a discharge.
 *
 * @param timeS time from the start, s
 * @param voltageV voltage at the end of the leads, V
 * @param currentA current, A
 * @param powerW power at the end of the leads, W
 * @param stateOfChargeFraction charge of the emptiest segment
 * @param energyJ energy delivered so far, J
 * @param temperatureK temperature of the hottest segment, K
 */
public record CurvePoint(
        double timeS,
        double voltageV,
        double currentA,
        double powerW,
        double stateOfChargeFraction,
        double energyJ,
        double temperatureK) {

    static CurvePoint of(Stepper now) {
        Circuit circuit = now.circuit();
        return new CurvePoint(
                now.tally().timeS,
                circuit.voltageV(),
                circuit.currentA(),
                circuit.voltageV() * circuit.currentA(),
                circuit.leastCharge(),
                now.tally().energyJ,
                circuit.highestK());
    }
}
