package trestle.launch;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Angle;
import trestle.units.Mass;

/** The checks of a launch and of what follows. */
final class LaunchChecks {
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

    private LaunchChecks(LaunchStallTask task, LaunchStallResult result) {
        this.task = task;
        this.result = result;
    }

    static void judge(LaunchStallTask task, LaunchStallResult result, Judge judge) {
        LaunchChecks checks = new LaunchChecks(task, result);
        judge.essential("launch-outcome", "the launch to its climb speed", at(LaunchPart.LAUNCH), checks::outcome);
        judge.essential("height-lost", "height lost in the launch", at(LaunchPart.LAUNCH), checks::height);
        judge.essential(
                "release-airspeed",
                "airspeed at release over the stall",
                at(LaunchPart.RELEASE_SPEED),
                checks::release);
        if (task.launch() instanceof Launch.Hand hand) {
            judge.check(
                    "throwing-speed",
                    "speed of the throw",
                    at(LaunchPart.RELEASE_SPEED),
                    trial -> checks.throwing(trial, hand));
            judge.check("throwing-mass", "mass to throw", at(LaunchPart.TAKEOFF_MASS), checks::throwing);
        }
        judge.essential("climb", "thrust and climb at full power", at(LaunchPart.THRUST), checks::climb);
        judge.check("thrust-data", "the thrust curve up to the climb speed", at(LaunchPart.THRUST), checks::data);
        judge.check("turn", "airspeed of the turn over the stall in it", at(LaunchPart.TURN), checks::turn);
        judge.check("launch-wind", "wind at the launch", at(LaunchPart.HEADWIND), checks::wind);
        judge.check("air-density", "density altitude", at(LaunchPart.CONDITIONS), checks::air);
    }

    private static Subject at(LaunchPart part) {
        return Subject.of(part);
    }

    private void outcome(Trial trial) {
        LaunchFlight launch = result.launch();
        double released = launch.releaseAirspeedMPerS();
        double safe = result.safeClimbSpeedMPerS();
        boolean left = launch.outcome() != LaunchOutcome.NEVER_RELEASED;
        trial.of(released, "m/s")
                .atLeast(left ? safe : result.stallSpeedMPerS(), Basis.COMPUTED)
                .stopIf(
                        launch.outcome() == LaunchOutcome.GROUND,
                        "launch-into-ground",
                        "Let go at %.1f m/s, the aircraft sinks into the ground before it"
                                + " reaches the safe climb speed of %.1f m/s.",
                        released,
                        safe)
                .stopIf(
                        launch.outcome() == LaunchOutcome.TOO_SLOW,
                        "safe-speed-not-reached",
                        "Let go at %.1f m/s, the aircraft has not reached the safe climb speed of %.1f m/s after 10 s.",
                        released,
                        safe)
                .stopIf(
                        !left,
                        "launch-never-leaves",
                        "The aircraft never leaves the dolly or ramp: it gets no further than"
                                + " %.1f m/s of airspeed, with a stall speed of %.1f m/s.",
                        released,
                        result.stallSpeedMPerS());
    }

    private void height(Trial trial) {
        double heightM = task.launch().releaseHeightM();
        double lostM = result.launch().heightLostM();
        trial.of(lostM, "m")
                .atMost(heightM, Basis.REQUEST)
                .attentionIf(
                        result.launch().outcome() == LaunchOutcome.SAFE_SPEED
                                && lostM > USUAL_SHARE_OF_HEIGHT * heightM,
                        "launch-height-thin",
                        "The aircraft sinks %.1f m of the %.1f m it is let go at before it flies safely.",
                        lostM,
                        heightM);
    }

    private void release(Trial trial) {
        LaunchFlight launch = result.launch();
        if (launch.outcome() == LaunchOutcome.NEVER_RELEASED) {
            trial.notJudged();
            return;
        }
        double released = launch.releaseAirspeedMPerS();
        double stall = result.stallSpeedMPerS();
        double usual = (1 + USUAL_MARGIN_FRACTION) * stall;
        trial.of(released, "m/s")
                .atLeast(stall, Basis.COMPUTED)
                .attentionIf(
                        launch.marginFraction() < 0,
                        "launch-below-stall",
                        "The airspeed of %.1f m/s at release is below the stall speed of %.1f m/s: the"
                                + " aircraft sinks until the motor has made up for it.",
                        released,
                        stall)
                .atLeast(usual, Basis.COMMON_PRACTICE)
                .attentionIf(
                        launch.marginFraction() < USUAL_MARGIN_FRACTION,
                        "launch-margin-thin",
                        "The airspeed of %.1f m/s at release is less than the %.1f m/s that leave 10 %% over the stall.",
                        released,
                        usual);
    }

    private void throwing(Trial trial, Launch.Hand hand) {
        double massKg = task.airframe().massKg();
        double slope = (HEAVY_THROW_M_PER_S - LIGHT_THROW_M_PER_S) / (HEAVY_KG - LIGHT_KG);
        double armMPerS = LIGHT_THROW_M_PER_S + slope * (Math.max(LIGHT_KG, Math.min(HEAVY_KG, massKg)) - LIGHT_KG);
        trial.of(hand.releaseSpeedMPerS(), "m/s")
                .atMost(armMPerS, Basis.COMMON_PRACTICE)
                .attention(
                        "throw-too-fast",
                        "A throw of %.1f m/s is more than the %.1f m/s that an arm gives this mass.",
                        hand.releaseSpeedMPerS(),
                        armMPerS);
    }

    private void throwing(Trial trial) {
        double massG = Mass.gFromKg(task.airframe().massKg());
        double heavyG = Mass.gFromKg(HEAVY_KG);
        trial.of(massG, "g")
                .atMost(heavyG, Basis.COMMON_PRACTICE)
                .attention(
                        "heavy-for-hand",
                        "%.0f g is too heavy to throw safely: above %.0f g use a dolly or a bungee.",
                        massG,
                        heavyG);
    }

    private void climb(Trial trial) {
        double safe = result.safeClimbSpeedMPerS();
        double dragN = LaunchStall.dragN(task, safe);
        double thrustN = task.thrust().thrustN(safe);
        boolean pulls = thrustEverReachesDrag();
        if (!pulls || thrustN <= dragN) {
            trial.of(thrustN, "N")
                    .atLeast(dragN, Basis.COMPUTED)
                    .stopIf(
                            !pulls,
                            "thrust-never-reaches-drag",
                            "The thrust stays below the drag at every airspeed from the stall to twice it:"
                                    + " %.1f N against %.1f N at the safe climb speed.",
                            thrustN,
                            dragN)
                    .stopIf(
                            true,
                            "no-climb",
                            "At the safe climb speed the thrust of %.1f N does not exceed the drag of"
                                    + " %.1f N: there is no climb.",
                            thrustN,
                            dragN);
            return;
        }
        double climbDeg = Angle.degFromRad(result.climb().angleRad());
        double usualDeg = Angle.degFromRad(USUAL_CLIMB_RAD);
        trial.of(climbDeg, "°")
                .atLeast(usualDeg, Basis.COMMON_PRACTICE)
                .attention(
                        "climb-shallow",
                        "The climb of %.1f° is flatter than the %.0f° that clear a field's edge.",
                        climbDeg,
                        usualDeg);
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

    private void data(Trial trial) {
        if (task.thrust() instanceof ThrustCurve curve) {
            double safe = result.safeClimbSpeedMPerS();
            trial.of(curve.lastAirspeedMPerS(), "m/s")
                    .atLeast(safe, Basis.COMPUTED)
                    .note(
                            "thrust-curve-extrapolated",
                            "The thrust curve ends at %.1f m/s, below the safe climb speed of %.1f m/s: its"
                                    + " last line is carried on.",
                            curve.lastAirspeedMPerS(),
                            safe);
        }
    }

    private void turn(Trial trial) {
        trial.of(result.turnAirspeedMPerS(), "m/s")
                .atLeast(result.stallSpeedTurningMPerS(), Basis.COMPUTED)
                .stop(
                        "stall-in-turn",
                        "The turn at %.1f m/s is below the stall speed of %.1f m/s in it.",
                        result.turnAirspeedMPerS(),
                        result.stallSpeedTurningMPerS());
    }

    private void wind(Trial trial) {
        double headwind = task.headwindMPerS();
        double safe = result.safeClimbSpeedMPerS();
        if (headwind < 0) {
            trial.of(-headwind, "m/s")
                    .atMost(0, Basis.COMMON_PRACTICE)
                    .attention(
                            "launch-downwind",
                            "A tailwind of %.1f m/s takes as much from the airspeed at release: launch into the wind.",
                            -headwind);
            return;
        }
        trial.of(headwind, "m/s")
                .atMost(safe, Basis.COMPUTED)
                .attentionIf(
                        headwind >= safe,
                        "wind-above-flying-speed",
                        "A wind of %.1f m/s is not below the safe climb speed of %.1f m/s: the aircraft"
                                + " drifts back over whoever launched it.",
                        headwind,
                        safe);
    }

    private void air(Trial trial) {
        trial.of(result.densityAltitudeM(), "m")
                .atMost(THIN_AIR_M, Basis.COMMON_PRACTICE)
                .noteIf(
                        result.densityAltitudeM() >= THIN_AIR_M,
                        "thin-air",
                        "The air is as thin as at %.0f m (noted from %.0f m up): the launch must be"
                                + " faster, and the propeller pulls less.",
                        result.densityAltitudeM(),
                        THIN_AIR_M);
    }
}
