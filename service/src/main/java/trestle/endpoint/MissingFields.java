package trestle.endpoint;

import java.util.List;
import trestle.api.model.ApiFault;

/** A request that lacks what nothing may stand in for; carries every fault found. */
public final class MissingFields extends RuntimeException {
    private final transient List<ApiFault> faults;

    /**
     * States what is missing.
     *
     * @param faults every fault, at least one
     */
    public MissingFields(List<ApiFault> faults) {
        super("missing fields", null, false, false);
        this.faults = List.copyOf(faults);
    }

    /** Every fault found. */
    public List<ApiFault> faults() {
        return faults;
    }
}
