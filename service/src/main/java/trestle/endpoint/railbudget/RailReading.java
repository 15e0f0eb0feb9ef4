package trestle.endpoint.railbudget;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiLoadRole;
import trestle.api.model.ApiRail;
import trestle.api.model.ApiRailLoad;
import trestle.api.model.ApiRailSupply;
import trestle.api.model.ApiRegulator;
import trestle.api.model.ApiRegulatorCooling;
import trestle.api.model.ApiRegulatorKind;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.rails.Conversion;
import trestle.rails.Cooling;
import trestle.rails.Load;
import trestle.rails.LoadRole;
import trestle.rails.Rail;
import trestle.rails.Regulator;
import trestle.rails.Supply;
import trestle.units.Share;
import trestle.units.Temperature;

/** Reads regulated rails. */
public final class RailReading {
    private static final String NOT_GIVEN = "the request gives none";
    private static final String USUAL = "the request gives none; common practice, no source";

    private RailReading() {}

    /**
     * The pack as the regulators see it.
     *
     * @param supply of the request
     * @param at JSON Pointer of the supply
     * @param reading notes contradictions
     * @return the supply; empty where a contradiction was noted
     */
    static Optional<Supply> supply(ApiRailSupply supply, String at, Reading reading) {
        return reading.notBelow(
                        at, "full_voltage_v", supply.fullVoltageV(), "lowest_voltage_v", supply.lowestVoltageV())
                ? Optional.of(new Supply(supply.fullVoltageV(), supply.lowestVoltageV()))
                : Optional.empty();
    }

    /**
     * The rails.
     *
     * @param rails of the request
     * @param at JSON Pointer of the list
     * @param reading notes defaults and contradictions
     * @return the rails; empty where a contradiction was noted
     */
    public static Optional<List<Rail>> rails(List<ApiRail> rails, String at, Reading reading) {
        return Reading.each(rails, at, (rail, place) -> rail(rail, place, reading));
    }

    private static Optional<Rail> rail(ApiRail rail, String at, Reading reading) {
        Optional<Regulator> regulator = regulator(rail.regulator(), ApiRail.REGULATOR.at(at), reading);
        Optional<List<Load>> loads =
                Reading.each(rail.loads(), ApiRail.LOADS.at(at), (load, place) -> load(load, place, reading));
        boolean essential = Reading.or(rail.essential(), ApiRail.ESSENTIAL);
        return regulator.flatMap(r -> loads.map(l -> new Rail(rail.name(), r, l, essential)));
    }

    private static Optional<Regulator> regulator(ApiRegulator regulator, String at, Reading reading) {
        boolean sound = inputRange(regulator, at, reading)
                & reading.notBelow(
                        at, "peak_current_a", regulator.peakCurrentA(), "max_current_a", regulator.maxCurrentA());
        return conversion(regulator, at, reading)
                .filter(conversion -> sound)
                .map(conversion -> new Regulator(
                        conversion,
                        regulator.outputVoltageV(),
                        regulator.maxCurrentA(),
                        Reading.optional(regulator.peakCurrentA()),
                        regulator.inputMinV(),
                        regulator.inputMaxV(),
                        Optional.ofNullable(regulator.cooling())
                                .map(c -> cooling(c, ApiRegulator.COOLING.at(at), reading))));
    }

    private static boolean inputRange(ApiRegulator regulator, String at, Reading reading) {
        boolean range = regulator.inputMaxV() > regulator.inputMinV();
        if (!range) {
            reading.fault(
                    ApiRegulator.INPUT_MAX_V.at(at),
                    "contradiction",
                    "input_max_v is "
                            + FieldUnit.withUnit(regulator.inputMaxV(), "_v")
                            + ", not above the "
                            + FieldUnit.withUnit(regulator.inputMinV(), "_v")
                            + " of input_min_v");
        }
        return range;
    }

    private static Optional<Conversion> conversion(ApiRegulator regulator, String at, Reading reading) {
        if (regulator.kind() == ApiRegulatorKind.LINEAR) {
            return reading.takesNo("a linear regulator", at, ApiRegulator.EFFICIENCY, regulator.efficiency())
                    ? Optional.of(new Conversion.Linear())
                    : Optional.empty();
        }
        return Optional.of(new Conversion.Switching(
                reading.orDefault(regulator.efficiency(), ApiRegulator.EFFICIENCY, at, USUAL)));
    }

    private static Cooling cooling(ApiRegulatorCooling cooling, String at, Reading reading) {
        double ambientC = reading.orDefault(cooling.ambientC(), ApiRegulatorCooling.AMBIENT_C, at, USUAL);
        double highestC =
                reading.orDefault(cooling.maxTemperatureC(), ApiRegulatorCooling.MAX_TEMPERATURE_C, at, USUAL);
        return new Cooling(
                cooling.thermalResistanceKPerW(), Temperature.kFromC(ambientC), Temperature.kFromC(highestC));
    }

    private static Optional<Load> load(ApiRailLoad load, String at, Reading reading) {
        LoadRole role =
                LoadRole.valueOf(reading.orDefault(load.role(), ApiLoadRole.OTHER, ApiRailLoad.ROLE.at(at), NOT_GIVEN)
                        .name());
        double duty = Share.fractionFromPercent(
                reading.orDefault(load.dutyPercent(), ApiRailLoad.DUTY_PERCENT, at, NOT_GIVEN));
        if (load.peakA() == null) {
            reading.assume(ApiRailLoad.PEAK_A.at(at), FieldUnit.withUnit(load.typicalA(), "_a"), "as typical_a");
        }
        return reading.notBelow(at, "peak_a", load.peakA(), "typical_a", load.typicalA())
                ? Optional.of(new Load(
                        load.name(),
                        Reading.or(load.quantity(), ApiRailLoad.QUANTITY),
                        load.typicalA(),
                        Reading.optional(load.peakA()),
                        duty,
                        Reading.or(load.simultaneous(), ApiRailLoad.SIMULTANEOUS),
                        role))
                : Optional.empty();
    }
}
