package trestle.endpoint;

import java.util.List;
import trestle.api.model.ChemistryRow;
import trestle.api.model.OpenCircuitPoint;
import trestle.battery.Chemistries;
import trestle.battery.Chemistry;
import trestle.units.Charge;
import trestle.units.Energy;
import trestle.units.Resistance;
import trestle.units.Share;

/** The table {@code cell-chemistries}. */
final class CellChemistriesTable implements ReferenceTable {
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
    public List<ChemistryRow> rows() {
        return Chemistries.rows().stream().map(CellChemistriesTable::row).toList();
    }

    private static ChemistryRow row(trestle.battery.ChemistryRow row) {
        Chemistry chemistry = row.chemistry();
        return ChemistryRow.builder()
                .chemistry(trestle.api.model.Chemistry.valueOf(chemistry.name()))
                .nominalVoltageV(chemistry.nominalVoltageV())
                .fullVoltageV(chemistry.fullVoltageV())
                .minimumVoltageV(chemistry.minimumVoltageV())
                .overDischargeVoltageV(chemistry.overDischargeV())
                .specificEnergyWhPerKg(Energy.whFromJ(chemistry.specificEnergyJPerKg()))
                .packedDensityKgPerM3(chemistry.packedDensityKgPerM3())
                .chargeCRate(chemistry.chargeRatePerH())
                .dcResistanceMilliohmAh(Charge.ahFromC(Resistance.milliohmFromOhm(row.dcResistanceOhmC())))
                .openCircuitCurve(row.openCircuitCurve().stream()
                        .map(point -> new OpenCircuitPoint(
                                Share.percentFromFraction(point.stateOfChargeFraction()), point.voltageV()))
                        .toList())
                .build();
    }
}
