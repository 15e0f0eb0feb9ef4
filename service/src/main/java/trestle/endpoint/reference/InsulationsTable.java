package trestle.endpoint.reference;

import java.util.List;
import trestle.api.model.ApiInsulationMaterial;
import trestle.api.model.ApiInsulationRow;
import trestle.api.model.ApiWireInsulation;
import trestle.endpoint.ReferenceTable;
import trestle.units.Length;
import trestle.units.Temperature;
import trestle.wiring.InsulationRow;
import trestle.wiring.Insulations;

/** The table {@code insulations}. */
public final class InsulationsTable implements ReferenceTable {
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
    public List<ApiInsulationRow> rows() {
        return Insulations.rows().stream().map(InsulationsTable::row).toList();
    }

    private static ApiInsulationRow row(InsulationRow row) {
        return ApiInsulationRow.builder()
                .insulation(ApiWireInsulation.valueOf(row.insulation().name()))
                .material(ApiInsulationMaterial.valueOf(row.material().name()))
                .ratingC(Temperature.cFromK(row.ratingTemperatureK()))
                .conductivityWPerMK(row.conductivityWPerMK())
                .densityKgPerM3(row.densityKgPerM3())
                .specificHeatJPerKgK(row.specificHeatJPerKgK())
                .usualWallMm(Length.mmFromM(row.usualWallM()))
                .build();
    }
}
