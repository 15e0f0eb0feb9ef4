package trestle.endpoint;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiBand;
import trestle.api.model.ApiBandMethod;
import trestle.api.model.ApiBands;
import trestle.api.model.ApiEstimate;
import trestle.api.model.ApiRisk;
import trestle.estimate.Depth;
import trestle.estimate.Uncertainty;
import trestle.units.Share;

/** Writes what is not known, and how sure the figures are, into the part that every answer carries. */
final class PremisesWriting {
    /** A tolerance that moves the main figure by less is not worth a line. */
    private static final double WORTH_SAYING = 0.01;

    private PremisesWriting() {}

    static Premises of(
            List<ApiAssumption> assumptions,
            List<Unknown> unknowns,
            Uncertainty uncertainty,
            Optional<Depth> depth,
            Set<String> stops) {
        List<ApiEstimate> estimates = unknowns.stream()
                .filter(u -> !u.given() || share(u, uncertainty).orElse(0.0) >= WORTH_SAYING)
                .sorted(Comparator.comparingDouble(u -> -share(u, uncertainty).orElse(0.0)))
                .map(u -> estimate(u, share(u, uncertainty)))
                .toList();
        List<ApiRisk> risks = uncertainty.stops().entrySet().stream()
                .filter(stop -> !stops.contains(stop.getKey()))
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(stop -> new ApiRisk(stop.getKey(), Share.percentFromFraction(stop.getValue())))
                .toList();
        return new Premises(assumptions, estimates, bands(uncertainty, depth), risks);
    }

    private static Optional<Double> share(Unknown unknown, Uncertainty uncertainty) {
        return Optional.ofNullable(uncertainty.shares().get(unknown.at()));
    }

    /** Without its share s of the variance a band is √(1 − s) as wide. */
    private static ApiEstimate estimate(Unknown unknown, Optional<Double> share) {
        return unknown.written()
                .sharePercent(share.map(Share::percentFromFraction).orElse(null))
                .narrowsPercent(share.map(s -> Share.percentFromFraction(1 - Math.sqrt(Math.max(0, 1 - s))))
                        .orElse(null))
                .build();
    }

    private static ApiBands bands(Uncertainty uncertainty, Optional<Depth> depth) {
        if (uncertainty.bands().isEmpty()) {
            return null;
        }
        ApiBands.Builder bands = ApiBands.builder();
        uncertainty
                .bands()
                .forEach((figure, band) -> MainFigure.write(
                        figure,
                        ApiBand.builder()
                                .p10(band.p10())
                                .p50(band.p50())
                                .p90(band.p90())
                                .method(method(figure, uncertainty, depth))
                                .withoutPercent(Optional.ofNullable(
                                                uncertainty.without().get(figure))
                                        .map(Share::percentFromFraction)
                                        .orElse(null))
                                .build(),
                        bands));
        return bands.build();
    }

    private static ApiBandMethod method(String figure, Uncertainty uncertainty, Optional<Depth> depth) {
        if (depth.filter(Depth.QUICK::equals).isPresent()) {
            return ApiBandMethod.ONE_AT_A_TIME;
        }
        return uncertainty.unfitted().contains(figure) ? ApiBandMethod.SAMPLED : ApiBandMethod.FITTED;
    }
}
