package trestle.magnetics;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Angle;
import trestle.units.Length;

/** The checks of the compass: each run alone, and all of them together. */
final class CompassChecks {
    private final CompassTask task;
    private final double allowedDeg;

    private CompassChecks(CompassTask task) {
        this.task = task;
        this.allowedDeg = Angle.degFromRad(task.allowedHeadingErrorRad());
    }

    static Judgement of(CompassTask task, Iterable<Disturbance> alone, Disturbance worst, Disturbance likely) {
        CompassChecks checks = new CompassChecks(task);
        Judge judge = new Judge();
        int index = 0;
        for (Disturbance disturbance : alone) {
            int run = index++;
            judge.check(
                    "run-distance",
                    "distance of run " + task.runs().get(run).name() + " from the compass",
                    Subject.of(CompassPart.DISTANCE, run),
                    trial -> checks.run(task.runs().get(run), disturbance, trial));
        }
        judge.essential(
                "compass-heading",
                "heading error by all leads together",
                Subject.of(CompassPart.RUNS),
                trial -> checks.together(worst, likely, trial));
        checks.assume(judge);
        return judge.judgement();
    }

    private void run(LeadRun run, Disturbance alone, Trial trial) {
        double errorDeg = Angle.degFromRad(alone.headingErrorRad());
        double twistedDeg = Angle.degFromRad(
                CompassClearance.headingErrorRad(run.asTwisted().fieldT(), task.earthHorizontalT()));
        boolean twistingHelps = !run.twisted() && twistedDeg <= allowedDeg;
        String twist = twistingHelps ? Judge.text(", or twist its leads for %.1f°", twistedDeg) : "";
        trial.of(Length.mmFromM(run.distanceM()), "mm")
                .atLeast(Length.mmFromM(alone.leastDistanceM()), Basis.COMPUTED)
                .attentionIf(
                        alone.headingErrorRad() > task.allowedHeadingErrorRad(),
                        "run-too-near",
                        "Run %s at %.0f mm turns the compass by %.1f° on its own: keep it %.0f mm off%s.",
                        run.name(),
                        Length.mmFromM(run.distanceM()),
                        errorDeg,
                        Math.ceil(Length.mmFromM(alone.leastDistanceM())),
                        twist);
    }

    private void together(Disturbance worst, Disturbance likely, Trial trial) {
        double allowedRad = task.allowedHeadingErrorRad();
        double worstDeg = Angle.degFromRad(worst.headingErrorRad());
        boolean beyond = worst.headingErrorRad() > allowedRad;
        boolean probably = likely.headingErrorRad() > allowedRad;
        String sentence = "All leads together can turn the compass by %.1f°, likely by %.1f°, with %.1f° allowed: keep"
                + " it %.0f mm from every run.";
        Object[] values = {
            worstDeg,
            Angle.degFromRad(likely.headingErrorRad()),
            allowedDeg,
            Math.ceil(Length.mmFromM(worst.leastDistanceM()))
        };
        trial.of(worstDeg, "°")
                .atMost(allowedDeg, Basis.REQUEST)
                .stopIf(beyond && probably, "compass-too-near", sentence, values)
                .attentionIf(beyond, "compass-too-near", sentence, values);
    }

    private void assume(Judge judge) {
        judge.assume(
                Subject.of(CompassPart.RUNS),
                "the compass lies in the plane of each pair of leads, and their fields are horizontal and across the"
                        + " earth's",
                "directions are not given, and this is the worst of them");
        judge.assume(
                Subject.of(CompassPart.RUNS),
                "currents are steady and nothing magnetic is near",
                "motor phase currents alternate too fast for a compass; iron is not computed");
        for (int i = 0; i < task.runs().size(); i++) {
            if (task.runs().get(i).twisted()) {
                judge.assume(
                        Subject.of(CompassPart.TWISTED, i),
                        "twisted leads count as 1/20 of their separation",
                        "common practice, no source");
            }
        }
    }
}
