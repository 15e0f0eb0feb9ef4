package trestle.endpoint.launch;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiLaunch;
import trestle.api.model.ApiLaunchKind;
import trestle.api.model.ApiLaunchStallAnswer;
import trestle.api.model.ApiLaunchStallRequest;
import trestle.api.model.ApiThrustPoint;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.endpoint.common.FlightReading;
import trestle.figure.LaunchFigure;
import trestle.figure.LaunchMoment;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.flight.Airframe;
import trestle.flight.Conditions;
import trestle.launch.Launch;
import trestle.launch.LaunchPart;
import trestle.launch.LaunchPath;
import trestle.launch.LaunchStall;
import trestle.launch.LaunchStallResult;
import trestle.launch.LaunchStallTask;
import trestle.launch.LaunchWorkings;
import trestle.launch.LinearThrust;
import trestle.launch.Thrust;
import trestle.launch.ThrustCurve;
import trestle.launch.ThrustPoint;
import trestle.launch.Turn;
import trestle.units.Angle;
import trestle.units.Mass;

/** The door of {@code /v1/launch-stall}: reads the request once, writes the answer once. */
public final class LaunchStallEndpoint
        implements Calculation<ApiLaunchStallRequest, LaunchStallTask, LaunchStallResult, ApiLaunchStallAnswer> {
    private static final List<String> MODELS = List.of(
            "point mass in steady air, integrated in time from release to safe flight or"
                    + " the ground (Anderson, Introduction to Flight, chapter 6; from memory)",
            "cord as a linear spring, a third of its mass moving along (Rayleigh, The"
                    + " Theory of Sound; from memory)",
            "U.S. Standard Atmosphere 1976");

    private static final List<String> CAUTIONS = List.of(
            "A spinning propeller takes fingers: start a pusher's motor only after it has left the hand, and keep"
                    + " everyone clear of cord, ramp and propeller.",
            "Find the real stall speed at a safe height before trusting a margin near the"
                    + " ground; gusts and a turn in the climb take from it.",
            "Local rules on where and over whom to launch come first.");

    @Override
    public String name() {
        return "launch-stall";
    }

    @Override
    public Class<ApiLaunchStallRequest> requestType() {
        return ApiLaunchStallRequest.class;
    }

    @Override
    public LaunchStallTask read(ApiLaunchStallRequest request, Reading reading) {
        Airframe airframe = FlightReading.airframe(
                Mass.kgFromG(request.takeoffMassG()),
                request.wingAreaDm2(),
                request.wingSpanMm(),
                request.maxLiftCoefficient(),
                reading);
        Conditions conditions =
                FlightReading.conditions(request.conditions(), ApiLaunchStallRequest.CONDITIONS.at(""), reading);
        LaunchReading launching = new LaunchReading(request.launch(), ApiLaunchStallRequest.LAUNCH.at(""), reading);
        Optional<Launch> launch = launching.read();
        Optional<Thrust> thrust = thrust(request, reading);
        Turn turn = turn(request, reading);
        double motorDelayS = launching.motorDelayS();
        reading.refuseContradictions();
        return new LaunchStallTask(
                airframe,
                FlightReading.polar(request.drag(), airframe.aspectRatio()),
                thrust.orElseThrow(),
                conditions.air(),
                Reading.or(request.headwindMPerS(), ApiLaunchStallRequest.HEADWIND_M_PER_S),
                launch.orElseThrow(),
                motorDelayS,
                turn,
                Reading.optional(request.turnAirspeedMPerS()));
    }

    @Override
    public LaunchStallResult work(LaunchStallTask read) {
        return LaunchStall.of(read);
    }

    @Override
    public ApiLaunchStallAnswer answer(Done<ApiLaunchStallRequest, LaunchStallTask, LaunchStallResult> done) {
        return LaunchWriting.write(done.work(), judgement(done.work(), pointers(done.request())::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiLaunchStallRequest, LaunchStallTask, LaunchStallResult> done) {
        return WorkingWriting.write(LaunchWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiLaunchStallRequest, LaunchStallTask, LaunchStallResult> done, Theme theme) {
        return figure(done.read(), done.work(), theme);
    }

    public static String figure(LaunchStallTask task, LaunchStallResult result, Theme theme) {
        List<LaunchMoment> path = LaunchPath.of(task, result).stream()
                .map(m -> new LaunchMoment(m.timeS(), m.heightM(), m.airspeedMPerS()))
                .toList();
        return LaunchFigure.of(task, result, path, theme);
    }

    public static ApiJudgement judgement(
            LaunchStallResult result, Function<Subject, String> place, List<ApiAssumption> assumed) {
        return JudgementWriting.of(result.judgement(), place, assumed, CAUTIONS, MODELS);
    }

    private static Optional<Thrust> thrust(ApiLaunchStallRequest request, Reading reading) {
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

    private static boolean rising(List<ApiThrustPoint> points, Reading reading) {
        boolean rising = true;
        for (int i = 1; i < points.size(); i++) {
            rising &= FlightReading.rises(
                    points.get(i).airspeedMPerS(),
                    points.get(i - 1).airspeedMPerS(),
                    ApiLaunchStallRequest.THRUST_CURVE.at("") + "/" + i,
                    reading);
        }
        return rising;
    }

    private static Thrust curve(List<ApiThrustPoint> points) {
        return new ThrustCurve(points.stream()
                .map(point -> new ThrustPoint(point.airspeedMPerS(), point.thrustN()))
                .toList());
    }

    private static Turn turn(ApiLaunchStallRequest request, Reading reading) {
        reading.atMostOne("", List.of("bank_deg", "load_factor"), request.bankDeg(), request.loadFactor());
        if (request.loadFactor() != null) {
            return new Turn(request.loadFactor());
        }
        return Turn.ofBankRad(Angle.radFromDeg(
                reading.orDefault(request.bankDeg(), ApiLaunchStallRequest.BANK_DEG, "", "the request gives none")));
    }

    private static Pointers pointers(ApiLaunchStallRequest request) {
        String launch = ApiLaunchStallRequest.LAUNCH.at("");
        return new Pointers(Map.ofEntries(
                entry(LaunchPart.TAKEOFF_MASS, ApiLaunchStallRequest.TAKEOFF_MASS_G.at("")),
                entry(LaunchPart.MAX_LIFT_COEFFICIENT, ApiLaunchStallRequest.MAX_LIFT_COEFFICIENT.at("")),
                entry(LaunchPart.DRAG, ApiLaunchStallRequest.DRAG.at("")),
                entry(
                        LaunchPart.THRUST,
                        (request.thrustCurve() == null
                                        ? ApiLaunchStallRequest.STATIC_THRUST_N
                                        : ApiLaunchStallRequest.THRUST_CURVE)
                                .at("")),
                entry(LaunchPart.CONDITIONS, ApiLaunchStallRequest.CONDITIONS.at("")),
                entry(LaunchPart.HEADWIND, ApiLaunchStallRequest.HEADWIND_M_PER_S.at("")),
                entry(LaunchPart.LAUNCH, launch),
                entry(LaunchPart.RELEASE_SPEED, releaseSpeed(request.launch().kind(), launch)),
                // Bank and load factor are as given; what can be wrong is the airspeed.
                entry(LaunchPart.TURN, ApiLaunchStallRequest.TURN_AIRSPEED_M_PER_S.at(""))));
    }

    /** What a builder changes to be let go faster. */
    static String releaseSpeed(ApiLaunchKind kind, String at) {
        return switch (kind) {
            case HAND, CATAPULT -> ApiLaunch.RELEASE_SPEED_M_PER_S.at(at);
            case DOLLY -> ApiLaunch.LIFT_OFF_AIRSPEED_M_PER_S.at(at);
            case BUNGEE -> ApiLaunch.STRETCH_M.at(at);
        };
    }
}
