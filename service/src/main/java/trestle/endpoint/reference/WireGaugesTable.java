package trestle.endpoint.reference;

import java.util.Arrays;
import java.util.List;
import trestle.api.model.ApiGaugeSystem;
import trestle.api.model.ApiWireGaugeRow;
import trestle.endpoint.ReferenceTable;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Mass;
import trestle.units.Resistance;
import trestle.wiring.GaugeRow;
import trestle.wiring.GaugeSystem;
import trestle.wiring.WireGauges;

/** The table {@code wire-gauges}. */
public final class WireGaugesTable implements ReferenceTable {
    @Override
    public String name() {
        return "wire-gauges";
    }

    @Override
    public String summary() {
        return "Conductors by gauge: American after ASTM B258 (law from memory), metric flexible after IEC 60228"
                + " class 5; fusing currents after Preece and Onderdonk, as commonly quoted";
    }

    @Override
    public List<ApiWireGaugeRow> rows() {
        return Arrays.stream(GaugeSystem.values())
                .flatMap(system -> WireGauges.rows(system).stream())
                .map(WireGaugesTable::row)
                .toList();
    }

    private static ApiWireGaugeRow row(GaugeRow row) {
        return ApiWireGaugeRow.builder()
                .gaugeSystem(ApiGaugeSystem.valueOf(row.gauge().system().name()))
                .gauge(row.gauge().designation())
                .areaMm2(Area.mm2FromM2(row.gauge().areaM2()))
                .solidDiameterMm(Length.mmFromM(row.solidDiameterM()))
                .conductorDiameterMm(Length.mmFromM(row.conductorDiameterM()))
                .resistanceMilliohmPerM(Resistance.milliohmFromOhm(row.gauge().resistancePerMOhm()))
                .solidResistanceMilliohmPerM(Resistance.milliohmFromOhm(row.solidResistancePerMOhm()))
                .copperGPerM(Mass.gFromKg(row.copperKgPerM()))
                .fusingCurrentA(row.fusingCurrentA())
                .oneSecondFusingCurrentA(row.oneSecondFusingCurrentA())
                .build();
    }
}
