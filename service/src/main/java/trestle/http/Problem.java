package trestle.http;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiFault;
import trestle.api.model.ApiProblem;
import trestle.binding.Reason;
import trestle.binding.Refusal;

/**
 * Why a request gets no answer, as HTTP has it.
 *
 * @param kind with its status
 * @param detail a sentence; null where the kind says it all
 * @param faults what is wrong at which field
 */
record Problem(Problems.Kind kind, String detail, List<ApiFault> faults) {
    /** Copies the list. */
    Problem {
        faults = List.copyOf(faults);
    }

    static Problem of(Problems.Kind kind) {
        return new Problem(kind, null, List.of());
    }

    static Problem of(Refusal refusal) {
        return new Problem(kind(refusal.reason()), refusal.getMessage(), refusal.faults());
    }

    /** What a failure means to the caller, where the request is to blame or the hour is. */
    static Optional<Problem> behind(RuntimeException failure) {
        return failure instanceof Denial denial
                ? Optional.of(new Problem(denial.kind(), denial.getMessage(), List.of()))
                : Refusal.behind(failure).map(Problem::of);
    }

    private static Problems.Kind kind(Reason reason) {
        return switch (reason) {
            case UNREADABLE -> Problems.Kind.MALFORMED_BODY;
            case INVALID -> Problems.Kind.INVALID_REQUEST;
            case IMPOSSIBLE -> Problems.Kind.IMPOSSIBLE_REQUEST;
            case TOO_LARGE -> Problems.Kind.TOO_LARGE;
            case TOO_LATE -> Problems.Kind.TIMEOUT;
            case FAILED -> Problems.Kind.INTERNAL;
        };
    }

    /** As problem details. */
    ApiProblem details() {
        return details(null);
    }

    /** As problem details in one line of a batch. */
    ApiProblem details(Long line) {
        return ApiProblem.builder()
                .type("/problems/" + kind.reference())
                .title(kind.title())
                .status(kind.status())
                .detail(detail)
                .line(line)
                .errors(faults.isEmpty() ? null : faults)
                .build();
    }
}
