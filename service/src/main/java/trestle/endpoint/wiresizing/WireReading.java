package trestle.endpoint.wiresizing;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.api.model.ApiEnclosure;
import trestle.api.model.ApiWireConnector;
import trestle.api.model.ApiWireFlight;
import trestle.api.model.ApiWireInsulation;
import trestle.api.model.ApiWireSizingRequest;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.numeric.ImpossibleValue;
import trestle.units.Length;
import trestle.units.Resistance;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.wiring.Connector;
import trestle.wiring.CurrentPeak;
import trestle.wiring.Enclosure;
import trestle.wiring.Flight;
import trestle.wiring.Gauge;
import trestle.wiring.GaugeSystem;
import trestle.wiring.Insulation;
import trestle.wiring.Surroundings;
import trestle.wiring.WireRun;
import trestle.wiring.WireTask;

/** Reads a run of wire. */
public final class WireReading {
    private static final String NOT_GIVEN = "the request gives none";
    private static final String USUAL = "the request gives none; common practice, no source";

    private final ApiWireSizingRequest request;
    private final String at;
    private final Reading reading;

    private WireReading(ApiWireSizingRequest request, String at, Reading reading) {
        this.request = request;
        this.at = at;
        this.reading = reading;
    }

    /**
     * The task that a request describes.
     *
     * @param request the run
     * @param name the builder's name for it
     * @param at JSON Pointer of the run
     * @param reading notes defaults and contradictions
     * @return the task; empty where a contradiction was noted
     */
    public static Optional<WireTask> task(ApiWireSizingRequest request, String name, String at, Reading reading) {
        return new WireReading(request, at, reading).task(name);
    }

    private Optional<WireTask> task(String name) {
        GaugeSystem system = system();
        Optional<Gauge> checked = gauge(system);
        if (request.peakCurrentA() != null && request.peakCurrentA() < request.currentA()) {
            reading.fault(
                    at + "/peak_current_a",
                    "contradiction",
                    "a peak of "
                            + FieldUnit.withUnit(request.peakCurrentA(), "_a")
                            + " is below the continuous current of "
                            + FieldUnit.withUnit(request.currentA(), "_a"));
            return Optional.empty();
        }
        if (request.gauge() != null && checked.isEmpty()) {
            return Optional.empty();
        }
        double maxDrop = reading.orDefault(request.maxDropPercent(), ApiWireSizingRequest.MAX_DROP_PERCENT, at, USUAL);
        return Optional.of(new WireTask(
                run(name),
                insulation(),
                metres(request.insulationThicknessMm()),
                surroundings(),
                Share.fractionFromPercent(maxDrop),
                system,
                checked,
                Optional.ofNullable(request.flight()).map(WireReading::flight)));
    }

    private WireRun run(String name) {
        return new WireRun(
                name,
                request.currentA(),
                Length.mFromMm(request.lengthMm()),
                request.supplyVoltageV(),
                Optional.ofNullable(request.peakCurrentA()).map(peakA -> new CurrentPeak(peakA, peakDurationS())),
                Reading.or(request.strandsInParallel(), ApiWireSizingRequest.STRANDS_IN_PARALLEL),
                Reading.listed(request.connectors()).stream()
                        .map(WireReading::connector)
                        .toList(),
                Boolean.TRUE.equals(request.feedsController()));
    }

    private double peakDurationS() {
        return reading.orDefault(request.peakDurationS(), ApiWireSizingRequest.PEAK_DURATION_S, at, NOT_GIVEN);
    }

    private Surroundings surroundings() {
        Enclosure enclosure = Enclosure.valueOf(
                reading.orDefault(request.enclosure(), ApiEnclosure.FREE_AIR, at + "/enclosure", NOT_GIVEN)
                        .name());
        double ambientC = reading.orDefault(request.ambientC(), ApiWireSizingRequest.AMBIENT_C, at, NOT_GIVEN);
        double altitudeM = reading.orDefault(request.altitudeM(), ApiWireSizingRequest.ALTITUDE_M, at, NOT_GIVEN);
        int bundled = reading.orDefault(
                request.bundledConductors(),
                ApiWireSizingRequest.BUNDLED_CONDUCTORS,
                at,
                "the two ways of a run lie together");
        return new Surroundings(
                enclosure,
                Temperature.kFromC(ambientC),
                bayTemperatureK(),
                altitudeM,
                bundled,
                Length.mFromMm(foamWallMm(enclosure)));
    }

    private OptionalDouble bayTemperatureK() {
        Double bayC = request.bayTemperatureC();
        return bayC == null ? OptionalDouble.empty() : OptionalDouble.of(Temperature.kFromC(bayC));
    }

    private double foamWallMm(Enclosure enclosure) {
        return enclosure == Enclosure.FOAM_CHANNEL
                ? reading.orDefault(request.foamWallMm(), ApiWireSizingRequest.FOAM_WALL_MM, at, USUAL)
                : Reading.or(request.foamWallMm(), ApiWireSizingRequest.FOAM_WALL_MM);
    }

    private Insulation insulation() {
        return Insulation.valueOf(
                reading.orDefault(request.insulation(), ApiWireInsulation.SILICONE_200, at + "/insulation", NOT_GIVEN)
                        .name());
    }

    private GaugeSystem system() {
        return request.gaugeSystem() == null
                ? GaugeSystem.AWG
                : GaugeSystem.valueOf(request.gaugeSystem().name());
    }

    private Optional<Gauge> gauge(GaugeSystem system) {
        if (request.gauge() == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(Gauge.parse(system, request.gauge()));
        } catch (ImpossibleValue noSuchSize) {
            reading.fault(at + "/gauge", "unknown_value", noSuchSize.getMessage());
            return Optional.empty();
        }
    }

    private static Connector connector(ApiWireConnector connector) {
        return new Connector(
                connector.name(),
                Resistance.ohmFromMilliohm(connector.resistanceMilliohm()),
                connector.ratedCurrentA(),
                Reading.or(connector.count(), ApiWireConnector.COUNT));
    }

    private static Flight flight(ApiWireFlight flight) {
        return new Flight(flight.durationS(), flight.specificPowerWPerKg());
    }

    private static OptionalDouble metres(Double lengthMm) {
        return lengthMm == null ? OptionalDouble.empty() : OptionalDouble.of(Length.mFromMm(lengthMm));
    }
}
