package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiEstimate;
import trestle.api.model.ApiFinding;
import trestle.api.model.ApiSeverity;
import trestle.api.model.ApiVerdict;
import trestle.endpoint.Reading;
import trestle.figure.Numbers;
import trestle.sheet.Assumed;
import trestle.sheet.Grade;
import trestle.sheet.Judged;
import trestle.sheet.Sheet;

/**
 * Puts an answer on a sheet: the numbers and sentences are those of the answer, rounded to read.
 */
public final class ReviewSheet {
    private ReviewSheet() {}

    static Sheet of(Optional<String> name, ApiBuildReviewAnswer answer, List<String> figures, String asked) {
        return new Sheet(
                name.orElse(""),
                grade(answer.verdict()),
                answer.findings().stream().map(ReviewSheet::judged).toList(),
                answer.checks().stream().map(ReviewChecked::of).toList(),
                ReviewKeyNumbers.of(answer.keyFigures(), answer.bands()),
                ReviewTables.of(answer),
                figures,
                assumed(answer),
                answer.cautions(),
                answer.computedBy().version(),
                answer.computedBy().models(),
                asked);
    }

    /** What was estimated stands first: it has a band. */
    private static List<Assumed> assumed(ApiBuildReviewAnswer answer) {
        return Stream.concat(
                        Reading.listed(answer.estimates()).stream().map(ReviewSheet::estimated),
                        answer.assumptions().stream().map(a -> new Assumed(a.at(), a.assumed(), a.because())))
                .toList();
    }

    private static Assumed estimated(ApiEstimate estimate) {
        String unit = estimate.unit() == null ? "" : " " + estimate.unit();
        return new Assumed(
                estimate.at(),
                significant(estimate.median()) + unit + ", " + significant(estimate.low()) + " to "
                        + significant(estimate.high()),
                "estimated from " + estimate.from() + "; " + estimate.source());
    }

    private static String significant(double value) {
        return Numbers.significant(value, 3);
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
