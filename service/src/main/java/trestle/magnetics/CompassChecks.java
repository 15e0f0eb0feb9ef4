package trestle.magnetics;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Angle;
import trestle.units.FluxDensity;
import trestle.units.Length;
import trestle.units.Share;

/** The checks of the compass: in cruise, which lasts for hours, and at full throttle, which lasts for seconds. */
final class CompassChecks {
    /** More than an aircraft of this size takes, A. Common practice, no source. */
    static final double MUCH_CURRENT_A = 200;

    private final CompassTask task;
    private final double allowedDeg;

    private CompassChecks(CompassTask task) {
        this.task = task;
        this.allowedDeg = Angle.degFromRad(task.allowedHeadingErrorRad());
    }

    static Judgement of(CompassTask task, LeadFields cruise, Optional<LeadFields> fullThrottle) {
        CompassChecks checks = new CompassChecks(task);
        Judge judge = new Judge();
        Subject runs = Subject.of(CompassPart.RUNS);
        judge.essential(
                "compass-cruise", "heading error by all leads in cruise", runs, trial -> checks.cruise(cruise, trial));
        judge.essential("compass-full-throttle", "heading error by all leads at full throttle", runs, trial -> {
            if (fullThrottle.isPresent()) {
                checks.fullThrottle(fullThrottle.get(), trial);
            } else {
                trial.notJudged(Subject.of(CompassPart.PEAK_CURRENT, checks.strongest(cruise)));
            }
        });
        judge.check("compass-current", "currents as typed", runs, checks::current);
        checks.assume(judge);
        return judge.judgement();
    }

    private void cruise(LeadFields fields, Trial trial) {
        boolean likely = fields.likely().exceeds(task.allowedHeadingErrorRad());
        String sentence = sentence("In cruise", fields, task.runs(), "");
        boolean beyond = state(fields, trial);
        trial.stopIf(fields.worst().headingErrorRad().isEmpty(), "no-heading", sentence)
                .stopIf(beyond && likely, "compass-too-near", sentence)
                .attentionIf(beyond, "compass-too-near", sentence);
    }

    private void fullThrottle(LeadFields fields, Trial trial) {
        List<LeadRun> runs = task.runs().stream().map(LeadRun::atFullThrottle).toList();
        String sentence = sentence("At full throttle", fields, runs, ", or trust no heading in a climb");
        boolean beyond = state(fields, trial);
        trial.stopIf(fields.likely().headingErrorRad().isEmpty(), "no-heading", sentence)
                .attentionIf(beyond, "heading-off-at-full-throttle", sentence);
    }

    /** States value and limit; where there is no heading, the field against the earth's. */
    private boolean state(LeadFields fields, Trial trial) {
        OptionalDouble errorRad = fields.worst().headingErrorRad();
        if (errorRad.isEmpty()) {
            trial.of(Share.percentFromFraction(fields.worst().fieldFractionOfEarth()), "%")
                    .atMost(100, Basis.COMPUTED);
        } else {
            trial.of(Angle.degFromRad(errorRad.getAsDouble()), "°").atMost(allowedDeg, task.allowedBasis());
        }
        return fields.worst().exceeds(task.allowedHeadingErrorRad());
    }

    private String sentence(String when, LeadFields fields, List<LeadRun> runs, String otherwise) {
        String from = task.allowedBasis().equals(Basis.REQUEST) ? "" : " (common practice)";
        String allowed = Digits.beside(
                allowedDeg, Angle.degFromRad(fields.worst().headingErrorRad().orElse(Math.PI)), 1);
        String does = fields.worst().headingErrorRad().isEmpty()
                ? Judge.text(
                        "the leads' field of up to %.1f µT is stronger than the earth's %.1f µT, so that there is no"
                                + " heading",
                        FluxDensity.utFromT(fields.worst().fieldT()), FluxDensity.utFromT(task.earthHorizontalT()))
                : "the leads turn the compass by up to " + degrees(fields.worst())
                        + (fields.likely().headingErrorRad().isEmpty() ? "" : "°, likely " + degrees(fields.likely()))
                        + "°";
        return Judge.text(
                "%s %s; %s°%s is allowed: mount it %.0f mm or more from every run%s%s.",
                when,
                does,
                allowed,
                from,
                Math.ceil(Length.mmFromM(fields.worst().leastDistanceM())),
                twist(fields, runs),
                otherwise);
    }

    private String degrees(Disturbance disturbance) {
        return Digits.beside(Angle.degFromRad(disturbance.headingErrorRad().orElseThrow()), allowedDeg, 1);
    }

    /** Twisting the leads of the strongest run, where that is enough. */
    private String twist(LeadFields fields, List<LeadRun> runs) {
        if (runs.isEmpty()) {
            return "";
        }
        LeadRun strongest = runs.get(strongest(fields));
        double leftT = fields.worst().fieldT()
                - strongest.fieldT()
                + strongest.asTwisted().fieldT();
        OptionalDouble leftRad = CompassClearance.headingErrorRad(Math.max(0, leftT), task.earthHorizontalT());
        return strongest.twisted() || leftRad.orElse(Math.PI) > task.allowedHeadingErrorRad()
                ? ""
                : Judge.text(
                        ", or twist the leads of %s (then up to %.1f°)",
                        strongest.name(), Angle.degFromRad(leftRad.getAsDouble()));
    }

    /** Which run does most. */
    private int strongest(LeadFields fields) {
        return IntStream.range(0, fields.runs().size())
                .reduce((a, b) ->
                        fields.runs().get(b).fieldT() > fields.runs().get(a).fieldT() ? b : a)
                .orElse(0);
    }

    private void current(Trial trial) {
        double greatestA = task.runs().stream()
                .mapToDouble(run -> run.atFullThrottle().currentA())
                .max()
                .orElse(0);
        trial.of(greatestA, "A")
                .atMost(MUCH_CURRENT_A, Basis.COMMON_PRACTICE)
                .attention(
                        "current-implausible",
                        "%s A is more than the %.0f A of any aircraft of this size (common practice): it looks like mA; give A.",
                        Digits.significant(greatestA, 4),
                        MUCH_CURRENT_A);
    }

    private void assume(Judge judge) {
        Subject runs = Subject.of(CompassPart.RUNS);
        judge.assume(
                runs,
                "the compass lies in the plane of each pair of leads, and their fields are horizontal and from the side"
                        + " that turns it most",
                "directions are not given, and this is the worst of them");
        judge.assume(
                runs,
                "currents are steady and nothing magnetic is near",
                "motor phase currents alternate too fast for a compass; iron is not computed");
        for (int i = 0; i < task.runs().size(); i++) {
            LeadRun run = task.runs().get(i);
            if (run.twisted()) {
                judge.assume(
                        Subject.of(CompassPart.TWISTED, i),
                        "twisted leads count as 1/20 of their separation",
                        "common practice, no source");
            }
            if (task.knowsFullThrottle() && run.peakCurrentA().isEmpty()) {
                judge.assume(
                        Subject.of(CompassPart.PEAK_CURRENT, i),
                        Digits.significant(run.currentA(), 4) + " A",
                        "at full throttle as in cruise: the request gives no other");
            }
        }
    }
}
