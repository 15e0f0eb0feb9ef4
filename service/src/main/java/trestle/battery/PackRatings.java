package trestle.battery;

import java.util.List;
import java.util.OptionalDouble;
import trestle.units.Time;

/**
 * What a pack is, before any load.
 *
 * @param seriesCount cells in series
 * @param nominalVoltageV sum of the label voltages, V
 * @param fullVoltageV sum of the full voltages, V
 * @param minimumVoltageV sum of the minimum voltages, V
 * @param capacityC charge of the smallest segment as it is now, C
 * @param nominalEnergyJ rated charge times label voltage of all cells, as new, J
 * @param massKg mass, kg
 * @param specificEnergyJPerKg nominal energy over mass, J/kg
 * @param maxContinuousCurrentA current that all cells stand for long, A; empty where any cell's is
 *     not known
 * @param chargeCurrentA charging current, the least over the segments, A
 */
public record PackRatings(
        int seriesCount,
        double nominalVoltageV,
        double fullVoltageV,
        double minimumVoltageV,
        double capacityC,
        double nominalEnergyJ,
        double massKg,
        double specificEnergyJPerKg,
        OptionalDouble maxContinuousCurrentA,
        double chargeCurrentA) {
    /**
     * The ratings of a pack.
     *
     * @param pack the pack
     * @return its ratings
     */
    public static PackRatings of(Pack pack) {
        double nominalJ = pack.nominalEnergyJ();
        return new PackRatings(
                pack.seriesCount(),
                pack.nominalVoltageV(),
                pack.fullVoltageV(),
                new Cutoff.CellMinimum().packVoltageV(pack),
                pack.capacityC(),
                nominalJ,
                pack.massKg(),
                nominalJ / pack.massKg(),
                continuousA(pack.segments()),
                pack.segments().stream().mapToDouble(PackRatings::chargeA).min().orElseThrow());
    }

    private static OptionalDouble continuousA(List<Segment> segments) {
        boolean allRated = segments.stream()
                .allMatch(it -> it.cell().limits().maxContinuousCurrentA().isPresent());
        return !allRated
                ? OptionalDouble.empty()
                : segments.stream()
                        .mapToDouble(it -> it.parallelCount()
                                * it.cell().limits().maxContinuousCurrentA().getAsDouble())
                        .min();
    }

    private static double chargeA(Segment segment) {
        Cell cell = segment.cell();
        double typicalA = cell.capacityC() * cell.dynamics().chargeRatePerH() / Time.sFromH(1);
        return segment.parallelCount() * cell.limits().maxChargeCurrentA().orElse(typicalA);
    }
}
