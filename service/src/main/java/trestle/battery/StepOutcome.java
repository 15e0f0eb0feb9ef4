package trestle.battery;

/**
 * What happened in one step of a load: a leg of a flight.
 *
 * @param startS when it began, s from the start of the discharge
 * @param endS when it ended, s
 * @param startVoltageV voltage of the pack just after the load came on, V
 * @param endVoltageV voltage at its end, V
 * @param lowestVoltageV least voltage in it, V
 * @param highestCurrentA greatest current in it, A
 * @param energyJ energy delivered in it, J
 * @param chargeC charge delivered in it, C
 * @param completed whether it was held to its end
 */
public record StepOutcome(
        double startS,
        double endS,
        double startVoltageV,
        double endVoltageV,
        double lowestVoltageV,
        double highestCurrentA,
        double energyJ,
        double chargeC,
        boolean completed) {}
