package trestle.launch;

import static trestle.finding.Severity.ATTENTION;
import static trestle.finding.Severity.NOTE;
import static trestle.finding.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;

/** What {@link LaunchStall} has to say about a launch. */
final class LaunchFindings {
    /** Less than this over the stall at release is thin: common practice, no source. */
    private static final double USUAL_MARGIN_FRACTION = 0.1;

    /** A launch that uses more than this share of its height is a near miss. */
    private static final double USUAL_SHARE_OF_HEIGHT = 0.5;

    /** A climb flatter than this clears little: common practice, no source. */
    private static final double USUAL_CLIMB_RAD = Math.toRadians(5);

    /** A density altitude from which launches suffer noticeably: 15 % less air. */
    private static final double THIN_AIR_M = 1500;

    /** Throws, common practice, no source: 10 m/s at 5 kg, 8 m/s at 10 kg at best. */
    private static final double LIGHT_KG = 5;

    private static final double LIGHT_THROW_M_PER_S = 10;
    private static final double HEAVY_KG = 10;
    private static final double HEAVY_THROW_M_PER_S = 8;

    /** Thrust is held against drag at this many airspeeds between the stall and twice it. */
    private static final int THRUST_CHECKS = 21;

    private final LaunchStallTask task;
    private final LaunchStallResult result;
    private final List<Finding> findings = new ArrayList<>();

    private LaunchFindings(LaunchStallTask task, LaunchStallResult result) {
        this.task = task;
        this.result = result;
    }

    static List<Finding> of(LaunchStallTask task, LaunchStallResult result) {
        LaunchFindings all = new LaunchFindings(task, result);
        all.outcome();
        all.release();
        all.hand();
        all.thrust();
        all.turn();
        all.wind();
        all.air();
        return all.findings;
    }

    private void outcome() {
        LaunchFlight launch = result.launch();
        double heightM = task.launch().releaseHeightM();
        switch (launch.outcome()) {
            case GROUND ->
                add(
                        STOP,
                        "launch-into-ground",
                        LaunchPart.LAUNCH,
                        launch.releaseAirspeedMPerS(),
                        result.safeClimbSpeedMPerS(),
                        "Let go at %.1f m/s, the aircraft sinks into the ground before it"
                                + " reaches the safe climb speed of %.1f m/s.");
            case TOO_SLOW ->
                add(
                        STOP,
                        "safe-speed-not-reached",
                        LaunchPart.LAUNCH,
                        launch.releaseAirspeedMPerS(),
                        result.safeClimbSpeedMPerS(),
                        "Let go at %.1f m/s, the aircraft has not reached the safe climb speed of %.1f m/s after 10 s.");
            case NEVER_RELEASED ->
                add(
                        STOP,
                        "launch-never-leaves",
                        LaunchPart.LAUNCH,
                        launch.releaseAirspeedMPerS(),
                        result.stallSpeedMPerS(),
                        "The aircraft never leaves the dolly or ramp: it gets no further than"
                                + " %.1f m/s of airspeed, with a stall speed of %.1f m/s.");
            case SAFE_SPEED -> {
                if (launch.heightLostM() > USUAL_SHARE_OF_HEIGHT * heightM) {
                    add(
                            ATTENTION,
                            "launch-height-thin",
                            LaunchPart.LAUNCH,
                            launch.heightLostM(),
                            heightM,
                            "The aircraft sinks %.1f m of the %.1f m it is let go at before it" + " flies safely.");
                }
            }
        }
    }

    private void release() {
        LaunchFlight launch = result.launch();
        if (launch.outcome() == LaunchOutcome.NEVER_RELEASED) {
            return;
        }
        double stall = result.stallSpeedMPerS();
        if (launch.marginFraction() < 0) {
            add(
                    ATTENTION,
                    "launch-below-stall",
                    LaunchPart.RELEASE_SPEED,
                    launch.releaseAirspeedMPerS(),
                    stall,
                    "The airspeed of %.1f m/s at release is below the stall speed of %.1f m/s: the"
                            + " aircraft sinks until the motor has made up for it.");
        } else if (launch.marginFraction() < USUAL_MARGIN_FRACTION) {
            add(
                    ATTENTION,
                    "launch-margin-thin",
                    LaunchPart.RELEASE_SPEED,
                    launch.releaseAirspeedMPerS(),
                    (1 + USUAL_MARGIN_FRACTION) * stall,
                    "The airspeed of %.1f m/s at release is less than the %.1f m/s that leave 10 %% over the stall.");
        }
    }

    private void hand() {
        if (!(task.launch() instanceof Launch.Hand hand)) {
            return;
        }
        double massKg = task.airframe().massKg();
        double slope = (HEAVY_THROW_M_PER_S - LIGHT_THROW_M_PER_S) / (HEAVY_KG - LIGHT_KG);
        double armMPerS = LIGHT_THROW_M_PER_S + slope * (Math.max(LIGHT_KG, Math.min(HEAVY_KG, massKg)) - LIGHT_KG);
        if (hand.releaseSpeedMPerS() > armMPerS) {
            add(
                    ATTENTION,
                    "throw-too-fast",
                    LaunchPart.RELEASE_SPEED,
                    hand.releaseSpeedMPerS(),
                    armMPerS,
                    "A throw of %.1f m/s is more than the %.1f m/s that an arm gives this mass.");
        }
        if (massKg > HEAVY_KG) {
            add(
                    ATTENTION,
                    "heavy-for-hand",
                    LaunchPart.TAKEOFF_MASS,
                    1000 * massKg,
                    1000 * HEAVY_KG,
                    "%.0f g is too heavy to throw safely: above %.0f g use a dolly or a bungee.");
        }
    }

    private void thrust() {
        double safe = result.safeClimbSpeedMPerS();
        double dragN = LaunchStall.dragN(task, safe);
        double thrustN = task.thrust().thrustN(safe);
        if (!thrustEverReachesDrag()) {
            add(
                    STOP,
                    "thrust-never-reaches-drag",
                    LaunchPart.THRUST,
                    thrustN,
                    dragN,
                    "The thrust stays below the drag at every airspeed from the stall to twice it:"
                            + " %.1f N against %.1f N at the safe climb speed.");
        } else if (thrustN <= dragN) {
            add(
                    STOP,
                    "no-climb",
                    LaunchPart.THRUST,
                    thrustN,
                    dragN,
                    "At the safe climb speed the thrust of %.1f N does not exceed the drag of"
                            + " %.1f N: there is no climb.");
        } else if (result.climb().angleRad() < USUAL_CLIMB_RAD) {
            add(
                    ATTENTION,
                    "climb-shallow",
                    LaunchPart.THRUST,
                    Math.toDegrees(result.climb().angleRad()),
                    Math.toDegrees(USUAL_CLIMB_RAD),
                    "The climb of %.1f° is flatter than the %.0f° that clear a field's edge.");
        }
        if (task.thrust() instanceof ThrustCurve curve && curve.lastAirspeedMPerS() < safe) {
            add(
                    NOTE,
                    "thrust-curve-extrapolated",
                    LaunchPart.THRUST,
                    curve.lastAirspeedMPerS(),
                    safe,
                    "The thrust curve ends at %.1f m/s, below the safe climb speed of %.1f m/s: its"
                            + " last line is carried on.");
        }
    }

    private boolean thrustEverReachesDrag() {
        double stall = result.stallSpeedMPerS();
        for (int i = 0; i < THRUST_CHECKS; i++) {
            double airspeed = stall * (1 + i / (THRUST_CHECKS - 1.0));
            if (task.thrust().thrustN(airspeed) > LaunchStall.dragN(task, airspeed)) {
                return true;
            }
        }
        return false;
    }

    private void turn() {
        if (result.turnAirspeedMPerS() < result.stallSpeedTurningMPerS()) {
            add(
                    STOP,
                    "stall-in-turn",
                    LaunchPart.TURN,
                    result.turnAirspeedMPerS(),
                    result.stallSpeedTurningMPerS(),
                    "The turn at %.1f m/s is below the stall speed of %.1f m/s in it.");
        }
    }

    private void wind() {
        double headwind = task.headwindMPerS();
        double safe = result.safeClimbSpeedMPerS();
        if (headwind < 0) {
            add(
                    ATTENTION,
                    "launch-downwind",
                    LaunchPart.HEADWIND,
                    -headwind,
                    0,
                    "A tailwind of %.1f m/s takes as much from the airspeed at release: launch" + " into the wind.");
        } else if (headwind >= safe) {
            add(
                    ATTENTION,
                    "wind-above-flying-speed",
                    LaunchPart.HEADWIND,
                    headwind,
                    safe,
                    "A wind of %.1f m/s is not below the safe climb speed of %.1f m/s: the aircraft"
                            + " drifts back over whoever launched it.");
        }
    }

    private void air() {
        if (result.densityAltitudeM() >= THIN_AIR_M) {
            add(
                    NOTE,
                    "thin-air",
                    LaunchPart.CONDITIONS,
                    result.densityAltitudeM(),
                    THIN_AIR_M,
                    "The air is as thin as at %.0f m (noted from %.0f m up): the launch must be"
                            + " faster, and the propeller pulls less.");
        }
    }

    /** The message has a place for the value and may have one for the limit. */
    private void add(Severity severity, String code, LaunchPart part, double value, double limit, String message) {
        findings.add(Finding.of(
                severity, code, Subject.of(part), value, limit, String.format(Locale.ROOT, message, value, limit)));
    }
}
