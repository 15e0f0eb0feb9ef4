package trestle.battery;

import java.util.List;
import java.util.OptionalDouble;

/** Cells and packs for tests. */
final class Cells {
    static final CellSet LCO = CellSet.read("/reference/cell-sets/lco.properties");
    static final CellSet NCO = CellSet.read("/reference/cell-sets/nco.properties");

    private Cells() {}

    /** One cell of a set, as large as the one that was fitted. */
    static PackState one(CellSet set, Bath bath, double chargeFraction) {
        CellModel model = CellModel.plain(set, set.fittedCapacityC(), 1);
        Cell label = Cell.typical(Chemistry.LI_ION, set.fittedCapacityC());
        return PackState.of(
                new Pack(List.of(Segment.full(1, 1, label)), 0), List.of(new CellState(model, bath, chargeFraction)));
    }

    /** The set behind a folder of reference curves, as it was fitted: without growth in the cold. */
    static CellSet setOf(String source) {
        return switch (source) {
            case "okane2022", "nmc_okane2022", "nmc_chen2020" ->
                Chemistry.LI_ION.set().withColdFactorK(0);
            case "prada2013", "lfp_prada2013" -> Chemistry.LFP.set().withColdFactorK(0);
            case "ai2020", "lco_ai2020" -> LCO;
            case "nco_ecker2015" -> NCO;
            default -> throw new IllegalArgumentException(source);
        };
    }

    static Cell nmc(double capacityAh) {
        return Cell.typical(Chemistry.LI_ION, capacityAh * 3600);
    }

    /** A cell of which the rating is known too. */
    static Cell rated(double capacityAh, double continuousA) {
        return new Cell(
                Chemistry.LI_ION,
                capacityAh * 3600,
                new InternalResistance.Typical(),
                OptionalDouble.empty(),
                new CellLimits(
                        OptionalDouble.of(continuousA),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                List.of());
    }

    static Pack pack(Segment... segments) {
        return new Pack(List.of(segments), 0);
    }

    /** The state of a pack whose cells keep 25 °C. */
    static PackState isothermal(Pack pack) {
        return PackState.of(
                pack,
                pack.segments().stream()
                        .map(it -> PackState.cell(it, Bath.keepingAt(298.15)))
                        .toList());
    }
}
