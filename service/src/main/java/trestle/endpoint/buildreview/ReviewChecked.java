package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import trestle.api.model.ApiCheck;
import trestle.figure.Numbers;
import trestle.finding.Basis;
import trestle.finding.Outcome;
import trestle.sheet.Checked;

/** Puts a check on the sheet, its numbers rounded to read. */
final class ReviewChecked {
    /** Two numbers that differ by less than this share of themselves look alike. */
    private static final int DIGITS = 4;

    /** Limits that the reader has given, or finds on the sheet. */
    private static final Set<String> KNOWN = Set.of(Basis.REQUEST.said(), Basis.COMPUTED.said());

    private ReviewChecked() {}

    static Checked of(ApiCheck check) {
        Outcome outcome = Outcome.valueOf(check.outcome().name());
        String unit = Optional.ofNullable(check.unit()).orElse("");
        return new Checked(
                check.about(),
                outcome,
                measured(check.value(), unit),
                measured(check.limit(), unit),
                outcome == Outcome.PASSED ? margin(check.marginPercent()) : "",
                check.limit() == null || KNOWN.contains(check.basis()) ? "" : check.basis(),
                Optional.ofNullable(check.give()).orElse(List.of()));
    }

    private static String measured(Double value, String unit) {
        if (value == null) {
            return "";
        }
        String number = Numbers.significant(value, DIGITS);
        return unit.isEmpty() || unit.equals("°") ? number + unit : number + " " + unit;
    }

    /** Beyond a limit that only a note is about a check still passes; its numbers show it. */
    private static String margin(Double percent) {
        return percent == null || percent < 0 ? "" : Numbers.significant(percent, 3) + " %";
    }
}
