package trestle.battery;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A cutoff brought to numbers: what the pack and each segment's cells may not fall below. */
final class Limits {
    private final double packV;
    private final double[] cellV;
    private final boolean[] harmful;
    private final int seriesCount;

    private Limits(double packV, double[] cellV, boolean[] harmful, int seriesCount) {
        this.packV = packV;
        this.cellV = cellV;
        this.harmful = harmful;
        this.seriesCount = seriesCount;
    }

    /** The cutoff, and for each segment the over-discharge voltage below which no run goes. */
    static Limits of(Cutoff cutoff, Pack pack) {
        if (cutoff instanceof Cutoff.PackVoltage atPack) {
            return guarded(pack, atPack.voltageV(), it -> Double.NEGATIVE_INFINITY);
        }
        if (cutoff instanceof Cutoff.CountedCells counted) {
            double packV = counted.voltageV() * counted.cellCount();
            return guarded(pack, packV, it -> Double.NEGATIVE_INFINITY);
        }
        if (cutoff instanceof Cutoff.CellVoltage atCell) {
            return guarded(pack, Double.NEGATIVE_INFINITY, it -> atCell.voltageV());
        }
        return guarded(pack, Double.NEGATIVE_INFINITY, Cell::minimumVoltageV);
    }

    /** Fixed limits that let a weak segment be driven as far as it goes. */
    static Limits unguarded(Pack pack, double packV, double cellV) {
        int count = pack.segments().size();
        double[] floors = new double[count];
        Arrays.fill(floors, cellV);
        return new Limits(packV, floors, new boolean[count], pack.seriesCount());
    }

    /** Each cell's share of a pack voltage, by its label voltage, and nothing else. */
    static Limits sharedOut(Pack pack, double packV) {
        double[] floors = pack.segments().stream()
                .mapToDouble(it -> packV * it.cell().nominalVoltageV() / pack.nominalVoltageV())
                .toArray();
        return new Limits(Double.NEGATIVE_INFINITY, floors, new boolean[floors.length], pack.seriesCount());
    }

    private static Limits guarded(Pack pack, double packV, ToDoubleFunction<Cell> ofCell) {
        List<Segment> segments = pack.segments();
        double[] floors = new double[segments.size()];
        boolean[] harmful = new boolean[segments.size()];
        for (int k = 0; k < floors.length; k++) {
            Cell cell = segments.get(k).cell();
            double wantedV = ofCell.applyAsDouble(cell);
            harmful[k] = wantedV < cell.overDischargeV();
            floors[k] = Math.max(wantedV, cell.overDischargeV());
        }
        return new Limits(packV, floors, harmful, pack.seriesCount());
    }

    /** Voltage left above the pack's cutoff, shared over the cells, V. */
    double packMarginV(double voltageV) {
        return (voltageV - packV) / seriesCount;
    }

    /** Voltage left above the floor of a segment's cells, V. */
    double cellMarginV(int segment, double voltageV) {
        return voltageV - cellV[segment];
    }

    /** Whether a segment's floor is where harm begins rather than where the user wants to end. */
    boolean isHarmful(int segment) {
        return harmful[segment];
    }
}
