package trestle.endpoint;

import java.util.List;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiBands;
import trestle.api.model.ApiEstimate;
import trestle.api.model.ApiRisk;

/**
 * What an answer rests on beside the numbers given.
 *
 * @param assumptions the defaults that were noted while reading
 * @param estimates what the request left out, greatest share first
 * @param bands how sure the main figures are; null where none was sought or nothing is open
 * @param risks stops that some draws have and the answer has not, most frequent first
 */
public record Premises(
        List<ApiAssumption> assumptions, List<ApiEstimate> estimates, ApiBands bands, List<ApiRisk> risks) {
    /** Nothing beside the numbers given. */
    public static final Premises NONE = new Premises(List.of(), List.of(), null, List.of());

    /** Copies the lists. */
    public Premises {
        assumptions = List.copyOf(assumptions);
        estimates = List.copyOf(estimates);
        risks = List.copyOf(risks);
    }

    /**
     * Nothing but defaults.
     *
     * @param assumptions the defaults
     * @return the premises
     */
    public static Premises of(List<ApiAssumption> assumptions) {
        return new Premises(assumptions, List.of(), null, List.of());
    }
}
