package trestle.http;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The names by which the service may be asked. On the machine's own address these are the machine's own names and what
 * is named beside them. On any other address every name is taken unless some are named: whoever opens the service to a
 * network knows by which.
 */
final class HostNames {
    private static final Pattern OWN = Pattern.compile("localhost|127(\\.[0-9]{1,3}){3}|::1|0:0:0:0:0:0:0:1");

    private final boolean any;
    private final Set<String> named;

    HostNames(String address, List<String> allowed) {
        named = Stream.concat(Stream.of(address), allowed.stream())
                .map(HostNames::plain)
                .collect(Collectors.toUnmodifiableSet());
        any = named.size() == 1 && !isOwn(plain(address));
    }

    /** Whether a request may name the service so; one that names it not at all comes from no page. */
    boolean include(String host) {
        return any || host == null || host.isEmpty() || isOwn(plain(host)) || named.contains(plain(host));
    }

    private static boolean isOwn(String plain) {
        return OWN.matcher(plain).matches();
    }

    /** Without the brackets of an address and the dot at the end of a full name. */
    private static String plain(String host) {
        return host.toLowerCase(Locale.ROOT).replaceAll("^\\[|\\]$|\\.$", "");
    }
}
