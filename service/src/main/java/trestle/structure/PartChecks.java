package trestle.structure;

import java.util.List;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** The checks of launch, landing, restraints and servos. */
final class PartChecks {
    private static final double NEAR_STALL = 0.6;

    private PartChecks() {}

    static void judge(LoadsTask task, LoadsResult result, Judge judge) {
        task.launch().ifPresent(launch -> {
            judge.essential(
                    "launch-acceleration",
                    "peak acceleration of the launch",
                    Subject.of(LoadsPart.LAUNCH),
                    trial -> acceleration(launch, trial));
            launch.hookForceN()
                    .ifPresent(force -> judge.essential(
                            "hook-force",
                            "force on the hook",
                            Subject.of(LoadsPart.HOOK),
                            trial -> hook(launch, force, trial)));
        });
        result.landing()
                .ifPresent(load -> judge.check(
                        "landing",
                        "the wing's own weight in a hard landing",
                        Subject.of(LoadsPart.LANDING),
                        trial -> landing(load, trial)));
        for (int i = 0; i < task.restraints().size(); i++) {
            restraint(task.restraints().get(i), result.restraints().get(i), Subject.of(LoadsPart.RESTRAINT, i), judge);
        }
        for (int i = 0; i < task.surfaces().size(); i++) {
            surface(task.surfaces().get(i), result.surfaces().get(i), i, judge);
        }
    }

    private static void acceleration(LaunchPull launch, Trial trial) {
        double most = launch.mostLoadFactor();
        String sentence = "The launch by %s peaks at %.1f g and %.1f g is %s: pull less, or over a longer way.";
        String from = launch.mostStated() ? "what the aircraft is stated to be good for" : "the usual limit";
        trial.of(launch.peakLoadFactor(), "")
                .atMost(most, launch.mostStated() ? Basis.REQUEST : Basis.COMMON_PRACTICE)
                .stopIf(
                        launch.mostStated() && launch.peakLoadFactor() > most,
                        "launch-acceleration-high",
                        sentence,
                        launch.kind(),
                        launch.peakLoadFactor(),
                        most,
                        from)
                .attention("launch-acceleration-high", sentence, launch.kind(), launch.peakLoadFactor(), most, from);
    }

    private static void hook(LaunchPull launch, double forceN, Trial trial) {
        if (launch.mostHookN().isEmpty()) {
            trial.notJudged(Subject.of(LoadsPart.HOOK));
            return;
        }
        double most = launch.mostHookN().getAsDouble();
        trial.of(forceN, "N")
                .atMost(most, Basis.REQUEST)
                .stop(
                        "hook-force-high",
                        "The launch pulls the hook with %.0f N, and it is good for %.0f N: pull less, or strengthen it.",
                        forceN,
                        most);
    }

    private static void landing(LandingLoad load, Trial trial) {
        if (load.rootReserve().isEmpty()) {
            return;
        }
        double reserve = load.rootReserve().getAsDouble();
        trial.of(reserve, "")
                .atLeast(1, Basis.source("beam theory with the strengths that the assumptions list"))
                .attention(
                        "hard-landing-bends-wing",
                        "Touching down at %.1f m/s of sink loads the wing's own mass with %.1f g and its spar with %.1f times"
                                + " what it may bear: sink slower, or soften the landing.",
                        load.sinkMPerS(),
                        load.loadFactor(),
                        1 / reserve);
    }

    private static void restraint(Restraint held, RestraintLoad load, Subject at, Judge judge) {
        String about = "what holds " + held.name();
        if (held.forwardN().isEmpty()
                && held.aftN().isEmpty()
                && held.upN().isEmpty()
                && held.sideN().isEmpty()) {
            judge.check(
                    "restraint",
                    about,
                    at,
                    trial -> trial.notJudged(
                            List.of(at),
                            Severity.NOTE,
                            "strap-strength-unknown",
                            "%s of %.0f g pulls %.0f N forward and %.0f N up: what holds it, and what that is tied to, must"
                                    + " stand that.",
                            begins(held.name()),
                            1000 * held.massKg(),
                            load.forwardN(),
                            load.upN()));
            return;
        }
        direction("forward", held, held.forwardN(), load.forwardN(), at, judge);
        direction("up", held, held.upN(), load.upN(), at, judge);
        direction("sideways", held, held.sideN(), load.sideN(), at, judge);
        if (load.aftN() > 0) {
            direction("aft", held, held.aftN(), load.aftN(), at, judge);
        }
    }

    private static String begins(String name) {
        return name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
    }

    private static void direction(
            String way, Restraint held, OptionalDouble strengthN, double forceN, Subject at, Judge judge) {
        judge.essential("restraint-" + way, "what holds " + held.name() + ", " + way, at, trial -> {
            if (strengthN.isEmpty()) {
                trial.notJudged(at);
                return;
            }
            trial.of(forceN, "N")
                    .atMost(strengthN.getAsDouble(), Basis.REQUEST)
                    .stop(
                            "strap-too-weak",
                            "%s of %.0f g pulls %.0f N %s and is held by %.0f N: strengthen the strap and what it is tied"
                                    + " to.",
                            begins(held.name()),
                            1000 * held.massKg(),
                            forceN,
                            way,
                            strengthN.getAsDouble());
        });
    }

    private static void surface(ControlSurface surface, SurfaceLoad load, int i, Judge judge) {
        judge.check("servo-torque", "servo of " + surface.name(), Subject.of(LoadsPart.SERVO, i), trial -> {
            if (load.loadFraction().isEmpty()) {
                trial.notJudged(Subject.of(LoadsPart.SERVO, i));
                return;
            }
            String sentence =
                    "The servo of %s needs %.2f N m at %.1f m/s and %.0f° and has %.2f when it stalls: deflect less,"
                            + " fly slower, or use one of %.2f N m.";
            double torque = surface.servoTorqueNm().orElseThrow();
            Object[] values = {
                surface.name(),
                load.servoTorqueNm(),
                surface.airspeedMPerS(),
                Math.toDegrees(surface.deflectionRad()),
                torque,
                load.servoTorqueNm() / NEAR_STALL
            };
            trial.of(100 * load.loadFraction().getAsDouble(), "%")
                    .atMost(100, Basis.REQUEST)
                    .stop("servo-stalls", sentence, values)
                    .atMost(100 * NEAR_STALL, Basis.COMMON_PRACTICE)
                    .attention("servo-near-stall", sentence, values);
        });
    }
}
