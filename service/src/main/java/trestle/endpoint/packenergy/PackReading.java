package trestle.endpoint.packenergy;

import static java.util.Map.entry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trestle.api.Field;
import trestle.api.model.ApiCell;
import trestle.api.model.ApiKnownChemistry;
import trestle.api.model.ApiPack;
import trestle.api.model.ApiPackCovering;
import trestle.api.model.ApiPackCutoff;
import trestle.api.model.ApiPackEnergyRequest;
import trestle.api.model.ApiPackLoad;
import trestle.api.model.ApiPackSegment;
import trestle.api.model.ApiSegmentShape;
import trestle.battery.Cell;
import trestle.battery.CellLimits;
import trestle.battery.Chemistry;
import trestle.battery.Covering;
import trestle.battery.Cutoff;
import trestle.battery.InternalResistance;
import trestle.battery.OpenCircuitCurve;
import trestle.battery.OpenCircuitPoint;
import trestle.battery.Pack;
import trestle.battery.PackPart;
import trestle.battery.Segment;
import trestle.battery.Surroundings;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.numeric.ImpossibleValue;
import trestle.units.Charge;
import trestle.units.Mass;
import trestle.units.Resistance;
import trestle.units.Share;
import trestle.units.Temperature;

/** Reads a pack, which several requests share. */
public final class PackReading {
    private static final String NOT_GIVEN = "the request gives none";

    private PackReading() {}

    /**
     * The segments of a pack and its leads.
     *
     * @param segments of the request
     * @param leadResistanceMilliohm of the request, or null
     * @param at JSON Pointer of the list of segments
     * @param reading notes contradictions
     * @return the pack; empty where a contradiction was noted
     */
    public static Optional<Pack> pack(
            List<? extends ApiSegmentShape> segments, Double leadResistanceMilliohm, String at, Reading reading) {
        double leadsOhm = Resistance.ohmFromMilliohm(
                Reading.or(leadResistanceMilliohm, ApiPackEnergyRequest.LEAD_RESISTANCE_MILLIOHM));
        return Reading.each(segments, at, (segment, place) -> segment(segment, place, reading))
                .map(read -> new Pack(read, leadsOhm));
    }

    /**
     * The segments and leads of a pack that stands in a request as a whole.
     *
     * @param pack of the request
     * @param at JSON Pointer of the pack
     * @param reading notes contradictions
     * @return the pack; empty where a contradiction was noted
     */
    public static Optional<Pack> pack(ApiPack pack, String at, Reading reading) {
        return pack(pack.segments(), pack.leadResistanceMilliohm(), ApiPack.SEGMENTS.at(at), reading);
    }

    private static Optional<Segment> segment(ApiSegmentShape segment, String at, Reading reading) {
        return cell(segment.cell(), ApiPackSegment.CELL.at(at), reading)
                .map(cell -> new Segment(
                        Reading.or(segment.name(), ""),
                        segment.series(),
                        segment.parallel(),
                        cell,
                        Share.fractionFromPercent(reading.orDefault(
                                segment.healthPercent(), ApiPackSegment.HEALTH_PERCENT, at, NOT_GIVEN)),
                        Share.fractionFromPercent(reading.orDefault(
                                segment.stateOfChargePercent(), ApiPackSegment.STATE_OF_CHARGE_PERCENT, at, NOT_GIVEN)),
                        Reading.optional(segment.massG(), Mass::kgFromG)));
    }

    private static Optional<Cell> cell(ApiCell cell, String at, Reading reading) {
        reading.atMostOne(
                at,
                List.of(ApiCell.DC_RESISTANCE_MILLIOHM.name(), ApiCell.AC_RESISTANCE_MILLIOHM.name()),
                cell.dcResistanceMilliohm(),
                cell.acResistanceMilliohm());
        Chemistry chemistry = Chemistry.valueOf(cell.chemistry().name());
        if (chemistry != Chemistry.CUSTOM
                && !reading.takesNo(
                        "a cell of a known chemistry", at, ApiCell.BEHAVES_LIKE.name(), cell.behavesLike())) {
            return Optional.empty();
        }
        if (chemistry == Chemistry.CUSTOM && cell.openCircuitCurve() == null) {
            reading.fault(ApiCell.OPEN_CIRCUIT_CURVE.at(at), "missing", "a custom cell needs its own curve");
            return Optional.empty();
        }
        List<OpenCircuitPoint> curve = Reading.listed(cell.openCircuitCurve()).stream()
                .map(point ->
                        new OpenCircuitPoint(Share.fractionFromPercent(point.stateOfChargePercent()), point.voltageV()))
                .toList();
        try {
            return Optional.of(new Cell(
                    chemistry,
                    chemistry == Chemistry.CUSTOM ? behaviour(cell, at, reading) : chemistry,
                    Charge.cFromAh(cell.capacityAh()),
                    resistance(cell),
                    Reading.optional(cell.massG(), Mass::kgFromG),
                    limits(cell),
                    OpenCircuitCurve.of(curve),
                    Reading.optional(cell.coldGrowthK()),
                    Reading.or(cell.heatLossRatio(), ApiCell.HEAT_LOSS_RATIO)));
        } catch (ImpossibleValue impossible) {
            Field<?> field = impossible.argument().equals("openCircuitCurve")
                    ? ApiCell.OPEN_CIRCUIT_CURVE
                    : ApiCell.MINIMUM_VOLTAGE_V;
            reading.fault(field.at(at), "contradiction", impossible.getMessage());
            return Optional.empty();
        }
    }

    private static Chemistry behaviour(ApiCell cell, String at, Reading reading) {
        return Chemistry.valueOf(
                reading.orDefault(cell.behavesLike(), ApiKnownChemistry.LI_ION, ApiCell.BEHAVES_LIKE.at(at), NOT_GIVEN)
                        .name());
    }

    private static InternalResistance resistance(ApiCell cell) {
        if (cell.dcResistanceMilliohm() != null) {
            return new InternalResistance.Dc(Resistance.ohmFromMilliohm(cell.dcResistanceMilliohm()));
        }
        if (cell.acResistanceMilliohm() != null) {
            return new InternalResistance.Ac(Resistance.ohmFromMilliohm(cell.acResistanceMilliohm()));
        }
        return new InternalResistance.Typical();
    }

    private static CellLimits limits(ApiCell cell) {
        return new CellLimits(
                Reading.optional(cell.maxContinuousCurrentA()),
                Reading.optional(cell.maxChargeCurrentA()),
                Reading.optional(cell.minimumVoltageV()),
                Reading.optional(cell.fullVoltageV()));
    }

    /**
     * The cutoff.
     *
     * @param cutoff of the request, or null
     * @param seriesCount cells in series over all segments
     * @param fullVoltageV voltage of the full pack, V
     * @param at JSON Pointer of the cutoff
     * @param reading notes defaults and contradictions
     * @return the cutoff
     */
    public static Cutoff cutoff(
            ApiPackCutoff cutoff, int seriesCount, double fullVoltageV, String at, Reading reading) {
        if (cutoff == null) {
            reading.assume(at, "the minimum voltage of the weakest cell", "the request gives no cutoff");
            return new Cutoff.CellMinimum();
        }
        reading.atMostOne(
                at,
                List.of(
                        ApiPackCutoff.PACK_VOLTAGE_V.name(),
                        ApiPackCutoff.CELL_VOLTAGE_V.name(),
                        ApiPackCutoff.WEAKEST_CELL_VOLTAGE_V.name()),
                cutoff.packVoltageV(),
                cutoff.cellVoltageV(),
                cutoff.weakestCellVoltageV());
        if (cutoff.countedCells() != null && cutoff.cellVoltageV() == null) {
            reading.fault(ApiPackCutoff.CELL_VOLTAGE_V.at(at), "missing", "counted_cells needs cell_voltage_v");
        }
        if (cutoff.packVoltageV() != null) {
            below(cutoff.packVoltageV(), fullVoltageV, ApiPackCutoff.PACK_VOLTAGE_V.at(at), reading);
            return new Cutoff.PackVoltage(cutoff.packVoltageV());
        }
        if (cutoff.cellVoltageV() != null) {
            return counted(cutoff, seriesCount, at, reading);
        }
        return cutoff.weakestCellVoltageV() == null
                ? new Cutoff.CellMinimum()
                : new Cutoff.CellVoltage(cutoff.weakestCellVoltageV());
    }

    private static Cutoff counted(ApiPackCutoff cutoff, int seriesCount, String at, Reading reading) {
        if (cutoff.countedCells() == null) {
            reading.assume(
                    ApiPackCutoff.COUNTED_CELLS.at(at),
                    seriesCount + " cells",
                    "the cells in series; the request does not say what the controller counts");
        }
        return new Cutoff.CountedCells(
                cutoff.cellVoltageV(), Reading.or(cutoff.countedCells(), seriesCount), cutoff.countedCells() != null);
    }

    private static void below(double cutoffV, double fullV, String at, Reading reading) {
        if (cutoffV >= fullV) {
            reading.fault(
                    at,
                    "contradiction",
                    FieldUnit.withUnit(cutoffV, at)
                            + " is not below the full voltage of the pack, "
                            + String.format(Locale.ROOT, "%.1f V", fullV));
        }
    }

    /**
     * Air and wrapping.
     *
     * @param ambientC of the request, or null
     * @param covering of the request, or null
     * @param at JSON Pointer of what holds both
     * @param reading notes defaults
     * @return the surroundings, cells as warm as the air
     */
    public static Surroundings surroundings(Double ambientC, ApiPackCovering covering, String at, Reading reading) {
        return Surroundings.of(
                ambientK(ambientC, at, reading),
                Covering.valueOf(
                        reading.orDefault(covering, ApiPackCovering.WRAPPED, ApiPack.COVERING.at(at), NOT_GIVEN)
                                .name()));
    }

    /**
     * The air around a pack, and its cells at the start.
     *
     * @param ambientC of the request, or null
     * @param at JSON Pointer of what holds it
     * @param reading notes the default
     * @return temperature, K
     */
    public static double ambientK(Double ambientC, String at, Reading reading) {
        return Temperature.kFromC(reading.orDefault(ambientC, ApiPackEnergyRequest.AMBIENT_C, at, NOT_GIVEN));
    }

    /** Where the parts of a pack stand: segments below one place, the rest below another. */
    public static Map<Enum<?>, String> pointers(String segments, String rest) {
        String segment = segments + "/{}";
        String cell = ApiPackSegment.CELL.at(segment);
        String load = ApiPackEnergyRequest.LOAD.at(rest);
        String cutoff = ApiPackEnergyRequest.CUTOFF.at(rest);
        return Map.ofEntries(
                entry(PackPart.PACK, rest),
                entry(PackPart.SEGMENT, segment),
                entry(PackPart.SERIES, ApiPackSegment.SERIES.at(segment)),
                entry(PackPart.CELL, cell),
                entry(PackPart.CHEMISTRY, ApiCell.CHEMISTRY.at(cell)),
                entry(PackPart.CAPACITY, ApiCell.CAPACITY_AH.at(cell)),
                entry(PackPart.DC_RESISTANCE, ApiCell.DC_RESISTANCE_MILLIOHM.at(cell)),
                entry(PackPart.AC_RESISTANCE, ApiCell.AC_RESISTANCE_MILLIOHM.at(cell)),
                entry(PackPart.BLOCK_MASS, ApiPackSegment.MASS_G.at(segment)),
                entry(PackPart.CELL_MASS, ApiCell.MASS_G.at(cell)),
                entry(PackPart.MAX_CONTINUOUS_CURRENT, ApiCell.MAX_CONTINUOUS_CURRENT_A.at(cell)),
                entry(PackPart.MAX_CHARGE_CURRENT, ApiCell.MAX_CHARGE_CURRENT_A.at(cell)),
                entry(PackPart.MINIMUM_VOLTAGE, ApiCell.MINIMUM_VOLTAGE_V.at(cell)),
                entry(PackPart.FULL_VOLTAGE, ApiCell.FULL_VOLTAGE_V.at(cell)),
                entry(PackPart.OPEN_CIRCUIT_CURVE, ApiCell.OPEN_CIRCUIT_CURVE.at(cell)),
                entry(PackPart.HEALTH, ApiPackSegment.HEALTH_PERCENT.at(segment)),
                entry(PackPart.STATE_OF_CHARGE, ApiPackSegment.STATE_OF_CHARGE_PERCENT.at(segment)),
                entry(PackPart.LOAD, load),
                entry(PackPart.PROFILE, ApiPackLoad.PROFILE.at(load)),
                entry(PackPart.PROFILE_STEP, ApiPackLoad.PROFILE.at(load) + "/{}"),
                entry(PackPart.CUTOFF, cutoff),
                entry(PackPart.COUNTED_CELLS, ApiPackCutoff.COUNTED_CELLS.at(cutoff)),
                entry(PackPart.AMBIENT, ApiPackEnergyRequest.AMBIENT_C.at(rest)),
                entry(PackPart.LEAD_RESISTANCE, ApiPackEnergyRequest.LEAD_RESISTANCE_MILLIOHM.at(rest)),
                entry(PackPart.RESERVE, ApiPackEnergyRequest.RESERVE_PERCENT.at(rest)),
                entry(PackPart.COVERING, ApiPackEnergyRequest.COVERING.at(rest)));
    }
}
