package trestle.endpoint.wiresizing;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.Field;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiWireFuse;
import trestle.api.model.ApiWirePrecharge;
import trestle.api.model.ApiWireSizingAnswer;
import trestle.api.model.ApiWireSizingRequest;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.Theme;
import trestle.figure.WireFigure;
import trestle.finding.Subject;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;
import trestle.wiring.WireWorkings;
import trestle.wiring.WiringPart;

/** The door of {@code /v1/wire-sizing}: reads the request once, writes the answer once. */
public final class WireSizingEndpoint
        implements Calculation<ApiWireSizingRequest, WireTask, WireSizing, ApiWireSizingAnswer> {
    private static final List<String> MODELS = List.of(
            "copper of 58 MS/m at 20 °C, 0.00393 /K (IEC 60028); gauges of ASTM B258 (law from memory) and"
                    + " IEC 60228",
            "steady heat balance: natural convection (Churchill and Chu 1975; from memory), radiation,"
                    + " conduction through the insulation (Incropera and DeWitt; from memory)",
            "surface against what it touches: limits of years of use (reference table contact-temperatures; many from"
                    + " memory)",
            "power to carry mass, dP/dm = 1.5 P/m");

    @Override
    public String name() {
        return "wire-sizing";
    }

    @Override
    public Class<ApiWireSizingRequest> requestType() {
        return ApiWireSizingRequest.class;
    }

    @Override
    public WireTask read(ApiWireSizingRequest request, Reading reading) {
        Optional<WireTask> task = WireReading.task(request, "the run", "", reading);
        reading.refuseContradictions();
        return task.orElseThrow();
    }

    @Override
    public WireSizing work(WireTask read) {
        return WireSizing.of(read);
    }

    @Override
    public ApiWireSizingAnswer answer(Done<ApiWireSizingRequest, WireTask, WireSizing> done) {
        return WireWriting.write(
                done.read(), done.work(), judgement(done.read(), done.work(), pointers("")::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiWireSizingRequest, WireTask, WireSizing> done) {
        return WorkingWriting.write(WireWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiWireSizingRequest, WireTask, WireSizing> done, Theme theme) {
        return WireFigure.of(done.read(), done.work(), theme);
    }

    public static ApiJudgement judgement(
            WireTask task, WireSizing sizing, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(sizing.judgement(), place, assumed, WireCautions.of(task), MODELS);
    }

    /** Where the parts of a run stand below a place in a request. */
    public static Pointers pointers(String at) {
        return new Pointers(Map.ofEntries(
                entry(WiringPart.RUN, at),
                entry(WiringPart.CURRENT, ApiWireSizingRequest.CURRENT_A.at(at)),
                entry(WiringPart.LENGTH, ApiWireSizingRequest.LENGTH_MM.at(at)),
                entry(WiringPart.SUPPLY_VOLTAGE, ApiWireSizingRequest.SUPPLY_VOLTAGE_V.at(at)),
                entry(WiringPart.PEAK_CURRENT, ApiWireSizingRequest.PEAK_CURRENT_A.at(at)),
                entry(WiringPart.PEAK_DURATION, ApiWireSizingRequest.PEAK_DURATION_S.at(at)),
                entry(WiringPart.MAX_DROP, ApiWireSizingRequest.MAX_DROP_PERCENT.at(at)),
                entry(WiringPart.MAX_PEAK_DROP, ApiWireSizingRequest.MAX_PEAK_DROP_PERCENT.at(at)),
                entry(WiringPart.TOUCHES, ApiWireSizingRequest.TOUCHES.at(at)),
                entry(WiringPart.CONNECTORS, ApiWireSizingRequest.CONNECTORS.at(at)),
                entry(WiringPart.GAUGE_SYSTEM, ApiWireSizingRequest.GAUGE_SYSTEM.at(at)),
                entry(WiringPart.GAUGE, ApiWireSizingRequest.GAUGE.at(at)),
                entry(WiringPart.PARALLEL_WIRES, ApiWireSizingRequest.PARALLEL_WIRES.at(at)),
                entry(WiringPart.INSULATION, ApiWireSizingRequest.INSULATION.at(at)),
                entry(WiringPart.INSULATION_THICKNESS, ApiWireSizingRequest.INSULATION_THICKNESS_MM.at(at)),
                entry(WiringPart.AMBIENT, ApiWireSizingRequest.AMBIENT_C.at(at)),
                entry(WiringPart.ALTITUDE, ApiWireSizingRequest.ALTITUDE_M.at(at)),
                entry(WiringPart.BUNDLED_CONDUCTORS, ApiWireSizingRequest.BUNDLED_CONDUCTORS.at(at)),
                entry(WiringPart.ENCLOSURE, ApiWireSizingRequest.ENCLOSURE.at(at)),
                entry(WiringPart.FOAM_WALL, ApiWireSizingRequest.FOAM_WALL_MM.at(at)),
                entry(WiringPart.CONNECTOR, ApiWireSizingRequest.CONNECTORS.at(at) + "/{}"),
                entry(WiringPart.FUSE, ApiWireSizingRequest.FUSE.at(at)),
                entry(WiringPart.FUSE_RATING, fuse(at, ApiWireFuse.RATED_CURRENT_A)),
                entry(WiringPart.FUSE_VOLTAGE, fuse(at, ApiWireFuse.RATED_VOLTAGE_V)),
                entry(WiringPart.FUSE_BREAKING, fuse(at, ApiWireFuse.BREAKING_CURRENT_A)),
                entry(WiringPart.FULL_VOLTAGE, ApiWireSizingRequest.FULL_VOLTAGE_V.at(at)),
                entry(WiringPart.SOURCE_RESISTANCE, ApiWireSizingRequest.SOURCE_RESISTANCE_MILLIOHM.at(at)),
                entry(WiringPart.CAPACITANCE, ApiWireSizingRequest.CONTROLLER_CAPACITANCE_UF.at(at)),
                entry(
                        WiringPart.PRECHARGE_RATING,
                        ApiWirePrecharge.ENERGY_RATING_J.at(ApiWireSizingRequest.PRECHARGE.at(at))),
                entry(WiringPart.FLIGHT, ApiWireSizingRequest.FLIGHT.at(at))));
    }

    private static String fuse(String at, Field<?> field) {
        return field.at(ApiWireSizingRequest.FUSE.at(at));
    }
}
