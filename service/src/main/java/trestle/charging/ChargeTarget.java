package trestle.charging;

import trestle.numeric.Guard;

/**
 * What a charge is to reach.
 *
 * @param kind which
 * @param fraction state of charge, of the capacity as it is now; 1 for {@link Kind#FULL}
 */
public record ChargeTarget(Kind kind, double fraction) {
    /** What is to be reached. */
    public enum Kind {
        /** The end of the hold. */
        FULL,
        /** The charge that a pack rests at. */
        STORAGE,
        /** A state of charge. */
        STATE_OF_CHARGE
    }

    /** Makers' usual advice, 40 to 60 %; from memory. */
    static final double STORAGE_FRACTION = 0.5;

    /** Full. */
    public static final ChargeTarget FULL = new ChargeTarget(Kind.FULL, 1);

    /** Half full, to rest. */
    public static final ChargeTarget STORAGE = new ChargeTarget(Kind.STORAGE, STORAGE_FRACTION);

    /** Checks the physics. */
    public ChargeTarget {
        Guard.present("kind", kind);
        Guard.within("fraction", fraction, 0, 1);
    }
}
