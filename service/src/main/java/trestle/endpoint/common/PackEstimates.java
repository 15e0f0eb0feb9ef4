package trestle.endpoint.common;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import trestle.api.model.ApiCell;
import trestle.api.model.ApiCellFormat;
import trestle.api.model.ApiCellKind;
import trestle.api.model.ApiChemistry;
import trestle.api.model.ApiPack;
import trestle.api.model.ApiPackSegment;
import trestle.endpoint.Estimating;
import trestle.estimate.CellRules;
import trestle.estimate.Estimate;
import trestle.estimate.Spread;
import trestle.units.Resistance;

/**
 * Estimates of a cell what its maker did not say, and reads how builders write a pack.
 *
 * @param estimating gives the estimates
 * @param temperatureC temperature of the cells at the start, °C; null where none is given
 */
public record PackEstimates(Estimating estimating, Double temperatureC) {
    /** Above this the cold does not show, and is not drawn, °C. */
    private static final double COLD_C = 15;

    /** How growth in the cold goes with resistance: judgement. */
    private static final double COLD_WITH_RESISTANCE = 0.3;

    /**
     * Temperature of the cells of a pack at the start.
     *
     * @param pack of the request
     * @return °C; null where it is not given
     */
    public static Double startC(ApiPack pack) {
        return pack.ambientC();
    }

    /** Cells in series and parallel. */
    public record Layout(Integer series, Integer parallel) {}

    /**
     * Cells in series and parallel, as {@code 7s3p} or in fields of their own.
     *
     * @param layout of the request, or null
     * @param series of the request, or null
     * @param parallel of the request, or null
     * @param at JSON Pointer of what holds them
     * @return both; null where it is not given, which is noted
     */
    public Layout layout(String layout, Integer series, Integer parallel, String at) {
        if (layout == null) {
            if (series == null) {
                estimating.missing(ApiPackSegment.SERIES.at(at), "series (or layout, like 7s3p)");
            }
            if (parallel == null) {
                estimating.missing(ApiPackSegment.PARALLEL.at(at), "parallel (or layout, like 7s3p)");
            }
            return new Layout(series, parallel);
        }
        if (series != null || parallel != null) {
            estimating.contradiction(
                    ApiPackSegment.LAYOUT.at(at), "layout says series and parallel: give it, or those two");
            return new Layout(series, parallel);
        }
        int split = layout.indexOf('s');
        return new Layout(
                Integer.valueOf(layout.substring(0, split)),
                Integer.valueOf(layout.substring(split + 1, layout.length() - 1)));
    }

    /**
     * A pack with what its cells lack.
     *
     * @param pack of the request
     * @param at its JSON Pointer
     * @return the pack; with gaps where nothing may be estimated, which is noted
     */
    public ApiPack pack(ApiPack pack, String at) {
        return pack.toBuilder()
                .segments(segments(pack.segments(), ApiPack.SEGMENTS.at(at)))
                .build();
    }

    /**
     * The segments of a pack with what they lack; equal cells share their draws, since a builder buys them of one kind.
     *
     * @param segments of the request
     * @param at JSON Pointer of the list
     * @return the segments; with gaps where nothing may be estimated, which is noted
     */
    public List<ApiPackSegment> segments(List<ApiPackSegment> segments, String at) {
        return IntStream.range(0, segments.size())
                .mapToObj(i -> segment(segments.get(i), at + "/" + i, twin(segments, i, at)))
                .toList();
    }

    private static Optional<String> twin(List<ApiPackSegment> segments, int index, String at) {
        for (int i = 0; i < index; i++) {
            if (segments.get(i).cell().equals(segments.get(index).cell())) {
                return Optional.of(at + "/" + i);
            }
        }
        return Optional.empty();
    }

    private ApiPackSegment segment(ApiPackSegment segment, String at, Optional<String> twin) {
        Layout layout = layout(segment.layout(), segment.series(), segment.parallel(), at);
        return segment.toBuilder()
                .layout(null)
                .series(layout.series())
                .parallel(layout.parallel())
                .cell(cell(segment.cell(), ApiPackSegment.CELL.at(at), twin.map(ApiPackSegment.CELL::at)))
                .healthPercent(health(segment.healthPercent(), at, twin))
                .build();
    }

    /**
     * Capacity left.
     *
     * @param given of the request, or null
     * @param at JSON Pointer of what holds it
     * @param twin JSON Pointer of one before it that is of the same kind
     * @return health, %; null where it is not given and must not be estimated
     */
    public Double health(Double given, String at, Optional<String> twin) {
        Spread age = Spread.between(90, 96, 100);
        return estimating.usual(
                given,
                ApiPackSegment.HEALTH_PERCENT,
                at,
                () -> like(
                        Estimate.of(
                                z -> Math.min(100, age.at(z)),
                                "a pack of unknown age; say 100 for a new one",
                                Estimate.USUAL_PRACTICE),
                        twin.map(ApiPackSegment.HEALTH_PERCENT::at)));
    }

    /**
     * The cell with what it lacks.
     *
     * @param cell of the request
     * @param at its JSON Pointer
     * @param twin JSON Pointer of a cell before it that is the same
     * @return the cell; with gaps where nothing may be estimated, which is noted
     */
    public ApiCell cell(ApiCell cell, String at, Optional<String> twin) {
        if (cell.chemistry() == null && cell.kind() == null) {
            estimating.missing(ApiCell.CHEMISTRY.at(at), "chemistry (or kind)");
            return cell;
        }
        Double capacityAh = capacity(cell, at, twin);
        ApiCell whole = cell.toBuilder()
                .chemistry(chemistry(cell))
                .capacityAh(capacityAh)
                .build();
        if (capacityAh == null || whole.chemistry() == ApiChemistry.CUSTOM) {
            return whole;
        }
        ApiCell.Builder estimated = whole.toBuilder()
                .dcResistanceMilliohm(resistance(whole, capacityAh, at, twin))
                .massG(mass(whole, capacityAh, at, twin));
        return temperatureC != null && temperatureC < COLD_C ? cold(whole, at, twin, estimated) : estimated.build();
    }

    private ApiCell cold(ApiCell cell, String at, Optional<String> twin, ApiCell.Builder estimated) {
        return estimated
                .coldGrowthK(estimating.usual(
                        cell.coldGrowthK(),
                        ApiCell.COLD_GROWTH_K,
                        at,
                        () -> twin.map(first -> like(growth(cell), Optional.of(ApiCell.COLD_GROWTH_K.at(first))))
                                .orElseGet(() -> growth(cell)
                                        .movingWith(ApiCell.DC_RESISTANCE_MILLIOHM.at(at), COLD_WITH_RESISTANCE))))
                .heatLossRatio(estimating.usual(
                        cell.heatLossRatio(),
                        ApiCell.HEAT_LOSS_RATIO,
                        at,
                        () -> like(
                                Estimate.of(CellRules.heatLossRatio(), "an installed pack", Estimate.USUAL_PRACTICE),
                                twin.map(ApiCell.HEAT_LOSS_RATIO::at))))
                .build();
    }

    private static Estimate growth(ApiCell cell) {
        return Estimate.of(
                rules(cell).coldGrowthK(),
                kindOf(cell),
                "one measured cell of each chemistry (Kollmeyer et al.; Plett, Battery Management Systems 1, 2015)");
    }

    private static ApiChemistry chemistry(ApiCell cell) {
        if (cell.chemistry() != null) {
            return cell.chemistry();
        }
        return switch (cell.kind()) {
            case ENERGY, POWER -> ApiChemistry.LI_ION;
            case POUCH -> ApiChemistry.LIPO;
            case LFP_POWER, LFP_ENERGY -> ApiChemistry.LFP;
        };
    }

    private Double capacity(ApiCell cell, String at, Optional<String> twin) {
        Optional<Double> usual = CellFormats.usualAh(cell.kind(), cell.format());
        if (cell.capacityAh() == null && usual.isEmpty()) {
            estimating.missing(
                    ApiCell.CAPACITY_AH.at(at),
                    cell.format() == ApiCellFormat.POUCH || cell.kind() == ApiCellKind.POUCH
                            ? "capacity_ah of a pouch"
                            : "capacity_ah (or kind and format)");
            return null;
        }
        return estimating.needed(
                cell.capacityAh(),
                ApiCell.CAPACITY_AH,
                at,
                () -> like(
                        Estimate.of(
                                Spread.logNormal(usual.orElseThrow(), 0.05),
                                "kind " + word(cell.kind()) + ", format " + cell.format(),
                                Estimate.USUAL_PRACTICE),
                        twin.map(ApiCell.CAPACITY_AH::at)));
    }

    /** What one measured resistance says, no rule says better. */
    private Double resistance(ApiCell cell, double capacityAh, String at, Optional<String> twin) {
        if (cell.acResistanceMilliohm() != null) {
            return cell.dcResistanceMilliohm();
        }
        Estimate estimate = cell.printedRatingC() != null && rules(cell) == CellRules.POUCH
                ? ohm(
                        CellRules.pouchResistanceOhm(cell.printedRatingC(), capacityAh),
                        "capacity and printed rating; two measured pouches")
                : ohm(rules(cell).resistanceOhm(capacityAh), "capacity, " + kindOf(cell));
        return estimating.usual(
                cell.dcResistanceMilliohm(),
                ApiCell.DC_RESISTANCE_MILLIOHM,
                at,
                () -> like(estimate, twin.map(ApiCell.DC_RESISTANCE_MILLIOHM::at)));
    }

    private static Estimate ohm(Spread ohm, String from) {
        return Estimate.of(ohm.times(Resistance.milliohmFromOhm(1)), from, Estimate.USUAL_PRACTICE);
    }

    private Double mass(ApiCell cell, double capacityAh, String at, Optional<String> twin) {
        double wattHours = capacityAh * CellFormats.nominalV(cell.chemistry());
        Spread perKg = rules(cell).wattHourPerKg();
        return estimating.usual(
                cell.massG(),
                ApiCell.MASS_G,
                at,
                () -> like(
                        Estimate.of(
                                z -> 1000 * wattHours / perKg.at(-z),
                                "energy, " + kindOf(cell),
                                Estimate.USUAL_PRACTICE),
                        twin.map(ApiCell.MASS_G::at)));
    }

    private static CellRules rules(ApiCell cell) {
        if (cell.kind() != null) {
            return CellRules.valueOf(cell.kind().name());
        }
        return switch (cell.chemistry()) {
            case LIPO -> CellRules.POUCH;
            case LFP -> CellRules.LFP_ENERGY;
            default -> CellRules.ENERGY;
        };
    }

    private static String kindOf(ApiCell cell) {
        return cell.kind() == null ? "chemistry " + word(cell.chemistry()) : "kind " + word(cell.kind());
    }

    private static Estimate like(Estimate estimate, Optional<String> twin) {
        return twin.map(at -> estimate.movingWith(at, 1)).orElse(estimate);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
