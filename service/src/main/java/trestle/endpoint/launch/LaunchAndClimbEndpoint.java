package trestle.endpoint.launch;

import static java.util.Map.entry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import trestle.api.model.ApiDragPolar;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiLaunch;
import trestle.api.model.ApiLaunchAndClimbAnswer;
import trestle.api.model.ApiLaunchAndClimbRequest;
import trestle.api.model.ApiLaunchKind;
import trestle.api.model.ApiThrustPoint;
import trestle.api.model.ApiWorking;
import trestle.atmosphere.StandardAtmosphere;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.Estimating;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.endpoint.common.AirframeEstimates;
import trestle.endpoint.common.FlightReading;
import trestle.figure.LaunchFigure;
import trestle.figure.LaunchMoment;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.flight.Airframe;
import trestle.flight.Conditions;
import trestle.launch.Launch;
import trestle.launch.LaunchAndClimb;
import trestle.launch.LaunchAndClimbResult;
import trestle.launch.LaunchAndClimbTask;
import trestle.launch.LaunchPart;
import trestle.launch.LaunchWind;
import trestle.launch.LaunchWorkings;
import trestle.launch.LinearThrust;
import trestle.launch.Thrust;
import trestle.launch.ThrustCurve;
import trestle.launch.ThrustPoint;
import trestle.launch.Turn;
import trestle.units.Angle;
import trestle.units.Mass;

/** The door of {@code /v1/launch-and-climb}: reads the request once, writes the answer once. */
public final class LaunchAndClimbEndpoint
        implements Calculation<
                ApiLaunchAndClimbRequest, LaunchAndClimbTask, LaunchAndClimbResult, ApiLaunchAndClimbAnswer> {
    private static final List<String> MODELS = List.of(
            "point mass in steady air, integrated in time from release to its climb speed or"
                    + " the ground (Anderson, Introduction to Flight, chapter 6; from memory)",
            "cord as a linear spring, a third of its mass moving along (Rayleigh, The"
                    + " Theory of Sound; from memory)",
            "wind over height: logarithmic law over the classes of Davenport and Wieringa (course notes after R. B."
                    + " Stull); turbulence after Panofsky and Dutton, 1984 (from memory)",
            "U.S. Standard Atmosphere 1976");

    /** Thrust at rest over weight that no aircraft has. */
    private static final double MOST_WEIGHTS = 20;

    @Override
    public String name() {
        return "launch-and-climb";
    }

    @Override
    public Class<ApiLaunchAndClimbRequest> requestType() {
        return ApiLaunchAndClimbRequest.class;
    }

    @Override
    public ApiLaunchAndClimbRequest complete(ApiLaunchAndClimbRequest request, Estimating estimating) {
        AirframeEstimates airframe = new AirframeEstimates(
                request.takeoffMassG(),
                request.wingAreaDm2(),
                request.wingSpanMm(),
                null,
                request.conditions(),
                request.airframeKind(),
                request.wingSection(),
                estimating);
        return request.toBuilder()
                .drag(drag(request, airframe, estimating))
                .maxLiftCoefficient(airframe.maxLift(
                        request.maxLiftCoefficient(), ApiLaunchAndClimbRequest.MAX_LIFT_COEFFICIENT, ""))
                .build();
    }

    private static ApiDragPolar drag(
            ApiLaunchAndClimbRequest request, AirframeEstimates airframe, Estimating estimating) {
        String at = ApiLaunchAndClimbRequest.DRAG.at("");
        if (request.drag() == null && !estimating.allowed()) {
            estimating.missing(at, ApiLaunchAndClimbRequest.DRAG.name());
            return null;
        }
        return airframe.polar(request.drag(), at);
    }

    @Override
    public void figures(LaunchAndClimbResult work, Map<MainFigure, Double> figures) {
        LaunchWriting.figures(work, figures);
    }

    @Override
    public Set<String> stops(LaunchAndClimbResult work) {
        return work.judgement().stops();
    }

    @Override
    public LaunchAndClimbTask read(ApiLaunchAndClimbRequest request, Reading reading) {
        Airframe airframe = FlightReading.airframe(
                Mass.kgFromG(request.takeoffMassG()),
                request.wingAreaDm2(),
                request.wingSpanMm(),
                request.maxLiftCoefficient(),
                reading);
        Conditions conditions =
                FlightReading.conditions(request.conditions(), ApiLaunchAndClimbRequest.CONDITIONS.at(""), reading);
        LaunchReading launching = new LaunchReading(request.launch(), ApiLaunchAndClimbRequest.LAUNCH.at(""), reading);
        Optional<Launch> launch = launching.read();
        Optional<Thrust> thrust = thrust(request, reading);
        thrust.ifPresent(pull -> plausible(pull, airframe, thrustPlace(request), reading));
        Turn turn = turn(request, reading);
        double motorDelayS = launching.motorDelayS();
        Optional<LaunchWind> wind = launching.wind(Optional.empty());
        reading.refuseContradictions();
        return new LaunchAndClimbTask(
                airframe,
                FlightReading.polar(request.drag(), airframe.aspectRatio()),
                thrust.orElseThrow(),
                conditions.air(),
                wind.orElseThrow(),
                launch.orElseThrow(),
                launching.limits(request.neverExceedAirspeedMPerS()),
                motorDelayS,
                turn,
                Reading.optional(request.turnAirspeedMPerS()));
    }

    @Override
    public LaunchAndClimbResult work(LaunchAndClimbTask read) {
        return LaunchAndClimb.of(read);
    }

    @Override
    public ApiLaunchAndClimbAnswer answer(
            Done<ApiLaunchAndClimbRequest, LaunchAndClimbTask, LaunchAndClimbResult> done) {
        return LaunchWriting.write(
                done.work(), judgement(done.read(), done.work(), pointers(done.request())::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiLaunchAndClimbRequest, LaunchAndClimbTask, LaunchAndClimbResult> done) {
        return WorkingWriting.write(LaunchWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiLaunchAndClimbRequest, LaunchAndClimbTask, LaunchAndClimbResult> done, Theme theme) {
        return figure(done.read(), done.work(), theme);
    }

    public static String figure(LaunchAndClimbTask task, LaunchAndClimbResult result, Theme theme) {
        List<LaunchMoment> path = result.launch().path().stream()
                .map(m -> new LaunchMoment(m.timeS(), m.heightM(), m.airspeedMPerS()))
                .toList();
        return LaunchFigure.of(task, result, path, theme);
    }

    public static ApiJudgement judgement(
            LaunchAndClimbTask task, LaunchAndClimbResult result, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(result.judgement(), place, assumed, LaunchCautions.of(task), MODELS);
    }

    private static Optional<Thrust> thrust(ApiLaunchAndClimbRequest request, Reading reading) {
        reading.exactlyOne(
                "", List.of("static_thrust_n", "thrust_curve"), request.staticThrustN(), request.thrustCurve());
        if (request.thrustCurve() != null) {
            return reading.takesNo("a thrust_curve", "", "pitch_speed_m_per_s", request.pitchSpeedMPerS())
                            & rising(request.thrustCurve(), reading)
                    ? Optional.of(curve(request.thrustCurve()))
                    : Optional.empty();
        }
        return request.staticThrustN() != null
                        && reading.needs("static_thrust_n", "", "pitch_speed_m_per_s", request.pitchSpeedMPerS())
                ? Optional.of(new LinearThrust(request.staticThrustN(), request.pitchSpeedMPerS()))
                : Optional.empty();
    }

    /** More than any motor pulls: a unit has slipped. */
    private static void plausible(Thrust thrust, Airframe airframe, String at, Reading reading) {
        double weightN = airframe.massKg() * StandardAtmosphere.GRAVITY_M_PER_S2;
        if (thrust.thrustN(0) > MOST_WEIGHTS * weightN) {
            reading.fault(
                    at,
                    "contradiction",
                    String.format(
                            Locale.ROOT,
                            "%.0f N is more than %.0f times the weight of %.0f N: give newtons, not grams of thrust",
                            thrust.thrustN(0),
                            MOST_WEIGHTS,
                            weightN));
        }
    }

    private static boolean rising(List<ApiThrustPoint> points, Reading reading) {
        boolean rising = true;
        for (int i = 1; i < points.size(); i++) {
            rising &= FlightReading.rises(
                    points.get(i).airspeedMPerS(),
                    points.get(i - 1).airspeedMPerS(),
                    ApiLaunchAndClimbRequest.THRUST_CURVE.at("") + "/" + i,
                    reading);
        }
        return rising;
    }

    private static Thrust curve(List<ApiThrustPoint> points) {
        return new ThrustCurve(points.stream()
                .map(point -> new ThrustPoint(point.airspeedMPerS(), point.thrustN()))
                .toList());
    }

    private static Turn turn(ApiLaunchAndClimbRequest request, Reading reading) {
        reading.atMostOne("", List.of("bank_deg", "load_factor"), request.bankDeg(), request.loadFactor());
        if (request.loadFactor() != null) {
            return new Turn(request.loadFactor());
        }
        return Turn.ofBankRad(Angle.radFromDeg(
                reading.orDefault(request.bankDeg(), ApiLaunchAndClimbRequest.BANK_DEG, "", "the request gives none")));
    }

    private static Pointers pointers(ApiLaunchAndClimbRequest request) {
        String launch = ApiLaunchAndClimbRequest.LAUNCH.at("");
        return new Pointers(Map.ofEntries(
                entry(LaunchPart.TAKEOFF_MASS, ApiLaunchAndClimbRequest.TAKEOFF_MASS_G.at("")),
                entry(LaunchPart.WING_AREA, ApiLaunchAndClimbRequest.WING_AREA_DM2.at("")),
                entry(LaunchPart.WING_SPAN, ApiLaunchAndClimbRequest.WING_SPAN_MM.at("")),
                entry(LaunchPart.MAX_LIFT_COEFFICIENT, ApiLaunchAndClimbRequest.MAX_LIFT_COEFFICIENT.at("")),
                entry(LaunchPart.DRAG, ApiLaunchAndClimbRequest.DRAG.at("")),
                entry(LaunchPart.THRUST, thrustPlace(request)),
                entry(LaunchPart.CONDITIONS, ApiLaunchAndClimbRequest.CONDITIONS.at("")),
                entry(LaunchPart.WIND, ApiLaunch.WIND.at(launch)),
                entry(LaunchPart.LAUNCH, launch),
                entry(LaunchPart.RELEASE_SPEED, releaseSpeed(request.launch().kind(), launch)),
                entry(LaunchPart.MAX_LOAD_FACTOR, ApiLaunch.MAX_LOAD_FACTOR.at(launch)),
                entry(LaunchPart.MAX_HOOK_FORCE, ApiLaunch.MAX_HOOK_FORCE_N.at(launch)),
                entry(LaunchPart.NEVER_EXCEED, ApiLaunchAndClimbRequest.NEVER_EXCEED_AIRSPEED_M_PER_S.at("")),
                // Bank and load factor are as given; what can be wrong is the airspeed.
                entry(LaunchPart.TURN, ApiLaunchAndClimbRequest.TURN_AIRSPEED_M_PER_S.at(""))));
    }

    private static String thrustPlace(ApiLaunchAndClimbRequest request) {
        return request.thrustCurve() == null
                ? ApiLaunchAndClimbRequest.STATIC_THRUST_N.at("")
                : ApiLaunchAndClimbRequest.THRUST_CURVE.at("");
    }

    /** What a builder changes to be released faster. */
    static String releaseSpeed(ApiLaunchKind kind, String at) {
        return switch (kind) {
            case HAND, CATAPULT -> ApiLaunch.RELEASE_SPEED_M_PER_S.at(at);
            case DOLLY -> ApiLaunch.LIFT_OFF_AIRSPEED_M_PER_S.at(at);
            case BUNGEE -> ApiLaunch.STRETCH_M.at(at);
        };
    }
}
