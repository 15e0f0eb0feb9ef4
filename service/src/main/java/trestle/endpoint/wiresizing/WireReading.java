package trestle.endpoint.wiresizing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trestle.api.model.ApiContactMaterial;
import trestle.api.model.ApiEnclosure;
import trestle.api.model.ApiRunShape;
import trestle.api.model.ApiWireConnector;
import trestle.api.model.ApiWireFlight;
import trestle.api.model.ApiWireFuse;
import trestle.api.model.ApiWireInsulation;
import trestle.api.model.ApiWireSizingRequest;
import trestle.endpoint.FieldUnit;
import trestle.endpoint.Reading;
import trestle.numeric.ImpossibleValue;
import trestle.units.Capacitance;
import trestle.units.Length;
import trestle.units.Resistance;
import trestle.units.Share;
import trestle.units.Temperature;
import trestle.wiring.Connector;
import trestle.wiring.ContactMaterial;
import trestle.wiring.CurrentPeak;
import trestle.wiring.DropLimits;
import trestle.wiring.Enclosure;
import trestle.wiring.Flight;
import trestle.wiring.Fuse;
import trestle.wiring.Gauge;
import trestle.wiring.GaugeSystem;
import trestle.wiring.Insulation;
import trestle.wiring.PlugEnd;
import trestle.wiring.Precharge;
import trestle.wiring.WireDuty;
import trestle.wiring.WirePlan;
import trestle.wiring.WireRun;
import trestle.wiring.WireTask;

/**
 * Reads a run of wire, asked about alone or installed in an aircraft: the fields of {@link ApiWireSizingRequest} name
 * the places in both.
 */
public final class WireReading {
    private static final String NOT_GIVEN = "the request gives none";
    private static final String USUAL = "the request gives none; common practice, no source";

    private final ApiRunShape run;
    private final String at;
    private final Reading reading;

    /**
     * A run as it was read.
     *
     * @param plan how it is laid
     * @param peak its peak; empty without one
     */
    public record Laid(WirePlan plan, Optional<CurrentPeak> peak) {}

    private WireReading(ApiRunShape run, String at, Reading reading) {
        this.run = run;
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
    static Optional<WireTask> task(ApiWireSizingRequest request, String name, String at, Reading reading) {
        return new WireReading(request, at, reading).task(request, name);
    }

    /**
     * A run as it is laid, whoever gives its current.
     *
     * @param run the run
     * @param name the builder's name for it
     * @param ownCurrent whether it states its currents; what it states of them is not looked at where not
     * @param at JSON Pointer of the run
     * @param reading notes defaults and contradictions
     * @return the run; empty where a contradiction was noted
     */
    public static Optional<Laid> laid(ApiRunShape run, String name, boolean ownCurrent, String at, Reading reading) {
        return new WireReading(run, at, reading).laid(name, ownCurrent);
    }

    private Optional<WireTask> task(ApiWireSizingRequest request, String name) {
        Optional<Gauge> gauge = gauge();
        if (!isSound(gauge, true)) {
            return Optional.empty();
        }
        DropLimits drops = drops();
        Optional<CurrentPeak> peak = peak();
        Insulation insulation = insulation();
        Enclosure enclosure = enclosure();
        double ambientC = reading.orDefault(request.ambientC(), ApiWireSizingRequest.AMBIENT_C, at, NOT_GIVEN);
        double altitudeM = reading.orDefault(request.altitudeM(), ApiWireSizingRequest.ALTITUDE_M, at, NOT_GIVEN);
        WireDuty duty = new WireDuty(
                request.currentA(),
                peak,
                request.supplyVoltageV(),
                Boolean.TRUE.equals(request.feedsController()),
                Optional.ofNullable(request.flight()).map(WireReading::flight));
        WirePlan plan = plan(name, gauge, drops, insulation, enclosure);
        return Optional.of(plan.task(duty, Temperature.kFromC(ambientC), altitudeM));
    }

    private Optional<Laid> laid(String name, boolean ownCurrent) {
        Optional<Gauge> gauge = gauge();
        if (!isSound(gauge, ownCurrent)) {
            return Optional.empty();
        }
        DropLimits drops = drops();
        Optional<CurrentPeak> peak = ownCurrent ? peak() : Optional.empty();
        return Optional.of(new Laid(plan(name, gauge, drops, insulation(), enclosure()), peak));
    }

    private WirePlan plan(
            String name, Optional<Gauge> gauge, DropLimits drops, Insulation insulation, Enclosure enclosure) {
        return new WirePlan(
                name,
                Length.mFromMm(run.lengthMm()),
                parallelWires(),
                Optional.ofNullable(run.connectors())
                        .map(given -> IntStream.range(0, given.size())
                                .mapToObj(
                                        i -> connector(given.get(i), ApiWireSizingRequest.CONNECTORS.at(at) + "/" + i))
                                .toList()),
                insulation,
                Reading.optional(run.insulationThicknessMm(), Length::mFromMm),
                enclosure,
                Reading.optional(run.bayTemperatureC(), Temperature::kFromC),
                bundledConductors(),
                Length.mFromMm(foamWallMm(enclosure)),
                drops,
                touches(enclosure),
                system(),
                gauge,
                Optional.ofNullable(run.fuse()).map(WireReading::fuse),
                plug());
    }

    /** A gauge that is named exists, and a peak is not below the current that it is a peak of. */
    private boolean isSound(Optional<Gauge> gauge, boolean ownCurrent) {
        boolean peaks = !ownCurrent
                || run.currentA() == null
                || run.peakCurrentA() == null
                || run.peakCurrentA() >= run.currentA();
        if (!peaks) {
            reading.fault(
                    ApiWireSizingRequest.PEAK_CURRENT_A.at(at),
                    "contradiction",
                    "a peak of "
                            + FieldUnit.withUnit(run.peakCurrentA(), "_a")
                            + " is below the continuous current of "
                            + FieldUnit.withUnit(run.currentA(), "_a"));
        }
        return peaks && (run.gauge() == null || gauge.isPresent());
    }

    private DropLimits drops() {
        double percent = reading.orDefault(run.maxDropPercent(), ApiWireSizingRequest.MAX_DROP_PERCENT, at, USUAL);
        DropLimits drops = DropLimits.of(
                Reading.optional(run.maxDropPercent(), Share::fractionFromPercent),
                Reading.optional(run.maxPeakDropPercent(), Share::fractionFromPercent));
        boolean mayPeak = run.peakCurrentA() != null || run.currentA() == null;
        if (mayPeak && run.maxPeakDropPercent() == null) {
            reading.assume(
                    ApiWireSizingRequest.MAX_PEAK_DROP_PERCENT.at(at),
                    FieldUnit.withUnit(DropLimits.PEAK_RATIO * percent, "_percent"),
                    "twice the continuous limit, as FAA AC 43.13-1B, table 11-6, allows intermittent loads; from memory");
        }
        return drops;
    }

    /** A channel is taken to be in the foam that most are cut into. */
    private Optional<List<ContactMaterial>> touches(Enclosure enclosure) {
        String place = ApiWireSizingRequest.TOUCHES.at(at);
        if (run.touches() == null) {
            if (enclosure != Enclosure.FOAM_CHANNEL) {
                return Optional.empty();
            }
            reading.assume(
                    place, ContactMaterial.EPS_FOAM.words(), "the request gives none, and the wire lies in foam");
            return Optional.of(List.of(ContactMaterial.EPS_FOAM));
        }
        if (run.touches().contains(ApiContactMaterial.NOTHING) && run.touches().size() > 1) {
            reading.fault(place, "contradiction", "touches names nothing, and something besides: give only one");
        }
        return Optional.of(run.touches().stream()
                .filter(material -> material != ApiContactMaterial.NOTHING)
                .map(material -> ContactMaterial.valueOf(material.name()))
                .toList());
    }

    private int parallelWires() {
        return Reading.or(run.parallelWires(), ApiWireSizingRequest.PARALLEL_WIRES);
    }

    private Optional<CurrentPeak> peak() {
        return Optional.ofNullable(run.peakCurrentA())
                .map(peakA -> new CurrentPeak(
                        peakA,
                        reading.orDefault(run.peakDurationS(), ApiWireSizingRequest.PEAK_DURATION_S, at, NOT_GIVEN)));
    }

    private Insulation insulation() {
        String place = ApiWireSizingRequest.INSULATION.at(at);
        return Insulation.valueOf(reading.orDefault(run.insulation(), ApiWireInsulation.SILICONE_200, place, NOT_GIVEN)
                .name());
    }

    private Enclosure enclosure() {
        String place = ApiWireSizingRequest.ENCLOSURE.at(at);
        return Enclosure.valueOf(reading.orDefault(run.enclosure(), ApiEnclosure.FREE_AIR, place, NOT_GIVEN)
                .name());
    }

    private int bundledConductors() {
        return reading.orDefault(
                run.bundledConductors(),
                WireRun.WAYS * parallelWires(),
                ApiWireSizingRequest.BUNDLED_CONDUCTORS.at(at),
                "both ways of a run lie together, with all their parallel wires");
    }

    private double foamWallMm(Enclosure enclosure) {
        return enclosure == Enclosure.FOAM_CHANNEL
                ? reading.orDefault(run.foamWallMm(), ApiWireSizingRequest.FOAM_WALL_MM, at, USUAL)
                : Reading.or(run.foamWallMm(), ApiWireSizingRequest.FOAM_WALL_MM);
    }

    private GaugeSystem system() {
        return run.gaugeSystem() == null
                ? GaugeSystem.AWG
                : GaugeSystem.valueOf(run.gaugeSystem().name());
    }

    private Optional<Gauge> gauge() {
        if (run.gauge() == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(Gauge.parse(system(), run.gauge()));
        } catch (ImpossibleValue noSuchSize) {
            reading.fault(ApiWireSizingRequest.GAUGE.at(at), "unknown_value", noSuchSize.getMessage());
            return Optional.empty();
        }
    }

    private Connector connector(ApiWireConnector connector, String place) {
        return new Connector(
                connector.name(),
                Resistance.ohmFromMilliohm(connector.resistanceMilliohm()),
                connector.ratedCurrentA(),
                Reading.or(connector.count(), ApiWireConnector.COUNT),
                Reading.optional(connector.thermalResistanceKPerW()),
                connector.thermalResistanceKPerW() == null
                        ? reading.orDefault(
                                connector.ratedRiseK(),
                                ApiWireConnector.RATED_RISE_K,
                                place,
                                "the rise that ratings are commonly set for, IEC 60512-5, from memory")
                        : Reading.or(connector.ratedRiseK(), ApiWireConnector.RATED_RISE_K));
    }

    private static Fuse fuse(ApiWireFuse fuse) {
        return new Fuse(
                Reading.optional(fuse.ratedCurrentA()),
                Reading.optional(fuse.ratedVoltageV()),
                Reading.optional(fuse.breakingCurrentA()));
    }

    private PlugEnd plug() {
        return new PlugEnd(
                Reading.optional(run.fullVoltageV()),
                Reading.optional(run.sourceResistanceMilliohm(), Resistance::ohmFromMilliohm),
                Reading.optional(run.controllerCapacitanceUf(), Capacitance::fFromUf),
                Optional.ofNullable(run.precharge())
                        .map(given -> new Precharge(
                                Reading.optional(given.resistanceMilliohm(), Resistance::ohmFromMilliohm),
                                Reading.optional(given.energyRatingJ()))));
    }

    private static Flight flight(ApiWireFlight flight) {
        return new Flight(flight.durationS(), flight.specificPowerWPerKg());
    }
}
