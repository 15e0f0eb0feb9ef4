package trestle.binding;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiFault;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.MissingFields;
import trestle.numeric.ImpossibleValue;

/** A request that is not answered, and why. */
public final class Refusal extends RuntimeException {
    private final transient Reason reason;
    private final transient List<ApiFault> faults;

    /**
     * A refusal of the whole.
     *
     * @param reason of what sort it is
     * @param detail what is wrong, in a sentence; null where the reason says it all
     */
    public Refusal(Reason reason, String detail) {
        this(reason, detail, List.of());
    }

    /**
     * A refusal for what is wrong at some fields.
     *
     * @param reason of what sort it is
     * @param faults each with the pointer of its field
     */
    public Refusal(Reason reason, List<ApiFault> faults) {
        this(reason, null, faults);
    }

    private Refusal(Reason reason, String detail, List<ApiFault> faults) {
        super(detail, null, false, false);
        this.reason = reason;
        this.faults = List.copyOf(faults);
    }

    /**
     * What a failure means to the caller.
     *
     * @param failure what was thrown while a request was answered
     * @return the refusal, where the request is to blame
     */
    public static Optional<Refusal> behind(RuntimeException failure) {
        if (failure instanceof Refusal refusal) {
            return Optional.of(refusal);
        }
        if (failure instanceof ImpossibleRequest impossible) {
            return Optional.of(new Refusal(Reason.IMPOSSIBLE, impossible.faults()));
        }
        if (failure instanceof MissingFields missing) {
            return Optional.of(new Refusal(Reason.INVALID, missing.faults()));
        }
        // A record refused a value that the contract lets through: the caller still learns which.
        if (failure instanceof ImpossibleValue impossible) {
            return Optional.of(new Refusal(Reason.IMPOSSIBLE, impossible.getMessage()));
        }
        return Optional.empty();
    }

    /**
     * Why the request is refused.
     *
     * @return the reason
     */
    public Reason reason() {
        return reason;
    }

    /**
     * What is wrong, field by field.
     *
     * @return the faults; none where the message says what is wrong with the whole
     */
    public List<ApiFault> faults() {
        return faults;
    }
}
