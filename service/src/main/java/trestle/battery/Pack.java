package trestle.battery;

import java.util.List;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * Segments in series, and the leads to the load.
 *
 * @param segments the segments, one or more
 * @param leadResistanceOhm resistance of leads and connectors, both ways, Ω, not negative
 */
public record Pack(List<Segment> segments, double leadResistanceOhm) {
    /** Checks the physics and copies the list. */
    public Pack {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new ImpossibleValue("segments", "a pack has one segment or more");
        }
        Guard.notNegative("leadResistanceOhm", leadResistanceOhm);
    }

    /**
     * Cells in series, over all segments.
     *
     * @return the count
     */
    public int seriesCount() {
        return segments.stream().mapToInt(Segment::seriesCount).sum();
    }

    /**
     * Sum of the cells' label voltages.
     *
     * @return nominal voltage, V
     */
    public double nominalVoltageV() {
        return segments.stream()
                .mapToDouble(it -> it.seriesCount() * it.cell().nominalVoltageV())
                .sum();
    }

    /**
     * Sum of the voltages that the cells are charged to.
     *
     * @return full voltage, V
     */
    public double fullVoltageV() {
        return segments.stream()
                .mapToDouble(it -> it.seriesCount() * it.cell().fullVoltageV())
                .sum();
    }

    /**
     * Charge of the smallest segment, as it is now: what the pack passes from full to empty.
     *
     * @return capacity, C
     */
    public double capacityC() {
        return segments.stream().mapToDouble(Segment::capacityC).min().orElseThrow();
    }

    /**
     * Rated charge times label voltage of all cells, as new.
     *
     * @return nominal energy, J
     */
    public double nominalEnergyJ() {
        return segments.stream()
                .mapToDouble(it -> it.cellCount() * it.cell().nominalEnergyJ())
                .sum();
    }

    /**
     * The finished blocks: as given, or their cells with a tenth for strips, leads and wrap.
     *
     * @return mass, kg
     */
    public double massKg() {
        return segments.stream().mapToDouble(Segment::blockMassKg).sum();
    }

    /**
     * What the builder calls a segment.
     *
     * @param segment position, from 0
     * @return its name; its number, or the pack, where it has none
     */
    public String nameOf(int segment) {
        String name = segments.get(segment).name();
        if (!name.isEmpty()) {
            return name;
        }
        return segments.size() == 1 ? "the pack" : "segment " + (segment + 1);
    }

    int cellCount() {
        return segments.stream().mapToInt(Segment::cellCount).sum();
    }
}
