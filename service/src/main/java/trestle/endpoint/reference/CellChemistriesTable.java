package trestle.endpoint.reference;

import java.util.List;
import trestle.api.model.ApiChemistry;
import trestle.api.model.ApiChemistryRow;
import trestle.api.model.ApiOpenCircuitPoint;
import trestle.battery.Chemistries;
import trestle.battery.Chemistry;
import trestle.battery.ChemistryRow;
import trestle.endpoint.ReferenceTable;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Resistance;
import trestle.units.Share;

/** The table {@code cell-chemistries}. */
public final class CellChemistriesTable implements ReferenceTable {
    @Override
    public String name() {
        return "cell-chemistries";
    }

    @Override
    public String summary() {
        return "Kinds of cell: curves and resistances of sets fitted to O'Kane 2022 (li_ion), Ai 2020 and Rieger 2016"
                + " (lipo), Prada 2013 (lfp); voltages are common data-sheet limits, specific energies, densities"
                + " and charging rates typical values from memory";
    }

    @Override
    public List<ApiChemistryRow> rows() {
        return Chemistries.rows().stream().map(CellChemistriesTable::row).toList();
    }

    private static ApiChemistryRow row(ChemistryRow row) {
        Chemistry chemistry = row.chemistry();
        return ApiChemistryRow.builder()
                .chemistry(ApiChemistry.valueOf(chemistry.name()))
                .nominalVoltageV(chemistry.nominalVoltageV())
                .fullVoltageV(chemistry.fullVoltageV())
                .minimumVoltageV(chemistry.minimumVoltageV())
                .overDischargeVoltageV(chemistry.overDischargeV())
                .specificEnergyWhPerKg(Energy.whFromJ(chemistry.specificEnergyJPerKg()))
                .packedDensityKgPerM3(chemistry.packedDensityKgPerM3())
                .chargeCRate(chemistry.chargeRatePerH())
                .dcResistanceMilliohmAh(Charge.ahFromC(Resistance.milliohmFromOhm(row.dcResistanceOhmC())))
                .openCircuitCurve(row.openCircuitCurve().stream()
                        .map(point -> new ApiOpenCircuitPoint(
                                Share.percentFromFraction(point.stateOfChargeFraction()), point.voltageV()))
                        .toList())
                .build();
    }
}
