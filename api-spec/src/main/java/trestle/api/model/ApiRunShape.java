package trestle.api.model;

import java.util.List;

/**
 * What a run of wire is, wherever it stands in the contract: asked about alone, or installed in an aircraft. The
 * generated records of both implement it, so that the compiler holds the two shapes together.
 */
public interface ApiRunShape {
    /** Continuous current, A; null where the aircraft gives it. */
    Double currentA();

    /** Current of a short peak, A; null where there is none, or the aircraft gives it. */
    Double peakCurrentA();

    /** How long the peak lasts, s; null where the default holds. */
    Double peakDurationS();

    /** Length one way, mm. */
    Double lengthMm();

    /** Voltage at the supply end, V; null where the aircraft gives it. */
    Double supplyVoltageV();

    /** Maximum drop at the continuous current, % of the supply voltage; null where the default holds. */
    Double maxDropPercent();

    /** Maximum drop in the peak, % of the supply voltage; null where it follows from the other. */
    Double maxPeakDropPercent();

    /** How gauges are named; null where the default holds. */
    ApiGaugeSystem gaugeSystem();

    /** A gauge to check; null where none is asked about. */
    String gauge();

    /** Equal wires side by side for each direction; null where the default holds. */
    Integer parallelWires();

    /** Material of the insulation; null where the default holds. */
    ApiWireInsulation insulation();

    /** Thickness of the insulation, mm; null where the usual one is taken. */
    Double insulationThicknessMm();

    /** Conductors in one bundle; null where both ways of the run lie together. */
    Integer bundledConductors();

    /** Where the wire lies; null where the default holds. */
    ApiEnclosure enclosure();

    /** Air of the bay, °C; null where it is not known. */
    Double bayTemperatureC();

    /** Foam between wire and outside, mm; null where the default holds. */
    Double foamWallMm();

    /** What the wire touches; null where it is not known. */
    List<ApiContactMaterial> touches();

    /** Connectors in the run; null where they are not known. */
    List<ApiWireConnector> connectors();

    /** A fuse in the run; null where none is asked about. */
    ApiWireFuse fuse();

    /** Voltage of a full pack at the supply end, V; null where it is not known. */
    Double fullVoltageV();

    /** Resistance of the pack and of what lies before the run, mΩ; null where it is not known. */
    Double sourceResistanceMilliohm();

    /** Capacitance that is plugged in at the end of the run, µF; null where it is not known. */
    Double controllerCapacitanceUf();

    /** What charges it first; null where nothing does. */
    ApiWirePrecharge precharge();
}
