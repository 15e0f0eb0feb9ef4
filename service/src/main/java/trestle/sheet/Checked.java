package trestle.sheet;

import java.util.List;
import trestle.finding.Outcome;

/**
 * A check on the sheet.
 *
 * @param about what is judged
 * @param outcome how it came out
 * @param value the number that was judged, with its unit; empty where there is none
 * @param limit what it was held against, with its unit; empty where there is none
 * @param margin how far the value keeps from the limit, with its unit; empty where there is none
 * @param basis where the limit is from; empty where there is none, where the reader gave it, and where it is a number on
 *     this sheet
 * @param give JSON Pointers to what would let it be judged; empty where it was
 */
public record Checked(
        String about, Outcome outcome, String value, String limit, String margin, String basis, List<String> give) {
    /** Copies the list. */
    public Checked {
        give = List.copyOf(give);
    }

    boolean passed() {
        return outcome == Outcome.PASSED;
    }

    boolean judged() {
        return outcome != Outcome.NOT_JUDGED;
    }
}
