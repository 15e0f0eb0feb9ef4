package trestle.wiring;

import java.util.List;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A resistor that touches before the plug goes home.
 *
 * @param resistanceOhm its resistance, Ω; empty where one is to be chosen
 * @param energyRatingJ energy of a pulse that it stands, J; empty where not known
 */
public record Precharge(OptionalDouble resistanceOhm, OptionalDouble energyRatingJ) {
    /** First current that a plug and a small resistor stand, A. Common practice, no source. */
    private static final double FIRST_CURRENT_A = 5;

    /** After so many time constants 0.7 % of the voltage is left. */
    static final double TIME_CONSTANTS = 5;

    private static final List<Double> USUAL_OHM = List.of(1.0, 2.2, 4.7, 10.0, 22.0, 47.0, 100.0, 220.0, 470.0, 1000.0);

    /** Checks that nothing is null. */
    public Precharge {
        Guard.present("resistanceOhm", resistanceOhm);
        Guard.present("energyRatingJ", energyRatingJ);
    }

    /**
     * The resistor, given or chosen: the smallest usual one that keeps the first current at 5 A or less.
     *
     * @param voltageV voltage at the supply, V
     * @return resistance, Ω
     */
    public double resistanceAt(double voltageV) {
        double least = voltageV / FIRST_CURRENT_A;
        return resistanceOhm.orElseGet(
                () -> USUAL_OHM.stream().filter(ohm -> ohm >= least).findFirst().orElse(least));
    }
}
