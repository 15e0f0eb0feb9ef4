package trestle.wiring;

import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * Mated connectors of one kind on a run.
 *
 * @param name the builder's name for it
 * @param contactResistanceOhm resistance of one mated contact, Ω, not negative
 * @param ratedCurrentA continuous current it is rated for, A, above 0
 * @param count connectors on the run, at least 1; the current passes each twice, out and back
 * @param thermalResistanceKPerW rise of one contact over its heat, K/W, above 0; empty where it is not known
 * @param ratedRiseK rise of a contact at the rated current, K, above 0; used where no thermal resistance is known
 */
public record Connector(
        String name,
        double contactResistanceOhm,
        double ratedCurrentA,
        int count,
        OptionalDouble thermalResistanceKPerW,
        double ratedRiseK) {
    /** The rise that ratings are commonly set for, K: IEC 60512-5, from memory. */
    public static final double USUAL_RATED_RISE_K = 30;

    /** Out and back. */
    public static final int CONTACTS_PER_CONNECTOR = 2;

    /** Checks the physics. */
    public Connector {
        Guard.present("name", name);
        Guard.notNegative("contactResistanceOhm", contactResistanceOhm);
        Guard.positive("ratedCurrentA", ratedCurrentA);
        thermalResistanceKPerW.ifPresent(it -> Guard.positive("thermalResistanceKPerW", it));
        Guard.positive("ratedRiseK", ratedRiseK);
        if (count < 1) {
            throw new ImpossibleValue("count", "count is " + count + ", and must be at least 1");
        }
    }

    /**
     * A connector whose rating is for the usual rise.
     *
     * @param name the builder's name for it
     * @param contactResistanceOhm resistance of one mated contact, Ω
     * @param ratedCurrentA continuous current it is rated for, A
     * @param count connectors on the run
     */
    public Connector(String name, double contactResistanceOhm, double ratedCurrentA, int count) {
        this(name, contactResistanceOhm, ratedCurrentA, count, OptionalDouble.empty(), USUAL_RATED_RISE_K);
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
