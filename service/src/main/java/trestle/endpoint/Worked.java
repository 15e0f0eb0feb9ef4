package trestle.endpoint;

import java.util.List;
import trestle.api.model.ApiWorking;

/**
 * A calculation that can say how its answer was reached.
 *
 * @param <Q> generated request model
 */
public interface Worked<Q> {
    /**
     * The workings of the answer to a request that fits the contract.
     *
     * @param request validated against its constraints
     * @return lines in order of computation
     * @throws ImpossibleRequest when the request contradicts itself
     */
    List<ApiWorking> workings(Q request);
}
