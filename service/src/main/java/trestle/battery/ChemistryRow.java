package trestle.battery;

import java.util.List;
import java.util.stream.IntStream;
import trestle.units.Share;

/**
 * A line of the reference table of chemistries.
 *
 * @param chemistry the kind of cell
 * @param dcResistanceOhmC direct-current resistance of a typical cell times its capacity, Ω C
 * @param openCircuitCurve rest voltage over state of charge, in rising order of charge
 */
public record ChemistryRow(Chemistry chemistry, double dcResistanceOhmC, List<OpenCircuitPoint> openCircuitCurve) {
    private static final int STEP_PERCENT = 5;
    private static final int FULL_PERCENT = 100;

    /** Copies the list. */
    public ChemistryRow {
        openCircuitCurve = List.copyOf(openCircuitCurve);
    }

    static ChemistryRow of(Chemistry chemistry) {
        CellSet set = chemistry.set();
        double capacityC = set.fittedCapacityC();
        return new ChemistryRow(
                chemistry,
                PulseResistance.ohm(set, capacityC, 1) * capacityC,
                IntStream.rangeClosed(0, FULL_PERCENT / STEP_PERCENT)
                        .mapToDouble(i -> Share.fractionFromPercent(i * STEP_PERCENT))
                        .mapToObj(z -> new OpenCircuitPoint(z, set.electrodes().openCircuitV(z)))
                        .toList());
    }
}
