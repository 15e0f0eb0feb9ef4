package trestle.endpoint;

import java.util.List;
import trestle.api.model.InsulationMaterial;
import trestle.api.model.InsulationRow;
import trestle.api.model.WireInsulation;
import trestle.units.Length;
import trestle.units.Temperature;
import trestle.wiring.Insulations;

/** The table {@code insulations}. */
final class InsulationsTable implements ReferenceTable {
    @Override
    public String name() {
        return "insulations";
    }

    @Override
    public String summary() {
        return "Insulations of wire: conductivity of PVC, XLPE and silicone after IEC 60287-2-1, the rest typical"
                + " values, from memory; usual walls are common practice, no source";
    }

    @Override
    public List<InsulationRow> rows() {
        return Insulations.rows().stream().map(InsulationsTable::row).toList();
    }

    private static InsulationRow row(trestle.wiring.InsulationRow row) {
        return InsulationRow.builder()
                .insulation(WireInsulation.valueOf(row.insulation().name()))
                .material(InsulationMaterial.valueOf(row.material().name()))
                .ratingC(Temperature.cFromK(row.ratingTemperatureK()))
                .conductivityWPerMK(row.conductivityWPerMK())
                .densityKgPerM3(row.densityKgPerM3())
                .specificHeatJPerKgK(row.specificHeatJPerKgK())
                .usualWallMm(Length.mmFromM(row.usualWallM()))
                .build();
    }
}
