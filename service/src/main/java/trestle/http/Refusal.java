package trestle.http;

import java.util.List;
import trestle.api.model.Fault;

/** A request that is answered with a problem. */
final class Refusal extends RuntimeException {
    private final transient Problems.Kind kind;
    private final transient List<Fault> faults;

    Refusal(Problems.Kind kind, String detail) {
        this(kind, detail, List.of());
    }

    Refusal(Problems.Kind kind, List<Fault> faults) {
        this(kind, null, faults);
    }

    private Refusal(Problems.Kind kind, String detail, List<Fault> faults) {
        super(detail, null, false, false);
        this.kind = kind;
        this.faults = List.copyOf(faults);
    }

    Problems.Kind kind() {
        return kind;
    }

    List<Fault> faults() {
        return faults;
    }
}
