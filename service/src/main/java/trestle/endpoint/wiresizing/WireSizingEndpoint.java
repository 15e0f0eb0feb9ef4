package trestle.endpoint.wiresizing;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiWireSizingAnswer;
import trestle.api.model.ApiWireSizingRequest;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
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
            "power to carry mass, dP/dm = 1.5 P/m");

    private static final List<String> CAUTIONS = List.of(
            "High current: fuse or limit what can be shorted, insulate every joint, and"
                    + " follow the maker's ratings for wire and connectors.",
            "A computed temperature is for clean, sound joints in the place described;"
                    + " touch and measure after the first full-load run.");

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
        return WireWriting.write(done.work(), judgement(done.work(), pointers("")::to, done.assumed()));
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
            WireSizing sizing, Function<Subject, String> place, List<ApiAssumption> assumed) {
        return JudgementWriting.of(sizing.findings(), sizing.assumptions(), place, assumed, CAUTIONS, MODELS);
    }

    /** Where the parts of a run stand below a place in a request. */
    public static Pointers pointers(String at) {
        return new Pointers(Map.ofEntries(
                entry(WiringPart.RUN, at),
                entry(WiringPart.CURRENT, at + "/current_a"),
                entry(WiringPart.LENGTH, at + "/length_mm"),
                entry(WiringPart.SUPPLY_VOLTAGE, at + "/supply_voltage_v"),
                entry(WiringPart.PEAK_CURRENT, at + "/peak_current_a"),
                entry(WiringPart.PEAK_DURATION, at + "/peak_duration_s"),
                entry(WiringPart.MAX_DROP, at + "/max_drop_percent"),
                entry(WiringPart.GAUGE_SYSTEM, at + "/gauge_system"),
                entry(WiringPart.GAUGE, at + "/gauge"),
                entry(WiringPart.STRANDS_IN_PARALLEL, at + "/strands_in_parallel"),
                entry(WiringPart.INSULATION, at + "/insulation"),
                entry(WiringPart.INSULATION_THICKNESS, at + "/insulation_thickness_mm"),
                entry(WiringPart.AMBIENT, at + "/ambient_c"),
                entry(WiringPart.ALTITUDE, at + "/altitude_m"),
                entry(WiringPart.BUNDLED_CONDUCTORS, at + "/bundled_conductors"),
                entry(WiringPart.ENCLOSURE, at + "/enclosure"),
                entry(WiringPart.FOAM_WALL, at + "/foam_wall_mm"),
                entry(WiringPart.CONNECTOR, at + "/connectors/{}"),
                entry(WiringPart.FLIGHT, at + "/flight")));
    }
}
