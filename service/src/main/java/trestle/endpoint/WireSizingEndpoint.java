package trestle.endpoint;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.Judgement;
import trestle.api.model.WireSizingAnswer;
import trestle.api.model.WireSizingRequest;
import trestle.api.model.Working;
import trestle.figure.Theme;
import trestle.figure.WireFigure;
import trestle.finding.Subject;
import trestle.wiring.WireSizing;
import trestle.wiring.WireTask;
import trestle.wiring.WireWorkings;
import trestle.wiring.WiringPart;

/** The door of {@code /v1/wire-sizing}: reads the request once, writes the answer once. */
final class WireSizingEndpoint
        implements Calculation<WireSizingRequest, WireSizingAnswer>,
                Drawn<WireSizingRequest>,
                Worked<WireSizingRequest> {
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
    public Class<WireSizingRequest> requestType() {
        return WireSizingRequest.class;
    }

    @Override
    public WireSizingAnswer answer(WireSizingRequest request) {
        Reading reading = new Reading();
        WireTask task = read(request, reading);
        WireSizing sizing = WireSizing.of(task);
        return WireWriting.write(sizing, judgement(sizing, pointers("")::to, reading));
    }

    @Override
    public List<Working> workings(WireSizingRequest request) {
        WireTask task = read(request, new Reading());
        return WorkingWriting.write(WireWorkings.of(task, WireSizing.of(task)));
    }

    @Override
    public String figure(WireSizingRequest request, Theme theme) {
        WireTask task = read(request, new Reading());
        return WireFigure.of(task, WireSizing.of(task), theme);
    }

    private static WireTask read(WireSizingRequest request, Reading reading) {
        Optional<WireTask> task = WireReading.task(request, "the run", "", reading);
        reading.refuseContradictions();
        return task.orElseThrow();
    }

    static Judgement judgement(WireSizing sizing, Function<Subject, String> place, Reading reading) {
        return Judge.of(sizing.findings(), sizing.assumptions(), place, reading, CAUTIONS, MODELS);
    }

    /** Where the parts of a run stand below a place in a request. */
    static Pointers pointers(String at) {
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
