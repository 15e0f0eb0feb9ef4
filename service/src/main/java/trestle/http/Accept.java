package trestle.http;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Content negotiation by the Accept header (RFC 9110, section 12.5.1). */
final class Accept {
    private static final String ANY = "*/*";

    private Accept() {}

    /**
     * The offer that the caller likes best; the earlier one where it has no preference.
     *
     * @param header value of the header, null where there is none
     * @param offers in the order of the service's own preference
     * @param mediaType of an offer
     */
    static <T> Optional<T> best(String header, List<T> offers, Function<T, String> mediaType) {
        String ranges = header == null || header.isBlank() ? ANY : header;
        T best = null;
        double most = 0;
        for (T offer : offers) {
            double liking = liking(ranges, MediaTypes.bare(mediaType.apply(offer)));
            if (liking > most) {
                most = liking;
                best = offer;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The weight of the range that fits a type most closely, 0 to 1. */
    private static double liking(String ranges, String type) {
        int closest = 0;
        double weight = 0;
        for (String range : ranges.split(",")) {
            int closeness = closeness(MediaTypes.bare(range), type);
            if (closeness > closest) {
                closest = closeness;
                weight = weight(range);
            }
        }
        return weight;
    }

    private static int closeness(String range, String type) {
        if (range.equals(type)) {
            return 3;
        }
        if (range.equals(type.replaceFirst("/.*", "/*"))) {
            return 2;
        }
        return range.equals(ANY) ? 1 : 0;
    }

    private static double weight(String range) {
        for (String parameter : range.split(";")) {
            String plain = parameter.strip().toLowerCase(Locale.ROOT);
            if (plain.matches("q\\s*=\\s*[01](\\.[0-9]{0,3})?")) {
                return Double.parseDouble(
                        plain.substring(plain.indexOf('=') + 1).strip());
            }
        }
        return 1;
    }
}
