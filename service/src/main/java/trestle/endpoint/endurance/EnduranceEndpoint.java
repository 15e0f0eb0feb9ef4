package trestle.endpoint.endurance;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import trestle.api.model.ApiEnduranceAnswer;
import trestle.api.model.ApiEnduranceRequest;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.Estimating;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.endpoint.propulsionmatch.DriveReading;
import trestle.endpoint.propulsionmatch.PropulsionMatchEndpoint;
import trestle.figure.EnduranceFigure;
import trestle.figure.Theme;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceWorkings;
import trestle.flight.FlightPart;
import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionPart;

/** The door of {@code /v1/endurance}: reads the request once, writes the answer once. */
public final class EnduranceEndpoint
        implements Calculation<ApiEnduranceRequest, EnduranceReading, EnduranceWork, ApiEnduranceAnswer> {
    private static final List<String> MODELS = List.of(
            "level flight from a parabolic polar, a measured curve or a calibration (Anderson,"
                    + " Introduction to Flight; from memory)",
            "endurance by the discharge of the pack at each power (compare Traub, J." + " Aircraft 48(2), 2011)",
            "U.S. Standard Atmosphere 1976");

    private static final List<String> CAUTIONS = List.of(
            "Times and distances are estimates for steady flight: plan to land with the reserve, never on the cutoff, and"
                    + " check them against the first flights.",
            "Airspace, height, distance and flight over people are governed by local rules, which come first: keep the"
                    + " aircraft in sight, or an observer who does.");

    private static final Map<FlightPart, String> PLACES = Map.ofEntries(
            entry(FlightPart.AIRCRAFT, ""),
            entry(FlightPart.TAKEOFF_MASS, ApiEnduranceRequest.TAKEOFF_MASS_G.at("")),
            entry(FlightPart.WING_AREA, ApiEnduranceRequest.WING_AREA_DM2.at("")),
            entry(FlightPart.WING_SPAN, ApiEnduranceRequest.WING_SPAN_MM.at("")),
            entry(FlightPart.PACK, ApiEnduranceRequest.PACK.at("")),
            entry(FlightPart.MAX_TAKEOFF_MASS, ApiEnduranceRequest.MAX_TAKEOFF_MASS_G.at("")),
            entry(FlightPart.MAX_LIFT_COEFFICIENT, ApiEnduranceRequest.MAX_LIFT_COEFFICIENT.at("")),
            entry(FlightPart.DRAG, ApiEnduranceRequest.DRAG.at("")),
            entry(FlightPart.POWER_CURVE, ApiEnduranceRequest.POWER_CURVE.at("")),
            entry(FlightPart.CALIBRATION, ApiEnduranceRequest.CALIBRATION.at("")),
            entry(FlightPart.CONDITIONS, ApiEnduranceRequest.CONDITIONS.at("")),
            entry(FlightPart.HEADWIND, ApiEnduranceRequest.HEADWIND_M_PER_S.at("")),
            entry(FlightPart.RESERVE, ApiEnduranceRequest.RESERVE_PERCENT.at("")),
            entry(FlightPart.AIRSPEED, ApiEnduranceRequest.AIRSPEED_M_PER_S.at("")),
            entry(FlightPart.LEG, ApiEnduranceRequest.LEGS.at("") + "/{}"),
            entry(FlightPart.PACK_MASS, ApiEnduranceRequest.PACK_MASS_G.at("")));

    @Override
    public String name() {
        return "endurance";
    }

    @Override
    public Class<ApiEnduranceRequest> requestType() {
        return ApiEnduranceRequest.class;
    }

    @Override
    public ApiEnduranceRequest complete(ApiEnduranceRequest request, Estimating estimating) {
        return EnduranceCompletion.complete(request, estimating);
    }

    @Override
    public void figures(EnduranceWork work, Map<MainFigure, Double> figures) {
        EnduranceWriting.figures(work.result(), figures);
    }

    @Override
    public Set<String> stops(EnduranceWork work) {
        Set<String> stops = new TreeSet<>(work.result().judgement().stops());
        work.match().ifPresent(match -> stops.addAll(match.judgement().stops()));
        return stops;
    }

    @Override
    public EnduranceReading read(ApiEnduranceRequest request, Reading reading) {
        return EnduranceReading.of(request, reading);
    }

    @Override
    public EnduranceWork work(EnduranceReading read) {
        return EnduranceWork.of(read);
    }

    @Override
    public ApiEnduranceAnswer answer(Done<ApiEnduranceRequest, EnduranceReading, EnduranceWork> done) {
        Pointers pointers = pointers(done.request());
        EnduranceWork work = done.work();
        return EnduranceWriting.write(
                work.result(),
                work.match()
                        .map(match -> judgement(work.result(), match, pointers, done.assumed()))
                        .orElseGet(() -> judgement(work.result(), pointers::to, done.assumed())));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiEnduranceRequest, EnduranceReading, EnduranceWork> done) {
        return WorkingWriting.write(
                EnduranceWorkings.of(done.read().task(), done.work().result()));
    }

    @Override
    public String figure(Done<ApiEnduranceRequest, EnduranceReading, EnduranceWork> done, Theme theme) {
        return EnduranceFigure.of(done.read().task(), done.work().result(), theme);
    }

    public static ApiJudgement judgement(EnduranceResult result, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(result.judgement(), place, assumed, CAUTIONS, MODELS);
    }

    /** A drive that is described is judged by itself too: its ratings hold in every flight. */
    private static ApiJudgement judgement(
            EnduranceResult result, PropulsionMatch match, Pointers pointers, Premises assumed) {
        Judge both = new Judge();
        both.join(result.judgement());
        both.join(match.judgement());
        List<String> models = new ArrayList<>(MODELS);
        models.addAll(PropulsionMatchEndpoint.MODELS);
        return JudgementWriting.of(both.judgement(), pointers::to, assumed, CAUTIONS, models);
    }

    private static Pointers pointers(ApiEnduranceRequest request) {
        boolean described = request.pack() != null;
        String pack = ApiEnduranceRequest.PACK.at("");
        String propulsion = ApiEnduranceRequest.PROPULSION.at("");
        String supply = described ? pack : ApiEnduranceRequest.SUPPLY_VOLTAGE_V.at("");
        Map<Enum<?>, String> places = new HashMap<>(DriveReading.pointers(propulsion, supply));
        places.putAll(PLACES);
        places.put(PropulsionPart.CRUISE_THRUST, ApiEnduranceRequest.DRAG.at(""));
        places.put(PropulsionPart.CRUISE_AIRSPEED, ApiEnduranceRequest.AIRSPEED_M_PER_S.at(""));
        places.put(PropulsionPart.TAKEOFF_MASS, ApiEnduranceRequest.TAKEOFF_MASS_G.at(""));
        places.put(PropulsionPart.WING_AREA, ApiEnduranceRequest.WING_AREA_DM2.at(""));
        places.put(PropulsionPart.MAX_LIFT, ApiEnduranceRequest.MAX_LIFT_COEFFICIENT.at(""));
        places.put(FlightPart.ENERGY, described ? pack : ApiEnduranceRequest.USABLE_ENERGY_WH.at(""));
        places.put(
                FlightPart.EFFICIENCY,
                request.propulsion() == null ? ApiEnduranceRequest.EFFICIENCY.at("") : propulsion);
        return new Pointers(places);
    }
}
