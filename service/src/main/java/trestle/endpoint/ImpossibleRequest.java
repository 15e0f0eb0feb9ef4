package trestle.endpoint;

import java.util.List;
import trestle.api.model.ApiFault;

/**
 * A request that fits the contract but contradicts itself or physics; carries every fault found.
 */
public final class ImpossibleRequest extends RuntimeException {
    private final transient List<ApiFault> faults;

    /**
     * States what is wrong.
     *
     * @param faults every fault, at least one
     */
    public ImpossibleRequest(List<ApiFault> faults) {
        super("impossible request");
        this.faults = List.copyOf(faults);
    }

    /**
     * Every fault found.
     *
     * @return the faults
     */
    public List<ApiFault> faults() {
        return faults;
    }
}
