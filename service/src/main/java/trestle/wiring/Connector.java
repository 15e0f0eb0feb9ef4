package trestle.wiring;

import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * Mated connectors of one kind on a run.
 *
 * @param name the builder's name for it
 * @param contactResistanceOhm resistance of one mated contact, Ω, not negative
 * @param ratedCurrentA continuous current it is rated for, A, above 0
 * @param count connectors on the run, at least 1; the current passes each twice, out and back
 */
public record Connector(String name, double contactResistanceOhm, double ratedCurrentA, int count) {
    /** Out and back. */
    public static final int CONTACTS_PER_CONNECTOR = 2;

    /** Checks the physics. */
    public Connector {
        Guard.present("name", name);
        Guard.notNegative("contactResistanceOhm", contactResistanceOhm);
        Guard.positive("ratedCurrentA", ratedCurrentA);
        if (count < 1) {
            throw new ImpossibleValue("count", "count is " + count + ", and must be at least 1");
        }
    }

    /**
     * Resistance that it puts in the loop, out and back.
     *
     * @return resistance, Ω
     */
    public double loopResistanceOhm() {
        return CONTACTS_PER_CONNECTOR * count * contactResistanceOhm;
    }
}
