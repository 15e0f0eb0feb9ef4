package trestle.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.joint.GoAround;
import trestle.joint.GoAroundEnd;
import trestle.joint.GoAroundTask;
import trestle.rails.Rail;
import trestle.units.Share;

/** Whether what a flight leaves in its packs carries it up once more. */
final class GoAroundChecks {
    private static final Subject SUBJECT = Subject.of(ReviewPart.GO_AROUND);

    /** Charge that a cell model near empty and cold may be off by, %. */
    private static final double MODEL_PERCENT = 2;

    /** A charge that is this far from the one asked is another. */
    private static final double UNLIKE = 0.005;

    private final Aircraft aircraft;
    private final Optional<GoAround> goAround;
    private final Judge judge = new Judge();

    private GoAroundChecks(Aircraft aircraft, Optional<GoAround> goAround) {
        this.aircraft = aircraft;
        this.goAround = goAround;
    }

    static Judgement of(Aircraft aircraft, Optional<GoAround> goAround) {
        GoAroundChecks checks = new GoAroundChecks(aircraft, goAround);
        checks.judge.check("go-around", "a go-around on the last of the packs", SUBJECT, checks::climbs);
        checks.judge.check(
                "go-around-rails",
                "input of the rails in a go-around",
                Subject.of(ReviewPart.RAILS),
                checks::feedsRails);
        goAround.ifPresent(checks::assume);
        return checks.judge.judgement();
    }

    /** Codes of what stops the flight, without a sentence: for a sample. */
    static Set<String> stops(Aircraft aircraft, GoAroundTask task) {
        GoAround.Gist gist = GoAround.gist(task);
        Set<String> stops = new TreeSet<>();
        if (gist.atOnce()) {
            stops.add("no-go-around");
        }
        if (gist.lowestVoltageV() < neededV(aircraft).orElse(0)) {
            stops.add("go-around-browns-out");
        }
        return stops;
    }

    /** The greatest of the least inputs of the rails, V; empty without a rail. */
    static OptionalDouble neededV(Aircraft aircraft) {
        return aircraft.rails().stream()
                .mapToDouble(rail -> rail.regulator().leastInputV())
                .max();
    }

    private void climbs(Trial trial) {
        if (goAround.isEmpty()) {
            trial.notJudged(Subject.of(ReviewPart.FULL_THROTTLE));
            return;
        }
        GoAround go = goAround.get();
        Basis basis = aircraft.goAround().asked() ? Basis.REQUEST : Basis.DEFAULT;
        if (go.lasts()) {
            trial.of(go.heightM(), "m").atLeast(go.askedHeightM(), basis);
        } else {
            trial.of(go.timeToCutoffS().getAsDouble(), "s").atLeast(go.holdS(), basis);
        }
        String happens = happens(go);
        String remedies = remedies(go);
        trial.stopIf(go.atOnce(), "no-go-around", "%s: %s.", happens, remedies)
                .attentionIf(
                        !go.reached() && go.holdsAt25C(),
                        "go-around-cold",
                        "%s; at 25 °C it would hold: warm the packs, or %s.",
                        happens,
                        remedies)
                .attentionIf(!go.reached(), "no-go-around", "%s: %s.", happens, remedies);
    }

    private static String happens(GoAround go) {
        String left = Judge.text(
                "With %.0f %% charge left, full power (%.0f W)",
                Share.percentFromFraction(go.chargeFraction()), go.powerW());
        if (go.lasts()) {
            return left
                    + (go.heightM() > 0
                            ? Judge.text(
                                    " climbs %.0f m in %.0f s, and %.0f m are asked",
                                    go.heightM(), go.holdS(), go.askedHeightM())
                            : Judge.text(" does not climb at all at %.0f m/s", go.climbAirspeedMPerS()));
        }
        if (go.end() == GoAroundEnd.POWER_LIMIT && go.atOnce()) {
            return Judge.text(
                    "With %.0f %% charge left, the packs cannot give full power at all",
                    Share.percentFromFraction(go.chargeFraction()));
        }
        String end = go.end() == GoAroundEnd.CUTOFF || go.end() == GoAroundEnd.HELD
                ? Judge.text("pulls the packs to the %.1f V cutoff", go.cutoffVoltageV())
                : "takes the packs to where they give no more";
        return left + " " + end
                + (go.atOnce()
                        ? " at once"
                        : Judge.text(
                                " in %.0f s, after %.0f m of climb",
                                go.timeToCutoffS().getAsDouble(), Math.max(0, go.heightM())));
    }

    /** What the same calculation found to do. */
    private static String remedies(GoAround go) {
        List<String> found = new ArrayList<>();
        go.leastChargeFraction().stream()
                .filter(least -> least > go.chargeFraction())
                .forEach(least -> found.add(Judge.text(
                        "land with %.0f %% left",
                        Math.min(100, Math.ceil(Share.percentFromFraction(least)) + MODEL_PERCENT))));
        if (!go.lasts() && go.heightAtPowerAllowedM() >= go.askedHeightM() && go.powerAllowedW() < go.powerW()) {
            found.add(Judge.text("climb with no more than %.0f W", Math.floor(go.powerAllowedW())));
        }
        go.cutoffThatLastsV().ifPresent(setting -> found.add(Judge.text("set the cutoff to %.2f V a cell", setting)));
        return found.isEmpty()
                ? "no charge, power or cutoff of these packs gives it, so approach with height to spare and take packs of"
                        + " less resistance or more thrust"
                : String.join(", or ", found);
    }

    private void feedsRails(Trial trial) {
        if (goAround.isEmpty()) {
            trial.notJudged(Subject.of(ReviewPart.FULL_THROTTLE));
            return;
        }
        if (aircraft.rails().isEmpty()) {
            if (!aircraft.notFitted().contains(Fitting.RAILS)) {
                trial.notJudged(Subject.of(ReviewPart.RAILS));
            }
            return;
        }
        double neededV = neededV(aircraft).getAsDouble();
        double lowestV = goAround.get().lowestVoltageV();
        String rail = aircraft.rails().stream()
                .filter(it -> it.regulator().leastInputV() == neededV)
                .map(Rail::name)
                .findFirst()
                .orElse("");
        trial.of(lowestV, "V")
                .atLeast(neededV, Basis.REQUEST)
                .stop(
                        "go-around-browns-out",
                        "Full power with %.0f %% charge left takes the packs to %.1f V, and the rail %s needs %.1f V at its"
                                + " input: it drops out in a go-around; take a regulator that works from less, or land with"
                                + " more.",
                        Share.percentFromFraction(goAround.get().chargeFraction()),
                        lowestV,
                        rail,
                        neededV);
    }

    private void assume(GoAround go) {
        aircraft.goAround().chargeFraction().stream()
                .filter(asked -> Math.abs(asked - go.chargeFraction()) > UNLIKE)
                .forEach(asked -> judge.assume(
                        SUBJECT,
                        Judge.text(
                                "begun with %.0f %% charge in place of %.0f %%",
                                Share.percentFromFraction(go.chargeFraction()), Share.percentFromFraction(asked)),
                        asked > go.chargeFraction()
                                ? "the packs have no more at take-off"
                                : "the cells come to their minimum voltage before"));
        if (!aircraft.goAround().asked()) {
            judge.assume(
                    SUBJECT,
                    Judge.text(
                            "a go-around at full power for %.0f s with %.0f m to gain, on what the flight leaves",
                            go.holdS(), go.askedHeightM()),
                    "the document asks for none");
        }
        judge.assume(
                SUBJECT,
                Judge.text(
                        "climbed at 1.3 stall speeds; %.0f %% of charge added to what it says to land with",
                        MODEL_PERCENT),
                "cold and near empty is where the cell model is weakest");
    }
}
