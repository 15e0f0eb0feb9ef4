package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiFinding;
import trestle.api.model.ApiSeverity;
import trestle.api.model.ApiVerdict;
import trestle.sheet.Assumed;
import trestle.sheet.Grade;
import trestle.sheet.Judged;
import trestle.sheet.Sheet;

/**
 * Puts an answer on a sheet: the numbers and sentences are those of the answer, rounded to read.
 */
public final class ReviewSheet {
    private ReviewSheet() {}

    static Sheet of(Optional<String> name, ApiBuildReviewAnswer answer, List<String> figures) {
        return new Sheet(
                name.orElse(""),
                grade(answer.verdict()),
                answer.findings().stream().map(ReviewSheet::judged).toList(),
                answer.checks().stream().map(ReviewChecked::of).toList(),
                ReviewKeyNumbers.of(answer.keyFigures()),
                ReviewTables.of(answer),
                figures,
                answer.assumptions().stream()
                        .map(a -> new Assumed(a.at(), a.assumed(), a.because()))
                        .toList(),
                answer.cautions(),
                answer.computedBy().version(),
                answer.computedBy().models());
    }

    private static Judged judged(ApiFinding finding) {
        return new Judged(grade(finding.severity()), finding.message(), finding.at());
    }

    private static Grade grade(ApiVerdict verdict) {
        return Grade.valueOf(verdict.name());
    }

    private static Grade grade(ApiSeverity severity) {
        return Grade.valueOf(severity.name());
    }
}
