package trestle.telemetry;

/**
 * A stretch of a flight.
 *
 * @param kind what it is
 * @param startS from, s
 * @param endS to, s
 * @param energyJ energy out of the pack in it, J
 */
public record Phase(PhaseKind kind, double startS, double endS, double energyJ) {
    /**
     * How long.
     *
     * @return duration, s
     */
    public double durationS() {
        return endS - startS;
    }
}
