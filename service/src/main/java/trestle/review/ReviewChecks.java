package trestle.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.Pack;
import trestle.battery.PackRatings;
import trestle.battery.Segment;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.flight.SpeedPoint;
import trestle.massbalance.Limits;
import trestle.units.Mass;
import trestle.units.Resistance;
import trestle.units.Share;
import trestle.wiring.PlugEnd;

/** What only shows when the parts are seen together. */
final class ReviewChecks {
    private static final Subject FULL_THROTTLE = Subject.of(ReviewPart.FULL_THROTTLE);

    private final Aircraft aircraft;
    private final Optional<SpeedPoint> cruise;
    private final Optional<FullThrottle> fullThrottle;
    private final Judge judge = new Judge();

    private ReviewChecks(Aircraft aircraft, Optional<SpeedPoint> cruise, Optional<FullThrottle> fullThrottle) {
        this.aircraft = aircraft;
        this.cruise = cruise;
        this.fullThrottle = fullThrottle;
    }

    static Judgement of(
            Aircraft aircraft,
            Optional<SpeedPoint> cruise,
            Optional<FullThrottle> fullThrottle,
            Pack pack,
            List<RunReview> runs) {
        ReviewChecks checks = new ReviewChecks(aircraft, cruise, fullThrottle);
        checks.judge(pack, runs);
        checks.assume();
        checks.assumeSources(runs);
        return checks.judge.judgement();
    }

    private void judge(Pack pack, List<RunReview> runs) {
        judge.essential(
                "cruise",
                "an airspeed to cruise at",
                Subject.of(ReviewPart.CRUISE_AIRSPEED),
                trial -> trial.stopIf(
                        cruise.isEmpty(),
                        "no-cruise",
                        "No airspeed can be flown, so packs and wires are judged without a cruise current."));
        described(
                Fitting.WIRING,
                "wires-described",
                "the wires",
                ReviewPart.WIRING,
                !aircraft.runs().isEmpty());
        described(
                Fitting.RAILS,
                "rails-described",
                "the regulated rails",
                ReviewPart.RAILS,
                !aircraft.rails().isEmpty());
        described(
                Fitting.COMPASS,
                "compass-described",
                "the compass",
                ReviewPart.COMPASS,
                aircraft.compass().isPresent());
        described(
                Fitting.LAUNCHER,
                "launch-described",
                "the launch",
                ReviewPart.LAUNCH,
                aircraft.flight().launch().isPresent());
        judge.check("survey-described", "the survey", Subject.of(ReviewPart.SURVEY), trial -> {
            if (aircraft.survey().isEmpty()) {
                trial.notJudged(Subject.of(ReviewPart.SURVEY));
            }
        });
        judge.check("charging-described", "the charge", Subject.of(ReviewPart.CHARGING), trial -> {
            if (aircraft.charging().isEmpty()) {
                trial.notJudged(Subject.of(ReviewPart.CHARGING));
            }
        });
        balanced();
        judge.check(
                "full-throttle-held", "power of the packs at full throttle", FULL_THROTTLE, trial -> held(trial, pack));
        judge.check("full-throttle-current", "cells at full throttle", FULL_THROTTLE, trial -> current(trial, pack));
        for (int i = 0; i < runs.size(); i++) {
            if (aircraft.balanced() && aircraft.runs().get(i).armM().isEmpty()) {
                judge.note(
                        "wire-not-weighed",
                        Subject.of(ReviewPart.RUN_ARM, i),
                        "The wire of %s has no arm, so its mass is left out of the balance.",
                        runs.get(i).task().run().name());
            }
        }
    }

    /** What is neither described nor said to be absent has been forgotten, as far as a verdict goes. */
    private void described(Fitting fitting, String code, String about, ReviewPart part, boolean given) {
        Subject subject = Subject.of(part);
        judge.essential(code, about, subject, trial -> {
            if (!given && !aircraft.notFitted().contains(fitting)) {
                trial.notJudged(subject);
            }
        });
    }

    /** A mass as a whole can be held against a limit; where it is, nobody knows. */
    private void balanced() {
        Subject items = Subject.of(ReviewPart.ITEMS);
        judge.essential("balance-described", "mass and balance", items, trial -> {
            if (!aircraft.balanced()) {
                trial.notJudged(items);
            }
        });
        if (aircraft.balanced()) {
            weighed();
        } else {
            judge.check("declared-mass", "take-off mass as given", Subject.of(ReviewPart.MASS_LIMIT), this::declared);
        }
    }

    private void declared(Trial trial) {
        OptionalDouble limitKg =
                aircraft.limits().map(Limits::maximumTakeoffMassKg).orElse(OptionalDouble.empty());
        if (limitKg.isEmpty()) {
            trial.notJudged(Subject.of(ReviewPart.MASS_LIMIT));
            return;
        }
        double massG = Mass.gFromKg(aircraft.takeoffMassKg().orElseThrow());
        double limitG = Mass.gFromKg(limitKg.getAsDouble());
        trial.of(massG, "g")
                .atMost(limitG, Basis.REQUEST)
                .stop(
                        "declared-mass-exceeded",
                        "The take-off mass of %.0f g is above the %.0f g allowed: take %.0f g off.",
                        massG,
                        limitG,
                        massG - limitG);
    }

    /** A mass that is known and not in the balance makes everything after it too good. */
    private void weighed() {
        double unplacedKg = aircraft.propulsion() instanceof Propulsion.ByParts parts ? parts.unplacedMassKg() : 0;
        judge.check(
                "motors-weighed",
                "motors in the balance",
                Subject.of(ReviewPart.DRIVE_PLACES),
                trial -> trial.attentionIf(
                        unplacedKg > 0,
                        "motors-not-weighed",
                        "The motors weigh %.0f g together and have no place, so neither take-off mass nor CG has them: give"
                                + " propulsion.places.motor.",
                        Mass.gFromKg(unplacedKg)));
    }

    private void held(Trial trial, Pack pack) {
        if (fullThrottle.isEmpty()) {
            trial.notJudged(FULL_THROTTLE);
            return;
        }
        FullThrottle full = fullThrottle.get();
        trial.stopIf(
                !full.held(),
                "full-throttle-not-held",
                "The packs, %s, do not hold %.0f W at full throttle for the %.0f s asked.",
                charge(pack),
                full.powerW(),
                aircraft.propulsion().fullThrottleDurationS());
    }

    private static String charge(Pack pack) {
        double least = pack.segments().stream()
                .mapToDouble(Segment::stateOfChargeFraction)
                .min()
                .orElse(1);
        return least < 1 ? Judge.text("at %.0f %% charge", Share.percentFromFraction(least)) : "full";
    }

    private void current(Trial trial, Pack pack) {
        OptionalDouble ratedA = PackRatings.of(pack).maxContinuousCurrentA();
        if (fullThrottle.isEmpty() || ratedA.isEmpty()) {
            trial.notJudged(fullThrottle.isEmpty() ? FULL_THROTTLE : Subject.of(ReviewPart.CELL_RATING));
            return;
        }
        double drawnA = fullThrottle.get().currentA();
        trial.of(drawnA, "A")
                .atMost(ratedA.getAsDouble(), Basis.REQUEST)
                // A drive that is described has said it of its packs.
                .asSaid(
                        drawnA > ratedA.getAsDouble() && aircraft.propulsion() instanceof Propulsion.ByParts,
                        Severity.STOP)
                .attention(
                        "full-throttle-above-cell-rating",
                        "Full throttle draws %.1f A; the cells are rated for %.1f A continuously, so keep it short and"
                                + " watch their temperature.",
                        drawnA,
                        ratedA.getAsDouble());
    }

    /** Where a fuse or a plug is reckoned with the packs for want of a source of its own. */
    private void assumeSources(List<RunReview> runs) {
        for (int i = 0; i < runs.size(); i++) {
            PlugEnd said = aircraft.runs().get(i).plan().plug();
            PlugEnd taken = runs.get(i).task().plug();
            boolean matters =
                    said.capacitanceF().isPresent() || runs.get(i).task().fuse().isPresent();
            if (matters && runs.get(i).carriesPackCurrent() && !said.equals(taken)) {
                judge.assume(
                        Subject.of(ReviewPart.RUN, i),
                        Judge.text(
                                "%.1f V and %.0f mΩ at its supply end",
                                taken.fullVoltageV().getAsDouble(),
                                Resistance.milliohmFromOhm(
                                        taken.sourceResistanceOhm().getAsDouble())),
                        "those of the packs in the first moment, full and as warm as at take-off, where the run says"
                                + " nothing else");
            }
        }
    }

    private void assume() {
        if (cruise.isPresent() && aircraft.flight().cruiseAirspeedMPerS().isEmpty()) {
            judge.assume(
                    Subject.of(ReviewPart.CRUISE_AIRSPEED),
                    Judge.text(
                            "%.1f m/s, the airspeed of best range", cruise.get().airspeedMPerS()),
                    "the flight gives no cruising airspeed");
        }
        if (fullThrottle.isEmpty()) {
            judge.assume(FULL_THROTTLE, "no peak on packs and main wires", "the power at full throttle is not given");
        } else {
            judge.assume(
                    FULL_THROTTLE,
                    Judge.text(
                            "full throttle from packs as at take-off, %.0f s in one go",
                            aircraft.propulsion().fullThrottleDurationS()),
                    "that is when it is used longest");
        }
        if (aircraft.flight().packTemperatureK().isEmpty()) {
            judge.assume(
                    Subject.of(ReviewPart.PACK_TEMPERATURE),
                    "cells at take-off as warm as the air",
                    "the flight gives no temperature for them");
        }
    }
}
