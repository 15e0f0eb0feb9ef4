package trestle.endpoint.airframeloads;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import trestle.api.model.ApiAirframeLoadsAnswer;
import trestle.api.model.ApiAirframeLoadsRequest;
import trestle.api.model.ApiLoadsJoint;
import trestle.api.model.ApiLoadsLaunch;
import trestle.api.model.ApiLoadsSpeeds;
import trestle.api.model.ApiLoadsSurface;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.LoadsFigure;
import trestle.figure.Theme;
import trestle.structure.AirframeLoads;
import trestle.structure.LoadsPart;
import trestle.structure.LoadsResult;
import trestle.structure.LoadsTask;
import trestle.structure.LoadsWorkings;

/** The door of {@code /v1/airframe-loads}: reads the request once, writes the answer once. */
public final class AirframeLoadsEndpoint
        implements Calculation<ApiAirframeLoadsRequest, LoadsTask, LoadsResult, ApiAirframeLoadsAnswer> {
    private static final List<String> MODELS = List.of(
            "lift along the span by Schrenk, NACA TM 948, 1940, or as an ellipse; beam theory, rigid wing",
            "gusts by CS-VLA 341, scaled to the chord and capped by the stall",
            "joiners as rigid pins in linear sockets; tubes by NASA SP-8007 (from memory)",
            "hinge moments of a thin section with a plain flap (Glauert, ARC R&M 1095, 1927)");

    private static final List<String> CAUTIONS = List.of(
            "These loads are an estimate and no certification: prove the wing with a static test before it flies over"
                    + " anything.",
            "Composite parts fail without warning and hide damage: inspect them after every hard landing.",
            "A maker's data sheet, local rules and licensed practice come before these strengths.");

    @Override
    public String name() {
        return "airframe-loads";
    }

    @Override
    public Class<ApiAirframeLoadsRequest> requestType() {
        return ApiAirframeLoadsRequest.class;
    }

    @Override
    public LoadsTask read(ApiAirframeLoadsRequest request, Reading reading) {
        return new LoadsReading(request, reading).task();
    }

    @Override
    public LoadsResult work(LoadsTask read) {
        return AirframeLoads.of(read);
    }

    @Override
    public ApiAirframeLoadsAnswer answer(Done<ApiAirframeLoadsRequest, LoadsTask, LoadsResult> done) {
        return LoadsWriting.write(
                done.read(),
                done.work(),
                JudgementWriting.of(done.work().judgement(), pointers()::to, done.assumed(), CAUTIONS, MODELS));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiAirframeLoadsRequest, LoadsTask, LoadsResult> done) {
        return WorkingWriting.write(LoadsWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiAirframeLoadsRequest, LoadsTask, LoadsResult> done, Theme theme) {
        return LoadsFigure.of(done.work(), theme);
    }

    private static Pointers pointers() {
        String joint = ApiAirframeLoadsRequest.JOINTS.at("") + "/{}";
        String surface = ApiAirframeLoadsRequest.SURFACES.at("") + "/{}";
        String speeds = ApiAirframeLoadsRequest.SPEEDS.at("");
        String launch = ApiAirframeLoadsRequest.LAUNCH.at("");
        return new Pointers(Map.ofEntries(
                entry(LoadsPart.ALL, ""),
                entry(LoadsPart.SPARS, ApiAirframeLoadsRequest.SPARS.at("")),
                entry(LoadsPart.JOINT, joint),
                entry(LoadsPart.SOCKET, ApiLoadsJoint.SOCKET.at(joint)),
                entry(LoadsPart.CRUISE, ApiLoadsSpeeds.CRUISE_AIRSPEED_M_PER_S.at(speeds)),
                entry(LoadsPart.TOP, ApiLoadsSpeeds.TOP_AIRSPEED_M_PER_S.at(speeds)),
                entry(LoadsPart.NEVER_EXCEED, ApiLoadsSpeeds.NEVER_EXCEED_AIRSPEED_M_PER_S.at(speeds)),
                entry(LoadsPart.LAUNCH, launch),
                entry(LoadsPart.HOOK, ApiLoadsLaunch.MAX_HOOK_FORCE_N.at(launch)),
                entry(LoadsPart.LANDING, ApiAirframeLoadsRequest.LANDING.at("")),
                entry(LoadsPart.RESTRAINT, ApiAirframeLoadsRequest.RESTRAINTS.at("") + "/{}"),
                entry(LoadsPart.SURFACE, surface),
                entry(LoadsPart.SERVO, ApiLoadsSurface.SERVO.at(surface)),
                entry(LoadsPart.FOAM, ApiAirframeLoadsRequest.FOAM_MODULUS_MPA.at(""))));
    }
}
