package trestle.endpoint.reference;

import java.util.ArrayList;
import java.util.List;
import trestle.api.model.ApiMotorRow;
import trestle.endpoint.ReferenceTable;
import trestle.estimate.MotorRules;
import trestle.estimate.Spread;
import trestle.units.Resistance;

/** The table {@code motors}. */
public final class MotorsTable implements ReferenceTable {
    private static final List<Double> SPEEDS = List.of(120.0, 200.0, 320.0, 450.0, 700.0, 1000.0);
    private static final List<Double> MASSES = List.of(100.0, 200.0, 310.0, 450.0, 700.0);

    @Override
    public String name() {
        return "motors";
    }

    @Override
    public String summary() {
        return "Brushless motors by speed constant and mass with resistance, no-load current and maximum current and their 10 and"
                + " 90 % points; fits to 191 outrunners of three product lines (tables of two universities)";
    }

    @Override
    public List<ApiMotorRow> rows() {
        List<ApiMotorRow> rows = new ArrayList<>();
        for (double rpmPerV : SPEEDS) {
            for (double massG : MASSES) {
                rows.add(row(rpmPerV, massG));
            }
        }
        return rows;
    }

    private static ApiMotorRow row(double rpmPerV, double massG) {
        Spread ohm = Spread.logNormal(MotorRules.resistanceOfMass(rpmPerV, massG), MotorRules.RESISTANCE_BY_MASS);
        Spread noLoadA = Spread.logNormal(MotorRules.noLoadOfMass(rpmPerV, massG), MotorRules.NO_LOAD);
        return ApiMotorRow.builder()
                .speedConstantRpmPerV(rpmPerV)
                .massG(massG)
                .resistanceLowMilliohm(Resistance.milliohmFromOhm(ohm.low()))
                .resistanceMilliohm(Resistance.milliohmFromOhm(ohm.median()))
                .resistanceHighMilliohm(Resistance.milliohmFromOhm(ohm.high()))
                .noLoadCurrentLowA(noLoadA.low())
                .noLoadCurrentA(noLoadA.median())
                .noLoadCurrentHighA(noLoadA.high())
                .maxCurrentA(MotorRules.maxCurrentOfMass(rpmPerV, massG))
                .build();
    }
}
