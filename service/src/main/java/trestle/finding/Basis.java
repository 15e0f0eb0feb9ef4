package trestle.finding;

import trestle.numeric.Guard;

/**
 * Where a limit is from.
 *
 * @param said as a caller reads it
 */
public record Basis(String said) {
    /** The caller's own number. */
    public static final Basis REQUEST = new Basis("the request");

    /** The number that the contract takes where none is given. */
    public static final Basis DEFAULT = new Basis("the contract's default");

    /** What builders keep to, which no source states. */
    public static final Basis COMMON_PRACTICE = new Basis("common practice, no source");

    /** What this calculation itself found: another of its numbers is the limit. */
    public static final Basis COMPUTED = new Basis("this calculation");

    /** Checks that something is said. */
    public Basis {
        Guard.present("said", said);
    }

    /**
     * A published source.
     *
     * @param source author, title, section
     * @return the basis
     */
    public static Basis source(String source) {
        return new Basis(source);
    }
}
