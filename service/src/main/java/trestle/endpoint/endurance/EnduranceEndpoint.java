package trestle.endpoint.endurance;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiEnduranceAnswer;
import trestle.api.model.ApiEnduranceRequest;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.endpoint.propulsionmatch.DriveReading;
import trestle.endpoint.propulsionmatch.PropulsionMatchEndpoint;
import trestle.figure.EnduranceFigure;
import trestle.figure.Theme;
import trestle.finding.Assumption;
import trestle.finding.Finding;
import trestle.finding.Subject;
import trestle.flight.Endurance;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceWorkings;
import trestle.flight.FlightPart;
import trestle.joint.Drive;
import trestle.propulsion.PropulsionMatch;

/** The door of {@code /v1/endurance}: reads the request once, writes the answer once. */
public final class EnduranceEndpoint
        implements Calculation<ApiEnduranceRequest, EnduranceReading, EnduranceResult, ApiEnduranceAnswer> {
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
    public Class<ApiEnduranceRequest> requestType() {
        return ApiEnduranceRequest.class;
    }

    @Override
    public EnduranceReading read(ApiEnduranceRequest request, Reading reading) {
        return EnduranceReading.of(request, reading);
    }

    @Override
    public EnduranceResult work(EnduranceReading read) {
        return Endurance.of(read.task());
    }

    @Override
    public ApiEnduranceAnswer answer(Done<ApiEnduranceRequest, EnduranceReading, EnduranceResult> done) {
        Pointers pointers = pointers(done.request());
        return EnduranceWriting.write(
                done.work(),
                done.read()
                        .drive()
                        .map(drive -> judgement(done.work(), drive, pointers, done.assumed()))
                        .orElseGet(() -> judgement(done.work(), pointers::to, done.assumed())));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiEnduranceRequest, EnduranceReading, EnduranceResult> done) {
        return WorkingWriting.write(EnduranceWorkings.of(done.read().task(), done.work()));
    }

    @Override
    public String figure(Done<ApiEnduranceRequest, EnduranceReading, EnduranceResult> done, Theme theme) {
        return EnduranceFigure.of(done.read().task(), done.work(), theme);
    }

    public static ApiJudgement judgement(
            EnduranceResult result, Function<Subject, String> place, List<ApiAssumption> assumed) {
        return JudgementWriting.of(result.findings(), result.assumptions(), place, assumed, CAUTIONS, MODELS);
    }

    /** A drive that is described is judged by itself too: its ratings hold in every flight. */
    private static ApiJudgement judgement(
            EnduranceResult result, Drive drive, Pointers pointers, List<ApiAssumption> assumed) {
        PropulsionMatch match = drive.match();
        List<Finding> findings = joined(result.findings(), match.judgement().findings());
        List<Assumption> assumptions =
                joined(result.assumptions(), match.judgement().assumptions());
        return JudgementWriting.of(
                findings, assumptions, pointers::to, assumed, CAUTIONS, joined(MODELS, PropulsionMatchEndpoint.MODELS));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    private static Pointers pointers(ApiEnduranceRequest request) {
        String energy = request.pack() == null ? "/usable_energy_wh" : "/pack";
        String supply = request.pack() == null ? "/supply_voltage_v" : "/pack";
        Map<Enum<?>, String> places = new HashMap<>(DriveReading.pointers("/propulsion", supply));
        places.putAll(PLACES);
        places.put(FlightPart.ENERGY, energy);
        places.put(FlightPart.EFFICIENCY, request.propulsion() == null ? "/efficiency" : "/propulsion");
        return new Pointers(places);
    }
}
