package trestle.endpoint;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.api.model.ApiFinding;
import trestle.api.model.ApiRisk;
import trestle.api.model.ApiSeverity;

/** Says once that the answer's numbers pass where others within the bands would not. */
final class StopWithinBand {
    static final String CODE = "stop-within-band";

    /** What happens beyond the 10 and 90 % points is not spoken of: the bands reach no further. */
    private static final double LEAST_PERCENT = 10;

    private static final int MOST_NAMED = 3;

    private StopWithinBand() {}

    /**
     * The finding for stops that lie within the bands.
     *
     * @param risks most frequent first
     * @return the finding; empty where none is frequent enough
     */
    static Optional<ApiFinding> of(List<ApiRisk> risks) {
        List<ApiRisk> likely =
                risks.stream().filter(r -> r.sharePercent() >= LEAST_PERCENT).toList();
        if (likely.isEmpty()) {
            return Optional.empty();
        }
        List<String> named = likely.stream()
                .limit(MOST_NAMED)
                .map(r -> String.format(Locale.ROOT, "%s in %.0f %%", r.code(), r.sharePercent()))
                .toList();
        return Optional.of(ApiFinding.builder()
                .severity(ApiSeverity.ATTENTION)
                .code(CODE)
                .message("With other values of what is estimated, this would be a stop: " + String.join(", ", named)
                        + " of the draws. Measure first what stands at the top of estimates.")
                .at("")
                .value(likely.get(0).sharePercent())
                .limit(LEAST_PERCENT)
                .build());
    }
}
