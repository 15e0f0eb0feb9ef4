package trestle.endpoint.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiCellFormat;
import trestle.api.model.ApiCellKind;
import trestle.api.model.ApiCellRow;
import trestle.endpoint.ReferenceTable;
import trestle.endpoint.common.CellFormats;
import trestle.estimate.CellRules;
import trestle.estimate.Spread;
import trestle.units.Resistance;

/** The table {@code cells}. */
public final class CellsTable implements ReferenceTable {
    /** A pouch has no usual capacity: one that such aircraft carry. */
    private static final double POUCH_AH = 5;

    @Override
    public String name() {
        return "cells";
    }

    @Override
    public String summary() {
        return "Cells by kind and format with capacity, resistance and mass and their 10 and 90 % points; from memory and two"
                + " measured cells, no maker's; a pouch at 5 Ah with its share of the wrap";
    }

    @Override
    public List<ApiCellRow> rows() {
        List<ApiCellRow> rows = new ArrayList<>();
        for (ApiCellKind kind : ApiCellKind.values()) {
            for (ApiCellFormat format : ApiCellFormat.values()) {
                capacityAh(kind, format).ifPresent(ah -> rows.add(row(kind, format, ah)));
            }
        }
        return rows;
    }

    private static Optional<Double> capacityAh(ApiCellKind kind, ApiCellFormat format) {
        return kind == ApiCellKind.POUCH && format == ApiCellFormat.POUCH
                ? Optional.of(POUCH_AH)
                : CellFormats.usualAh(kind, format);
    }

    private static ApiCellRow row(ApiCellKind kind, ApiCellFormat format, double capacityAh) {
        CellRules rules = CellRules.valueOf(kind.name());
        Spread ohm = rules.resistanceOhm(capacityAh);
        Spread perKg = rules.wattHourPerKg();
        double wattHours = capacityAh * CellFormats.nominalV(kind);
        return ApiCellRow.builder()
                .kind(kind)
                .format(format)
                .capacityAh(capacityAh)
                .resistanceLowMilliohm(Resistance.milliohmFromOhm(ohm.low()))
                .resistanceMilliohm(Resistance.milliohmFromOhm(ohm.median()))
                .resistanceHighMilliohm(Resistance.milliohmFromOhm(ohm.high()))
                .massLowG(1000 * wattHours / perKg.high())
                .massG(1000 * wattHours / perKg.median())
                .massHighG(1000 * wattHours / perKg.low())
                .build();
    }
}
