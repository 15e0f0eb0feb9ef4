package trestle.endpoint;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trestle.api.model.EnduranceAnswer;
import trestle.api.model.EnduranceRequest;
import trestle.api.model.Judgement;
import trestle.api.model.Working;
import trestle.figure.EnduranceFigure;
import trestle.figure.Theme;
import trestle.finding.Assumption;
import trestle.finding.Finding;
import trestle.finding.Subject;
import trestle.flight.Endurance;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceTask;
import trestle.flight.EnduranceWorkings;
import trestle.flight.FlightPart;
import trestle.propulsion.PropulsionMatch;
import trestle.review.Drive;

/** The door of {@code /v1/endurance}: reads the request once, writes the answer once. */
final class EnduranceEndpoint
        implements Calculation<EnduranceRequest, EnduranceAnswer>, Drawn<EnduranceRequest>, Worked<EnduranceRequest> {
    private static final List<String> MODELS = List.of(
            "level flight from a parabolic polar, a measured curve or a calibration (Anderson,"
                    + " Introduction to Flight; from memory)",
            "endurance by the discharge of the pack at each power (compare Traub, J." + " Aircraft 48(2), 2011)",
            "U.S. Standard Atmosphere 1976");

    private static final List<String> CAUTIONS = List.of(
            "Times and distances are estimates for steady flight; land with a reserve and"
                    + " check the first flights against them.",
            "Flight over people, out of sight or high up is governed by local rules, which" + " come first.");

    private static final Map<FlightPart, String> PLACES = Map.ofEntries(
            entry(FlightPart.AIRCRAFT, ""),
            entry(FlightPart.TAKEOFF_MASS, "/takeoff_mass_g"),
            entry(FlightPart.MAX_LIFT_COEFFICIENT, "/max_lift_coefficient"),
            entry(FlightPart.DRAG, "/drag"),
            entry(FlightPart.POWER_CURVE, "/power_curve"),
            entry(FlightPart.CALIBRATION, "/calibration"),
            entry(FlightPart.CONDITIONS, "/conditions"),
            entry(FlightPart.HEADWIND, "/headwind_m_per_s"),
            entry(FlightPart.RESERVE, "/reserve_percent"),
            entry(FlightPart.AIRSPEED, "/airspeed_m_per_s"),
            entry(FlightPart.LEG, "/legs/{}"),
            entry(FlightPart.BATTERY, "/battery_mass_g"));

    @Override
    public String name() {
        return "endurance";
    }

    @Override
    public Class<EnduranceRequest> requestType() {
        return EnduranceRequest.class;
    }

    @Override
    public EnduranceAnswer answer(EnduranceRequest request) {
        Reading reading = new Reading();
        EnduranceReading read = EnduranceReading.of(request, reading);
        EnduranceResult result = Endurance.of(read.task());
        Pointers pointers = pointers(request);
        return EnduranceWriting.write(
                result,
                read.drive()
                        .map(drive -> judgement(result, drive, pointers, reading))
                        .orElseGet(() -> judgement(result, pointers::to, reading)));
    }

    @Override
    public List<Working> workings(EnduranceRequest request) {
        EnduranceTask task = EnduranceReading.of(request, new Reading()).task();
        return WorkingWriting.write(EnduranceWorkings.of(task, Endurance.of(task)));
    }

    @Override
    public String figure(EnduranceRequest request, Theme theme) {
        EnduranceTask task = EnduranceReading.of(request, new Reading()).task();
        return EnduranceFigure.of(task, Endurance.of(task), theme);
    }

    static Judgement judgement(EnduranceResult result, Function<Subject, String> place, Reading reading) {
        return Judge.of(result.findings(), result.assumptions(), place, reading, CAUTIONS, MODELS);
    }

    /** A drive that is described is judged by itself too: its ratings hold in every flight. */
    private static Judgement judgement(EnduranceResult result, Drive drive, Pointers pointers, Reading reading) {
        PropulsionMatch match = drive.match();
        List<Finding> findings = joined(result.findings(), match.findings());
        List<Assumption> assumptions = joined(result.assumptions(), match.assumptions());
        return Judge.of(
                findings, assumptions, pointers::to, reading, CAUTIONS, joined(MODELS, PropulsionMatchEndpoint.MODELS));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    private static Pointers pointers(EnduranceRequest request) {
        String energy = request.pack() == null ? "/usable_energy_wh" : "/pack";
        String supply = request.pack() == null ? "/supply_voltage_v" : "/pack";
        Map<Enum<?>, String> places = new HashMap<>(DriveReading.pointers("/propulsion", supply));
        places.putAll(PLACES);
        places.put(FlightPart.ENERGY, energy);
        places.put(FlightPart.EFFICIENCY, request.propulsion() == null ? "/efficiency" : "/propulsion");
        return new Pointers(places);
    }
}
