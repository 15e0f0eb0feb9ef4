package trestle.survey;

import java.util.List;
import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Energy;
import trestle.units.Time;

/** What is to be said of a survey. */
final class SurveyChecks {
    /** Way during an exposure; common practice, no source. */
    private static final double USUAL_BLUR_PX = 1;

    /** Share of the airspeed that is left over the ground; common practice, no source. */
    private static final double LEAST_GROUND_FRACTION = 0.3;

    private static final Basis PLAN = Basis.source("usual overlap of mapping flights: NPTEL 105104100, module 3");
    private static final double USUAL_FORWARD = 0.6;
    private static final double USUAL_SIDE = 0.3;

    /** Many countries' limit for unmanned aircraft, m; local rules decide. */
    private static final double USUAL_CEILING_M = 120;

    private static final double WORTH_TURNING = 0.05;

    private final SurveyTask task;
    private final SurveyCoverage found;

    private SurveyChecks(SurveyTask task, SurveyCoverage found) {
        this.task = task;
        this.found = found;
    }

    static void judge(SurveyTask task, SurveyCoverage found, Judge judge) {
        SurveyChecks checks = new SurveyChecks(task, found);
        judge.essential("survey-wind", "ground speed in the wind", Subject.of(SurveyPart.WIND), checks::wind);
        judge.essential(
                "survey-cadence",
                "time between photos at the fastest ground speed",
                Subject.of(SurveyPart.LEAST_INTERVAL),
                checks::cadence);
        judge.essential(
                "survey-blur",
                "way during an exposure at the fastest ground speed",
                Subject.of(SurveyPart.EXPOSURE),
                checks::blur);
        judge.essential(
                "survey-energy",
                "energy of each flight with its reserve",
                Subject.of(SurveyPart.ENERGY),
                checks::energy);
        judge.check(
                "survey-forward-overlap",
                "overlap along the track",
                Subject.of(SurveyPart.FORWARD_OVERLAP),
                checks::forward);
        judge.check("survey-side-overlap", "overlap across it", Subject.of(SurveyPart.SIDE_OVERLAP), checks::side);
        judge.check("survey-height", "height above the ground", Subject.of(SurveyPart.HEIGHT), checks::height);
        judge.check("survey-direction", "direction of the lines", Subject.of(SurveyPart.DIRECTION), checks::direction);
        checks.assume(judge);
    }

    private void wind(Trial trial) {
        double least = LEAST_GROUND_FRACTION * task.airspeedMPerS();
        trial.of(Math.max(0, found.slowestMPerS()), "m/s")
                .atLeast(least, Basis.COMMON_PRACTICE)
                .stopIf(
                        !found.flyable(),
                        "survey-wind-too-strong",
                        "At %.1f m/s the aircraft cannot hold these lines in %.1f m/s of wind: wait, or fly faster.",
                        task.airspeedMPerS(),
                        task.wind().speedMPerS())
                .attention(
                        "survey-wind-strong",
                        "Against the wind only %.1f m/s over the ground are left of %.1f m/s: a little more wind and the"
                                + " aircraft does not come home; wait, or fly faster.",
                        found.slowestMPerS(),
                        task.airspeedMPerS());
    }

    private void cadence(Trial trial) {
        if (task.camera().leastIntervalS().isEmpty()) {
            trial.notJudged(Subject.of(SurveyPart.LEAST_INTERVAL));
            return;
        }
        double least = task.camera().leastIntervalS().getAsDouble();
        Digits said = Digits.apart(found.intervalS(), least, 1);
        trial.of(found.intervalS(), "s")
                .atLeast(least, Basis.REQUEST)
                .stop(
                        "photos-too-fast",
                        "At the fastest, %.1f m/s over the ground, a photo is due every %s s and the camera takes one every"
                                + " %s s: fly higher or slower, or with less overlap along the track.",
                        found.fastestMPerS(),
                        said.first(),
                        said.second());
    }

    private void blur(Trial trial) {
        if (found.blurPixels().isEmpty()) {
            trial.notJudged(Subject.of(SurveyPart.EXPOSURE));
            return;
        }
        double blur = found.blurPixels().getAsDouble();
        trial.of(blur, "px")
                .atMost(USUAL_BLUR_PX, Basis.COMMON_PRACTICE)
                .attention(
                        "photos-blurred",
                        "During an exposure the ground moves by %s pixels at %.1f m/s: expose for %.2g s, or fly slower or"
                                + " higher.",
                        Digits.beside(blur, USUAL_BLUR_PX, 1),
                        found.fastestMPerS(),
                        task.camera().exposureS().getAsDouble() * USUAL_BLUR_PX / blur);
    }

    private void energy(Trial trial) {
        if (task.energy().isEmpty()) {
            trial.notJudged(Subject.of(SurveyPart.ENERGY));
            return;
        }
        if (found.flights().isEmpty()) {
            trial.asSaid(true, Severity.STOP);
            return;
        }
        SurveyEnergy energy = task.energy().get();
        double most = most(found.flights().get());
        Digits said = Digits.apart(Energy.whFromJ(most), Energy.whFromJ(energy.availableJ()), 0);
        trial.of(Energy.whFromJ(most), "Wh")
                .atMost(Energy.whFromJ(energy.availableJ()), Basis.REQUEST)
                .stop(
                        "survey-line-too-long",
                        "One line with the way out and home takes %s Wh and a flight has %s Wh above its reserve: turn the"
                                + " lines, begin nearer, or divide the block.",
                        said.first(),
                        said.second());
        found.flightsAtHighPower()
                .ifPresent(high -> trial.attentionIf(
                        most(high) > energy.availableJ()
                                || high.size() > found.flights().get().size(),
                        "survey-flights-uncertain",
                        "At the power that nine flights of ten stay below, %s: plan for that.",
                        most(high) > energy.availableJ()
                                ? "a line with its way takes more than a flight has"
                                : Judge.text(
                                        "it takes %d flights, not %d",
                                        high.size(), found.flights().get().size())));
    }

    private static double most(List<SurveyFlight> flights) {
        return flights.stream().mapToDouble(SurveyFlight::energyJ).max().orElse(0);
    }

    private void forward(Trial trial) {
        trial.of(100 * task.forwardOverlap(), "%")
                .atLeast(100 * USUAL_FORWARD, PLAN)
                .note(
                        "little-overlap",
                        "%.0f %% of overlap along the track is less than the usual %.0f %%: photos may not join.",
                        100 * task.forwardOverlap(),
                        100 * USUAL_FORWARD);
    }

    private void side(Trial trial) {
        trial.of(100 * task.sideOverlap(), "%")
                .atLeast(100 * USUAL_SIDE, PLAN)
                .note(
                        "little-overlap",
                        "%.0f %% of overlap across the track is less than the usual %.0f %%: lines may not join.",
                        100 * task.sideOverlap(),
                        100 * USUAL_SIDE);
    }

    private void height(Trial trial) {
        trial.of(task.heightM(), "m")
                .atMost(USUAL_CEILING_M, Basis.COMMON_PRACTICE)
                .attention(
                        "survey-height-limit",
                        "%s m above the ground is more than the %.0f m that many countries allow: see what local rules say.",
                        Digits.beside(task.heightM(), USUAL_CEILING_M, 0),
                        USUAL_CEILING_M);
    }

    private void direction(Trial trial) {
        if (task.directionRad().isEmpty() || !found.flyable()) {
            return;
        }
        double asked = found.passes().get(0).timeS();
        double best = found.best().timeS();
        trial.of(Time.minFromS(asked), "min")
                .noteIf(
                        best < (1 - WORTH_TURNING) * asked,
                        "survey-better-direction",
                        "Lines at %.0f° take %s instead of %s.",
                        Math.toDegrees(found.best().directionRad()),
                        Time.saidInMinutes(best),
                        Time.saidInMinutes(asked));
    }

    private void assume(Judge judge) {
        judge.assume(
                Subject.of(SurveyPart.HEIGHT),
                "flat ground at the height of the block",
                "no terrain is looked at: over a rise overlap and clearance shrink");
        judge.assume(
                Subject.of(SurveyPart.WIND),
                "the wind is steady, and a turn keeps its circle over the ground",
                "the slow part of a circle lasts longer, so turns take more time than in still air");
        if (task.energy().isPresent() && task.energy().get().overheadJ() == 0) {
            judge.assume(
                    Subject.of(SurveyPart.ENERGY),
                    "launch, climb and landing take nothing",
                    "overhead_energy_wh is not given: leave room for them in the reserve");
        }
    }
}
