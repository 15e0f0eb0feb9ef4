package trestle.endpoint.propulsionmatch;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiBladeType;
import trestle.api.model.ApiPropeller;
import trestle.api.model.ApiStaticTest;
import trestle.api.model.ApiThrustPowerRow;
import trestle.endpoint.Reading;
import trestle.endpoint.common.FlightReading;
import trestle.propulsion.BladeType;
import trestle.propulsion.CoefficientRow;
import trestle.propulsion.CoefficientTable;
import trestle.propulsion.Comparison;
import trestle.propulsion.GeometryOnly;
import trestle.propulsion.Propeller;
import trestle.propulsion.PropellerData;
import trestle.propulsion.StaticTest;
import trestle.units.Length;
import trestle.units.Rotation;

/**
 * Reads a propeller and what was measured of it.
 *
 * @param at JSON Pointer of the propeller
 * @param reading notes defaults and contradictions
 */
public record PropellerReading(String at, Reading reading) {
    private static final String NOT_GIVEN = "the request gives none";

    /**
     * The propeller.
     *
     * @param propeller of the request
     * @return the propeller; empty where a contradiction was noted
     */
    Optional<Propeller> propeller(ApiPropeller propeller) {
        boolean one = reading.atMostOne(
                at, List.of("static_test", "thrust_power_table"), propeller.staticTest(), propeller.thrustPowerTable());
        Optional<PropellerData> data = data(propeller);
        if (!one || data.isEmpty()) {
            return Optional.empty();
        }
        boolean measured = data.get() instanceof CoefficientTable;
        // Beside a measured table neither number nor kind of blades touches anything.
        Reading noting = measured ? new Reading() : reading;
        int blades = noting.orDefault(propeller.blades(), ApiPropeller.BLADES, at, NOT_GIVEN);
        ApiBladeType type = noting.orDefault(
                propeller.bladeType(),
                ApiBladeType.GENERAL,
                ApiPropeller.BLADE_TYPE.at(at),
                "the request gives none; thin electric propellers are more efficient");
        return Optional.of(new Propeller(
                Length.mFromIn(propeller.diameterIn()),
                Length.mFromIn(propeller.pitchIn()),
                blades,
                BladeType.valueOf(type.name()),
                data.get(),
                radPerS(propeller.maxRpm()),
                new Comparison(
                        Reading.or(propeller.powerRatio(), ApiPropeller.POWER_RATIO),
                        Reading.or(propeller.rotationRatio(), ApiPropeller.ROTATION_RATIO))));
    }

    private Optional<PropellerData> data(ApiPropeller propeller) {
        if (propeller.thrustPowerTable() != null) {
            return table(propeller.thrustPowerTable());
        }
        return Optional.of(propeller.staticTest() == null ? new GeometryOnly() : staticTest(propeller.staticTest()));
    }

    private StaticTest staticTest(ApiStaticTest test) {
        return new StaticTest(
                Rotation.radPerSFromRpm(test.rpm()),
                test.thrustN(),
                test.shaftPowerW(),
                FlightReading.conditions(
                                test.conditions(),
                                ApiStaticTest.CONDITIONS.at(ApiPropeller.STATIC_TEST.at(at)),
                                reading)
                        .air());
    }

    private Optional<PropellerData> table(List<ApiThrustPowerRow> rows) {
        String table = ApiPropeller.THRUST_POWER_TABLE.at(at);
        boolean sound = rows.get(0).thrustCoefficient() > 0;
        if (!sound) {
            reading.fault(
                    ApiThrustPowerRow.THRUST_COEFFICIENT.at(table + "/0"),
                    "contradiction",
                    "the table must begin at an advance ratio at which the propeller pulls");
        }
        for (int i = 0; i < rows.size(); i++) {
            ApiThrustPowerRow row = rows.get(i);
            if (i > 0 && row.advanceRatio() <= rows.get(i - 1).advanceRatio()) {
                reading.fault(
                        ApiThrustPowerRow.ADVANCE_RATIO.at(table + "/" + i),
                        "contradiction",
                        "advance ratios must rise from row to row");
                sound = false;
            }
            if (row.thrustCoefficient() >= 0 && row.powerCoefficient() <= 0) {
                reading.fault(
                        ApiThrustPowerRow.POWER_COEFFICIENT.at(table + "/" + i),
                        "contradiction",
                        "a propeller that does not brake takes power: the coefficient must be above 0");
                sound = false;
            }
        }
        return sound
                ? Optional.of(new CoefficientTable(
                        rows.stream().map(PropellerReading::row).toList()))
                : Optional.empty();
    }

    private static CoefficientRow row(ApiThrustPowerRow row) {
        return new CoefficientRow(row.advanceRatio(), row.thrustCoefficient(), row.powerCoefficient());
    }

    private static OptionalDouble radPerS(Double rpm) {
        return rpm == null ? OptionalDouble.empty() : OptionalDouble.of(Rotation.radPerSFromRpm(rpm));
    }
}
