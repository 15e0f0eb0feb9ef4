package trestle.magnetics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Assumption;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Angle;
import trestle.units.Length;

/** Judgements on the compass. */
final class CompassFindings {
    private CompassFindings() {}

    static List<Finding> of(CompassTask task, List<Disturbance> alone, Disturbance worst, Disturbance likely) {
        List<Finding> findings = new ArrayList<>();
        double allowedRad = task.allowedHeadingErrorRad();
        double allowedDeg = Angle.degFromRad(allowedRad);
        for (int i = 0; i < alone.size(); i++) {
            if (alone.get(i).headingErrorRad() > allowedRad) {
                findings.add(run(task, alone.get(i), i));
            }
        }
        if (worst.headingErrorRad() > allowedRad) {
            double worstDeg = Angle.degFromRad(worst.headingErrorRad());
            findings.add(Finding.of(
                    likely.headingErrorRad() > allowedRad ? Severity.STOP : Severity.ATTENTION,
                    "compass-too-near",
                    Subject.of(CompassPart.RUNS),
                    worstDeg,
                    allowedDeg,
                    text(
                            "All leads together can turn the compass by %.1f°, likely by %.1f°, with %.1f° allowed:"
                                    + " keep it %.0f mm from every run.",
                            worstDeg,
                            Angle.degFromRad(likely.headingErrorRad()),
                            allowedDeg,
                            Math.ceil(Length.mmFromM(worst.leastDistanceM())))));
        }
        return findings;
    }

    private static Finding run(CompassTask task, Disturbance alone, int index) {
        LeadRun run = task.runs().get(index);
        double errorDeg = Angle.degFromRad(alone.headingErrorRad());
        double twistedDeg = Angle.degFromRad(
                CompassClearance.headingErrorRad(run.asTwisted().fieldT(), task.earthHorizontalT()));
        boolean twistingHelps = !run.twisted() && twistedDeg <= Angle.degFromRad(task.allowedHeadingErrorRad());
        String twist = twistingHelps ? text(", or twist its leads for %.1f°", twistedDeg) : "";
        return Finding.of(
                Severity.ATTENTION,
                "run-too-near",
                Subject.of(CompassPart.DISTANCE, index),
                Length.mmFromM(run.distanceM()),
                Length.mmFromM(alone.leastDistanceM()),
                text(
                        "Run %s at %.0f mm turns the compass by %.1f° on its own: keep it %.0f mm" + " off%s.",
                        run.name(),
                        Length.mmFromM(run.distanceM()),
                        errorDeg,
                        Math.ceil(Length.mmFromM(alone.leastDistanceM())),
                        twist));
    }

    static List<Assumption> assumptions(CompassTask task) {
        List<Assumption> assumptions = new ArrayList<>();
        assumptions.add(new Assumption(
                Subject.of(CompassPart.RUNS),
                "the compass lies in the plane of each pair of leads, and their fields are"
                        + " horizontal and across the earth's",
                "directions are not given, and this is the worst of them"));
        assumptions.add(new Assumption(
                Subject.of(CompassPart.RUNS),
                "currents are steady and nothing magnetic is near",
                "motor phase currents alternate too fast for a compass; iron is not" + " computed"));
        for (int i = 0; i < task.runs().size(); i++) {
            if (task.runs().get(i).twisted()) {
                assumptions.add(new Assumption(
                        Subject.of(CompassPart.TWISTED, i),
                        "twisted leads count as 1/20 of their separation",
                        "common practice, no source"));
            }
        }
        return assumptions;
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
