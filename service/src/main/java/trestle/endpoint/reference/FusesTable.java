package trestle.endpoint.reference;

import java.util.List;
import trestle.api.model.ApiFuseRow;
import trestle.endpoint.ReferenceTable;
import trestle.wiring.FuseRow;

/** The table {@code fuses}. */
public final class FusesTable implements ReferenceTable {
    private static final double SHORT_S = 0.04;
    private static final double MEDIUM_S = 0.15;
    private static final double LONG_S = 0.75;

    @Override
    public String name() {
        return "fuses";
    }

    @Override
    public String summary() {
        return "Blade fuses by rating: what each carries for good and in a peak, and the wire that it protects; times to"
                + " open after ISO 8820-3, from memory";
    }

    @Override
    public List<ApiFuseRow> rows() {
        return FuseRow.rows().stream().map(FusesTable::row).toList();
    }

    private static ApiFuseRow row(FuseRow row) {
        return ApiFuseRow.builder()
                .ratedCurrentA(row.ratedCurrentA())
                .continuousCurrentA(row.continuousA())
                .peakTo40MsA(row.peakA(SHORT_S))
                .peakTo150MsA(row.peakA(MEDIUM_S))
                .peakTo750MsA(row.peakA(LONG_S))
                .longerPeakA(row.peakA(Double.POSITIVE_INFINITY))
                .leastWireAmpacityA(row.leastAmpacityA())
                .build();
    }
}
