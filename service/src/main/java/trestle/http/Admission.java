package trestle.http;

import java.util.List;
import java.util.Optional;

/**
 * Who is answered.
 *
 * @param origins origins of pages that browsers may call from; empty allows none, {@code *} all
 * @param hosts names by which the service may be asked, beside its address and, where that is the machine's own, the
 *     machine's own names
 * @param token what every caller has to know; empty where none is asked for
 */
public record Admission(List<String> origins, List<String> hosts, Optional<AccessToken> token) {
    /** Copies the lists. */
    public Admission {
        origins = List.copyOf(origins);
        hosts = List.copyOf(hosts);
    }

    /**
     * Whoever reaches the address.
     *
     * @return no origin, no name, no token
     */
    public static Admission ofAnyone() {
        return new Admission(List.of(), List.of(), Optional.empty());
    }

    /**
     * The same, with pages of these origins.
     *
     * @param allowed the origins
     * @return the wider admission
     */
    public Admission from(List<String> allowed) {
        return new Admission(allowed, hosts, token);
    }

    /**
     * The same, for those who know a token.
     *
     * @param asked the token
     * @return the narrower admission
     */
    public Admission knowing(AccessToken asked) {
        return new Admission(origins, hosts, Optional.of(asked));
    }

    /**
     * The same, asked by these names too.
     *
     * @param named the names
     * @return the admission
     */
    public Admission at(List<String> named) {
        return new Admission(origins, named, token);
    }

    /** Whether a page of an origin may read what is answered. */
    boolean admits(String origin) {
        return origin != null && (origins.contains("*") || origins.contains(origin));
    }
}
