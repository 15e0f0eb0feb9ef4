package trestle.launch;

import static trestle.finding.Severity.ATTENTION;
import static trestle.finding.Severity.STOP;

import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** The checks of the way from standstill to the climb. */
final class LaunchChecks {
    /** A launch that uses more than this share of its height is a near miss: common practice, no source. */
    private static final double USUAL_SHARE_OF_HEIGHT = 0.5;

    private final LaunchAndClimbTask task;
    private final LaunchAndClimbResult result;
    private final LaunchFlight launch;

    private LaunchChecks(LaunchAndClimbTask task, LaunchAndClimbResult result) {
        this.task = task;
        this.result = result;
        this.launch = result.launch();
    }

    static void judge(LaunchAndClimbTask task, LaunchAndClimbResult result, Judge judge) {
        LaunchChecks checks = new LaunchChecks(task, result);
        judge.essential(
                "release-airspeed",
                "airspeed at release over the stall speed",
                Subject.of(LaunchPart.RELEASE_SPEED),
                checks::release);
        judge.essential(
                "height-lost",
                "height lost before the climb speed is reached",
                Subject.of(LaunchPart.LAUNCH),
                checks::height);
        judge.check("launch-wind", "wind at the launch", Subject.of(LaunchPart.WIND), checks::wind);
    }

    /** Too little speed at release is one cause, however the launch then ends. */
    private void release(Trial trial) {
        double released = launch.releaseAirspeedInLullMPerS();
        double stall = result.stallSpeedMPerS();
        double usual = (1 + Needed.USUAL_MARGIN_FRACTION) * stall;
        double climb = result.climbSpeedMPerS();
        Digits said = Digits.apart(released, stall, 1);
        Digits thin = Digits.apart(released, usual, 1);
        String remedy = Remedy.forSpeed(task, launch.needed());
        trial.of(released, "m/s")
                .atLeast(stall, Basis.COMPUTED)
                .stopIf(
                        launch.outcome() == LaunchOutcome.NEVER_RELEASED,
                        "launch-never-leaves",
                        "The aircraft never leaves the dolly or ramp: it gets no further than %s m/s of airspeed, with a"
                                + " stall speed of %s m/s: %s, or give it more pull.",
                        said.first(),
                        said.second(),
                        remedy)
                .stopIf(
                        launch.isShort() && launch.outcome() == LaunchOutcome.GROUND,
                        "launch-into-ground",
                        "Released at an airspeed of %s m/s, with a stall speed of %s m/s, the aircraft sinks into the"
                                + " ground before it reaches its climb speed of %.1f m/s: %s.",
                        said.first(),
                        said.second(),
                        climb,
                        remedy)
                .stopIf(
                        launch.isShort() && launch.outcome() == LaunchOutcome.TOO_SLOW,
                        "climb-speed-not-reached",
                        "Released at an airspeed of %s m/s, with a stall speed of %s m/s, the aircraft has not reached"
                                + " its climb speed of %.1f m/s after 10 s: %s.",
                        said.first(),
                        said.second(),
                        climb,
                        remedy)
                .attention(
                        "launch-below-stall",
                        "Released at an airspeed of %s m/s, below the stall speed of %s m/s, the aircraft sinks %.1f m"
                                + " until the motor has accelerated it: %s.",
                        said.first(),
                        said.second(),
                        launch.heightLostM(),
                        remedy)
                .atLeast(usual, Basis.COMMON_PRACTICE)
                .attention(
                        "launch-margin-thin",
                        "Released at an airspeed of %s m/s, the aircraft is below the %s m/s that leave 10 %% over the"
                                + " stall (common practice): %s.",
                        thin.first(),
                        thin.second(),
                        remedy);
    }

    private void height(Trial trial) {
        double heightM = task.launch().releaseHeightM();
        double lostM = launch.heightLostM();
        boolean deep = lostM > USUAL_SHARE_OF_HEIGHT * heightM;
        boolean left = launch.outcome() != LaunchOutcome.NEVER_RELEASED;
        double released = launch.releaseAirspeedInLullMPerS();
        double climb = result.climbSpeedMPerS();
        trial.of(lostM, "m")
                .atMost(heightM, Basis.REQUEST)
                .asSaid(!left || launch.isShort() && !launch.succeeds(), STOP)
                .stopIf(
                        launch.outcome() == LaunchOutcome.GROUND,
                        "launch-into-ground",
                        "Released at an airspeed of %.1f m/s, above the stall speed of %.1f m/s, the aircraft sinks into"
                                + " the ground before it reaches its climb speed of %.1f m/s: start the motor earlier,"
                                + " give more thrust, or throw upwards.",
                        released,
                        result.stallSpeedMPerS(),
                        climb)
                .stopIf(
                        launch.outcome() == LaunchOutcome.TOO_SLOW,
                        "climb-speed-not-reached",
                        "Released at an airspeed of %.1f m/s, the aircraft has not reached its climb speed of %.1f m/s"
                                + " after 10 s: give it more thrust.",
                        released,
                        climb)
                .atMost(USUAL_SHARE_OF_HEIGHT * heightM, Basis.COMMON_PRACTICE)
                .asSaid(deep && launch.isShort(), ATTENTION)
                .attentionIf(
                        deep,
                        "launch-height-thin",
                        "The aircraft sinks %.1f m of the %.1f m that it is released at before it climbs, more than half"
                                + " (common practice): start the motor earlier, or release it faster.",
                        lostM,
                        heightM);
    }

    private void wind(Trial trial) {
        double mean = launch.meanWindMPerS();
        double climb = result.climbSpeedMPerS();
        if (mean < 0) {
            trial.of(-mean, "m/s")
                    .atMost(0, Basis.COMMON_PRACTICE)
                    .attention(
                            "launch-downwind",
                            "A tailwind of %.1f m/s lowers the airspeed at release by the same amount: launch into the"
                                    + " wind.",
                            -mean);
            return;
        }
        trial.of(mean, "m/s")
                .atMost(climb, Basis.COMPUTED)
                .attentionIf(
                        mean >= climb,
                        "wind-above-flying-speed",
                        "A wind of %.1f m/s is not below the climb speed of %.1f m/s: the aircraft drifts back over"
                                + " whoever launched it; wait for less.",
                        mean,
                        climb);
        needed(trial);
    }

    /** A launch that works in its wind alone. */
    private void needed(Trial trial) {
        double still = launch.stillAirspeedMPerS();
        double stall = result.stallSpeedMPerS();
        boolean leans = launch.marginFraction() >= 0 && still < stall;
        LaunchWind wind = task.wind();
        Digits said = Digits.apart(still, stall, 1);
        trial.attentionIf(
                        leans && wind.fromFlight(),
                        "launch-wind-assumed",
                        "The flight's %.1f m/s at %.0f m is taken as %.1f m/s at the release height of %.1f m, %.1f in a"
                                + " lull, and the launch needs it: measure the wind at that height, or %s.",
                        wind.speedMPerS(),
                        wind.heightM(),
                        launch.meanWindMPerS(),
                        task.launch().releaseHeightM(),
                        launch.lullMPerS(),
                        Judge.later(() -> Remedy.inStillAir(task, stall)))
                .attentionIf(
                        leans,
                        "launch-needs-wind",
                        "In still air it is released at %s m/s, below the stall speed of %s m/s: %s, or keep to wind of"
                                + " %.1f m/s or more.",
                        said.first(),
                        said.second(),
                        Judge.later(() -> Remedy.inStillAir(task, stall)),
                        launch.needed().windMPerS().orElse(launch.meanWindMPerS()))
                .noteIf(
                        wind.fromFlight() && launch.meanWindMPerS() > 0,
                        "launch-wind-assumed",
                        "The flight's %.1f m/s at %.0f m is taken as %.1f m/s at the release height of %.1f m, %.1f in a"
                                + " lull: measure it there.",
                        wind.speedMPerS(),
                        wind.heightM(),
                        launch.meanWindMPerS(),
                        task.launch().releaseHeightM(),
                        launch.lullMPerS());
    }
}
