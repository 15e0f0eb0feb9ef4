package trestle.http;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiFault;
import trestle.api.model.ApiProblem;
import trestle.endpoint.ImpossibleRequest;
import trestle.numeric.ImpossibleValue;

/** A request that is answered with a problem. */
final class Refusal extends RuntimeException {
    private final transient Problems.Kind kind;
    private final transient List<ApiFault> faults;

    Refusal(Problems.Kind kind, String detail) {
        this(kind, detail, List.of());
    }

    Refusal(Problems.Kind kind, List<ApiFault> faults) {
        this(kind, null, faults);
    }

    private Refusal(Problems.Kind kind, String detail, List<ApiFault> faults) {
        super(detail, null, false, false);
        this.kind = kind;
        this.faults = List.copyOf(faults);
    }

    /** What a failure means to the caller, where the request is to blame for it. */
    static Optional<Refusal> behind(RuntimeException failure) {
        if (failure instanceof Refusal refusal) {
            return Optional.of(refusal);
        }
        if (failure instanceof ImpossibleRequest impossible) {
            return Optional.of(new Refusal(Problems.Kind.IMPOSSIBLE_REQUEST, impossible.faults()));
        }
        // A record refused a value that the contract lets through: the caller still learns which.
        if (failure instanceof ImpossibleValue impossible) {
            return Optional.of(new Refusal(Problems.Kind.IMPOSSIBLE_REQUEST, impossible.getMessage()));
        }
        return Optional.empty();
    }

    /** As problem details. */
    ApiProblem problem() {
        return Problems.problem(kind, getMessage(), faults);
    }

    Problems.Kind kind() {
        return kind;
    }

    List<ApiFault> faults() {
        return faults;
    }
}
