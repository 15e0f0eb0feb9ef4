package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;
import trestle.units.Mass;

/** The checks of mass and CG against their limits; inside by less than the tolerance is not yet inside. */
final class LimitChecks {
    private static final Subject MASS = Subject.of(BalancePart.MAXIMUM_TAKEOFF_MASS);
    private static final Subject LATERAL = Subject.of(BalancePart.LATERAL_LIMIT);

    private final Situation found;
    private final String remedy;

    private LimitChecks(Situation found, String remedy) {
        this.found = found;
        this.remedy = remedy;
    }

    /** The CG needs a range or a static margin, so its range is essential where no static margin is known. */
    static void judge(Situation found, String remedy, Judge judge) {
        LimitChecks checks = new LimitChecks(found, remedy);
        judge.essential("takeoff-mass", "take-off mass against its limit", MASS, checks::mass);
        judge.check("cg-limits", "order of the CG's limits", found.forwardLimit(), checks::order);
        String range = "CG against its range";
        if (found.marginFraction().isPresent()) {
            judge.check("cg-range", range, found.forwardLimit(), checks::range);
        } else {
            judge.essential("cg-range", range, found.forwardLimit(), checks::range);
        }
        String lateral = "lateral CG against its limit";
        if (found.lopsided() || found.lateralLimitM().isPresent()) {
            judge.essential("cg-lateral", lateral, LATERAL, checks::lateral);
        } else {
            judge.check("cg-lateral", lateral, LATERAL, checks::lateral);
        }
    }

    private void mass(Trial trial) {
        OptionalDouble most = found.maximumTakeoffMassKg();
        if (most.isEmpty()) {
            trial.notJudged(MASS);
            return;
        }
        Centre centre = found.centre();
        double limitKg = most.getAsDouble();
        double spareKg = limitKg - centre.massKg();
        String mass = Said.g(centre.massKg(), limitKg);
        String limit = Said.g(limitKg, centre.massKg());
        trial.of(Mass.gFromKg(centre.massKg()), "g")
                .atMost(Mass.gFromKg(limitKg), Basis.REQUEST)
                .stopIf(
                        spareKg < -MassBalance.ROUNDING_KG,
                        "mass-over-limit",
                        "The %stake-off mass of %s g is %s above the limit of %s g: take out as much.",
                        weighed(),
                        mass,
                        Said.mass(spareKg),
                        limit)
                .attentionIf(
                        spareKg < centre.massToleranceKg() - MassBalance.ROUNDING_KG,
                        "mass-near-limit",
                        "The %stake-off mass of %s g is below the limit of %s g by less than its own tolerance of %s:"
                                + " %s.",
                        weighed(),
                        mass,
                        limit,
                        Said.mass(centre.massToleranceKg()),
                        found.weighed().isPresent() ? "take out as much" : "weigh the aircraft");
    }

    private String weighed() {
        return found.weighed().isPresent() ? "weighed " : "";
    }

    private void order(Trial trial) {
        OptionalDouble forwardM = found.forwardM();
        OptionalDouble aftM = found.aftM();
        if (forwardM.isEmpty() || aftM.isEmpty()) {
            trial.notJudged(missingEnds().toArray(Subject[]::new));
            return;
        }
        trial.place(Length.mmFromM(forwardM.getAsDouble()), "mm")
                .atMost(Length.mmFromM(aftM.getAsDouble()), Basis.REQUEST)
                .stopIf(
                        forwardM.getAsDouble() > aftM.getAsDouble(),
                        "limits-crossed",
                        "The forward limit at %s mm lies aft of the aft limit at %s mm, so no CG meets both: correct one"
                                + " of them.",
                        Said.mm(forwardM.getAsDouble(), aftM.getAsDouble()),
                        Said.mm(aftM.getAsDouble(), forwardM.getAsDouble()));
    }

    private List<Subject> missingEnds() {
        List<Subject> missing = new ArrayList<>();
        if (found.forwardM().isEmpty()) {
            missing.add(found.forwardLimit());
        }
        if (found.aftM().isEmpty()) {
            missing.add(found.aftLimit());
        }
        return missing;
    }

    /** The nearer end decides; an end that is not given leaves the CG unjudged unless the other is passed. */
    private void range(Trial trial) {
        OptionalDouble forwardM = found.forwardM();
        OptionalDouble aftM = found.aftM();
        boolean crossed = forwardM.isPresent() && aftM.isPresent() && !found.hasRange();
        if (found.insideRangeM().isPresent() && !crossed) {
            double armM = found.centre().armM();
            boolean forward = forwardM.isPresent()
                    && (aftM.isEmpty() || armM - forwardM.getAsDouble() <= aftM.getAsDouble() - armM);
            if (forward) {
                forward(trial, armM, forwardM.getAsDouble());
            } else {
                aft(trial, armM, aftM.getAsDouble());
            }
        }
        if (crossed
                || missingEnds().isEmpty()
                || found.marginFraction().isPresent() && missingEnds().size() == 1) {
            trial.asSaid(crossed, Severity.STOP);
            return;
        }
        List<Subject> give = missingEnds();
        if (found.marginFraction().isEmpty()) {
            give.addAll(StabilityChecks.missing(found));
        }
        trial.notJudged(give.toArray(Subject[]::new));
    }

    private void forward(Trial trial, double armM, double limitM) {
        trial.at(found.forwardLimit())
                .place(Length.mmFromM(armM), "mm")
                .atLeast(Length.mmFromM(limitM), Basis.REQUEST)
                .stopIf(
                        armM - limitM < -MassBalance.ROUNDING_M,
                        "cg-forward-of-limit",
                        "The %sCG at %s mm is %s forward of the forward limit at %s mm%s.",
                        weighed(),
                        Said.mm(armM, limitM),
                        Said.distance(limitM - armM),
                        Said.mm(limitM, armM),
                        remedy)
                .attentionIf(
                        found.nearOrOutsideRange(),
                        "cg-near-forward-limit",
                        "The %sCG at %s mm is aft of the forward limit at %s mm by less than its tolerance of %s%s.",
                        weighed(),
                        Said.mm(armM, limitM),
                        Said.mm(limitM, armM),
                        Said.distance(found.centre().armToleranceM()),
                        remedy);
    }

    private void aft(Trial trial, double armM, double limitM) {
        trial.at(found.aftLimit())
                .place(Length.mmFromM(armM), "mm")
                .atMost(Length.mmFromM(limitM), Basis.REQUEST)
                .stopIf(
                        limitM - armM < -MassBalance.ROUNDING_M,
                        "cg-aft-of-limit",
                        "The %sCG at %s mm is %s aft of the aft limit at %s mm%s.",
                        weighed(),
                        Said.mm(armM, limitM),
                        Said.distance(armM - limitM),
                        Said.mm(limitM, armM),
                        remedy)
                .attentionIf(
                        found.nearOrOutsideRange(),
                        "cg-near-aft-limit",
                        "The %sCG at %s mm is forward of the aft limit at %s mm by less than its tolerance of %s%s.",
                        weighed(),
                        Said.mm(armM, limitM),
                        Said.mm(limitM, armM),
                        Said.distance(found.centre().armToleranceM()),
                        remedy);
    }

    private void lateral(Trial trial) {
        OptionalDouble most = found.lateralLimitM();
        if (most.isEmpty() || !found.tellsLateral()) {
            trial.notJudged(most.isEmpty() ? LATERAL : Subject.of(BalancePart.ITEMS));
            return;
        }
        double atM = found.centre().lateralM();
        double limitM = most.getAsDouble();
        double insideM = limitM - Math.abs(atM);
        String side = atM < 0 ? "left" : "right";
        trial.of(Length.mmFromM(Math.abs(atM)), "mm")
                .atMost(Length.mmFromM(limitM), Basis.REQUEST)
                .stopIf(
                        insideM < -MassBalance.ROUNDING_M,
                        "cg-lateral-over-limit",
                        "The %sCG lies %s mm to the %s of the plane of symmetry, %s beyond the limit of %s mm%s.",
                        weighed(),
                        Said.mm(Math.abs(atM), limitM),
                        side,
                        Said.distance(insideM),
                        Said.mm(limitM, Math.abs(atM)),
                        tipBallast(atM))
                .attentionIf(
                        insideM < found.centre().lateralToleranceM() - MassBalance.ROUNDING_M,
                        "cg-near-lateral-limit",
                        "The %sCG lies %s mm to the %s of the plane of symmetry, inside the limit of %s mm by less than its"
                                + " tolerance of %s%s.",
                        weighed(),
                        Said.mm(Math.abs(atM), limitM),
                        side,
                        Said.mm(limitM, Math.abs(atM)),
                        Said.distance(found.centre().lateralToleranceM()),
                        tipBallast(atM));
    }

    /** What would bring the lateral CG to the plane of symmetry, at the tip of the other wing. */
    private String tipBallast(double atM) {
        return found.planform()
                .map(wing -> Judge.text(
                        "; %s at the %s wing tip would balance it",
                        Said.mass(found.centre().massKg() * Math.abs(atM) / (wing.spanM() / 2)),
                        atM < 0 ? "right" : "left"))
                .orElse("");
    }
}
