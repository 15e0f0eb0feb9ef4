package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trestle.api.model.ApiInstalledPack;
import trestle.endpoint.Estimating;
import trestle.endpoint.Reading;
import trestle.endpoint.common.PackEstimates;
import trestle.estimate.Estimate;
import trestle.estimate.Spread;
import trestle.units.Share;

/**
 * Completes the packs of an aircraft; equal cells share their draws.
 *
 * @param packs of the document
 * @param at JSON Pointer of the list
 * @param temperatureC temperature of the cells at take-off, °C; null where none is given
 * @param estimating gives the estimates, and notes what is missing
 */
record InstalledPackCompletion(List<ApiInstalledPack> packs, String at, Double temperatureC, Estimating estimating) {
    /** What holds the cells together, over the mass of the cells: usual practice. */
    private static final Spread BUILT = Spread.logNormal(1.10, 0.04);

    List<ApiInstalledPack> complete(boolean balanced) {
        return IntStream.range(0, packs.size())
                .mapToObj(i -> pack(packs.get(i), at + "/" + i, twin(i), balanced))
                .toList();
    }

    private Optional<String> twin(int index) {
        return IntStream.range(0, index)
                .filter(i -> packs.get(i).cell().equals(packs.get(index).cell()))
                .mapToObj(i -> at + "/" + i)
                .findFirst();
    }

    private ApiInstalledPack pack(ApiInstalledPack pack, String place, Optional<String> twin, boolean balanced) {
        PackEstimates estimates = new PackEstimates(estimating, temperatureC);
        if (balanced && pack.armMm() == null) {
            estimating.missing(ApiInstalledPack.ARM_MM.at(place), ApiInstalledPack.ARM_MM.name());
        }
        PackEstimates.Layout layout = estimates.layout(pack.layout(), pack.series(), pack.parallel(), place);
        return pack.toBuilder()
                .name(Reading.or(pack.name(), "pack"))
                .layout(null)
                .series(layout.series())
                .parallel(layout.parallel())
                .cell(estimates.cell(pack.cell(), ApiInstalledPack.CELL.at(place), twin.map(ApiInstalledPack.CELL::at)))
                .healthPercent(estimates.health(pack.healthPercent(), place, twin))
                .massG(estimating.within(pack.massG(), pack.massToleranceG(), ApiInstalledPack.MASS_G.at(place)))
                .overheadPercent(balanced && pack.massG() == null ? overhead(pack, place) : pack.overheadPercent())
                .build();
    }

    private Double overhead(ApiInstalledPack pack, String place) {
        return estimating.usual(
                pack.overheadPercent(),
                ApiInstalledPack.OVERHEAD_PERCENT,
                place,
                () -> Estimate.of(
                        z -> Share.percentFromFraction(BUILT.at(z) - 1),
                        "strips, leads and wrap over the mass of the cells",
                        Estimate.USUAL_PRACTICE));
    }

    /** Mass of a pack, g; 0 where nothing tells it. */
    static double roughMassG(ApiInstalledPack pack) {
        if (pack.massG() != null) {
            return pack.massG();
        }
        boolean told =
                pack.series() != null && pack.parallel() != null && pack.cell().massG() != null;
        return told ? pack.series() * pack.parallel() * pack.cell().massG() * BUILT.median() : 0;
    }
}
