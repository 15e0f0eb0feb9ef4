package trestle.finding;

/** What is said wherever numbers are looked at, whatever they are about. */
public final class Caution {
    /** What the numbers are, and what comes before them. */
    public static final String AID =
            "An aid, not an approval: local rules, makers' data and licensed practice come first.";

    private Caution() {}
}
