package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import trestle.api.model.ApiInstalledPack;
import trestle.battery.Pack;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.endpoint.massbalance.BalanceReading;
import trestle.massbalance.Item;
import trestle.review.InstalledPack;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Share;

/**
 * Reads the packs of an aircraft as masses in their bays.
 *
 * @param packs of the document
 * @param place JSON Pointer of the list
 * @param reading notes defaults and contradictions
 */
record InstalledPackReading(List<ApiInstalledPack> packs, String place, Reading reading) {
    private static final String USUAL = "the document gives none; common practice, no source";

    /**
     * The packs as items of the balance.
     *
     * @param parts reads what items have
     * @param pack the pack that they make; empty where a contradiction was noted
     * @return one item a pack
     */
    List<Item> items(BalanceReading parts, Optional<Pack> pack) {
        return IntStream.range(0, packs.size())
                .mapToObj(i -> item(packs.get(i), i, parts, pack))
                .toList();
    }

    private Item item(ApiInstalledPack installed, int index, BalanceReading parts, Optional<Pack> pack) {
        String at = place + "/" + index;
        double massKg = installed.massG() != null
                ? Mass.kgFromG(installed.massG())
                : pack.map(p -> builtMassKg(installed, p, index)).orElse(1.0);
        return new Item(
                installed.name(),
                1,
                massKg,
                Length.mFromMm(Reading.or(installed.armMm(), 0.0)),
                OptionalDouble.of(Length.mFromMm(Reading.or(installed.lateralMm(), ApiInstalledPack.LATERAL_MM))),
                OptionalDouble.of(Length.mFromMm(Reading.or(installed.verticalMm(), ApiInstalledPack.VERTICAL_MM))),
                Mass.kgFromG(Reading.or(installed.massToleranceG(), ApiInstalledPack.MASS_TOLERANCE_G)),
                0,
                parts.travel(installed.movableFromMm(), installed.movableToMm(), at));
    }

    /** Mass of the cells and what holds them together. */
    private double builtMassKg(ApiInstalledPack installed, Pack pack, int index) {
        String at = place + "/" + index;
        var segment = pack.segments().get(index);
        if (installed.cell().massG() == null) {
            reading.assume(
                    at + "/cell/mass_g",
                    FieldUnit.withUnit(Math.round(Mass.gFromKg(segment.cell().massOrTypicalKg())), "_g"),
                    "typical of the chemistry; from memory");
        }
        double overhead = Share.fractionFromPercent(
                reading.orDefault(installed.overheadPercent(), ApiInstalledPack.OVERHEAD_PERCENT, at, USUAL));
        return installed.series() * installed.parallel() * segment.cell().massOrTypicalKg() * (1 + overhead);
    }

    /** Each pack with the segment that it is. */
    static List<InstalledPack> joined(List<Item> items, Pack pack) {
        return IntStream.range(0, items.size())
                .mapToObj(i -> new InstalledPack(items.get(i), pack.segments().get(i)))
                .toList();
    }
}
