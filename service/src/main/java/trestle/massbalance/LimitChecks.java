package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;
import trestle.units.Mass;

/** The checks of mass and CG against their limits; inside by less than the tolerance is not yet inside. */
final class LimitChecks {
    private static final Subject FORWARD = Subject.of(BalancePart.FORWARD_LIMIT);
    private static final Subject AFT = Subject.of(BalancePart.AFT_LIMIT);
    private static final Subject LATERAL = Subject.of(BalancePart.LATERAL_LIMIT);

    private final Optional<Limits> limits;
    private final OptionalDouble forwardM;
    private final OptionalDouble aftM;

    private LimitChecks(Optional<Limits> limits, Optional<Planform> planform) {
        this.limits = limits;
        this.forwardM = place(limits.flatMap(Limits::forward), planform);
        this.aftM = place(limits.flatMap(Limits::aft), planform);
    }

    static void judge(
            Optional<Limits> limits,
            Optional<Planform> planform,
            List<Standing> standings,
            boolean marginKnown,
            boolean lopsided,
            Judge judge) {
        LimitChecks checks = new LimitChecks(limits, planform);
        judge.check("cg-limits", "order of the CG's limits", FORWARD, checks::order);
        boolean lateralKnown = standings.stream().anyMatch(s -> s.lateral().isPresent());
        for (Standing standing : standings) {
            String of = standing.source().isPresent() ? " of the weighed aircraft" : "";
            Subject mass = standing.about(BalancePart.MAXIMUM_TAKEOFF_MASS);
            judge.essential("takeoff-mass", "take-off mass" + of, mass, trial -> checks.mass(trial, standing));
            edge(
                    judge,
                    !marginKnown,
                    "cg-forward",
                    "CG against the forward limit" + of,
                    standing.about(BalancePart.FORWARD_LIMIT),
                    trial -> checks.edge(trial, standing, Edge.FORWARD));
            edge(
                    judge,
                    !marginKnown,
                    "cg-aft",
                    "CG against the aft limit" + of,
                    standing.about(BalancePart.AFT_LIMIT),
                    trial -> checks.edge(trial, standing, Edge.AFT));
            edge(
                    judge,
                    lopsided,
                    "cg-lateral",
                    "lateral CG" + of,
                    standing.about(BalancePart.LATERAL_LIMIT),
                    trial -> checks.lateral(trial, standing, lateralKnown));
        }
    }

    private static void edge(
            Judge judge, boolean essential, String code, String about, Subject subject, Consumer<Trial> trial) {
        if (essential) {
            judge.essential(code, about, subject, trial);
        } else {
            judge.check(code, about, subject, trial);
        }
    }

    /**
     * The arm of a limit.
     *
     * @param limit the limit
     * @param planform the wing
     * @return arm, m; empty where there is no limit or it needs a wing that is not there
     */
    static OptionalDouble place(Optional<Station> limit, Optional<Planform> planform) {
        return limit.isPresent() ? limit.get().armM(planform, Optional.empty()) : OptionalDouble.empty();
    }

    private void order(Trial trial) {
        if (forwardM.isEmpty() || aftM.isEmpty()) {
            trial.notJudged(FORWARD, AFT);
            return;
        }
        double forwardMm = Length.mmFromM(forwardM.getAsDouble());
        double aftMm = Length.mmFromM(aftM.getAsDouble());
        trial.of(forwardMm, "mm")
                .atMost(aftMm, Basis.REQUEST)
                .stopIf(
                        forwardM.getAsDouble() > aftM.getAsDouble(),
                        "limits-crossed",
                        "The forward limit at %.1f mm lies behind the aft limit at %.1f mm, so no CG meets both.",
                        forwardMm,
                        aftMm);
    }

    private void mass(Trial trial, Standing standing) {
        OptionalDouble most = limits.map(Limits::maximumTakeoffMassKg).orElse(OptionalDouble.empty());
        if (most.isEmpty()) {
            trial.notJudged(Subject.of(BalancePart.MAXIMUM_TAKEOFF_MASS));
            return;
        }
        double massG = Mass.gFromKg(standing.massKg());
        double limitG = Mass.gFromKg(most.getAsDouble());
        double spareKg = most.getAsDouble() - standing.massKg();
        trial.of(massG, "g")
                .atMost(limitG, Basis.REQUEST)
                .stopIf(
                        spareKg < -MassBalance.ROUNDING_KG,
                        "mass-over-limit",
                        "%s mass of %.0f g is %.0f g over the greatest take-off mass of %.0f g.",
                        standing.called(),
                        massG,
                        massG - limitG,
                        limitG)
                .attentionIf(
                        spareKg < standing.massToleranceKg() - MassBalance.ROUNDING_KG,
                        "mass-near-limit",
                        "%s mass of %.0f g keeps under the greatest take-off mass of %.0f g by less than its tolerance"
                                + " of %.0f g.",
                        standing.called(),
                        massG,
                        limitG,
                        Mass.gFromKg(standing.massToleranceKg()));
    }

    private void edge(Trial trial, Standing standing, Edge edge) {
        OptionalDouble limitM = edge == Edge.FORWARD ? forwardM : aftM;
        if (limitM.isEmpty() || standing.arm().isEmpty()) {
            trial.notJudged(Subject.of(edge.part));
            return;
        }
        double armM = standing.arm().get();
        double limit = limitM.getAsDouble();
        double insideM = edge == Edge.FORWARD ? armM - limit : limit - armM;
        Trial held = trial.of(Length.mmFromM(armM), "mm");
        if (edge == Edge.FORWARD) {
            held.atLeast(Length.mmFromM(limit), Basis.REQUEST);
        } else {
            held.atMost(Length.mmFromM(limit), Basis.REQUEST);
        }
        say(trial, standing, edge, insideM, standing.armToleranceM(), armM, limit);
    }

    private void lateral(Trial trial, Standing standing, boolean known) {
        OptionalDouble most = limits.map(Limits::lateralM).orElse(OptionalDouble.empty());
        if (most.isEmpty()) {
            trial.notJudged(LATERAL);
        } else if (!known && standing.source().isEmpty()) {
            trial.notJudged(
                    List.of(Subject.of(BalancePart.ITEMS)),
                    Severity.ATTENTION,
                    "lateral-limit-unchecked",
                    "The lateral limit was not checked, as no item has a lateral place and no weighing"
                            + " on three supports tells one.");
        } else if (standing.lateral().isEmpty()) {
            trial.notJudged(Subject.of(BalancePart.ITEMS));
        } else {
            double atM = standing.lateral().get();
            double limitM = most.getAsDouble();
            trial.of(Length.mmFromM(atM), "mm").atMost(Length.mmFromM(limitM), Basis.REQUEST);
            say(trial, standing, Edge.LATERAL, limitM - Math.abs(atM), standing.lateralToleranceM(), atM, limitM);
        }
    }

    private static void say(
            Trial trial, Standing standing, Edge edge, double insideM, double toleranceM, double atM, double limitM) {
        double atMm = Length.mmFromM(atM);
        double limitMm = Length.mmFromM(limitM);
        trial.stopIf(
                        insideM < -MassBalance.ROUNDING_M,
                        edge.overCode,
                        edge.over,
                        standing.called(),
                        atMm,
                        Length.mmFromM(-insideM),
                        limitMm)
                .attentionIf(
                        insideM < toleranceM - MassBalance.ROUNDING_M,
                        edge.nearCode,
                        edge.near,
                        standing.called(),
                        atMm,
                        limitMm,
                        Length.mmFromM(toleranceM));
    }

    /** The sides a CG can leave its range by, and how to say so. */
    private enum Edge {
        FORWARD(
                BalancePart.FORWARD_LIMIT,
                "cg-ahead-of-limit",
                "%s CG at %.1f mm is %.1f mm ahead of the forward limit at %.1f mm.",
                "cg-near-forward-limit",
                "%s CG at %.1f mm is behind the forward limit at %.1f mm by less than its tolerance of %.1f mm."),
        AFT(
                BalancePart.AFT_LIMIT,
                "cg-behind-limit",
                "%s CG at %.1f mm is %.1f mm behind the aft limit at %.1f mm.",
                "cg-near-aft-limit",
                "%s CG at %.1f mm is ahead of the aft limit at %.1f mm by less than its tolerance of %.1f mm."),
        LATERAL(
                BalancePart.LATERAL_LIMIT,
                "cg-lateral-over-limit",
                "%s CG at %.1f mm from the centre plane is %.1f mm outside the lateral limit of %.1f mm.",
                "cg-near-lateral-limit",
                "%s CG at %.1f mm from the centre plane is inside the lateral limit of %.1f mm by"
                        + " less than its tolerance of %.1f mm.");

        private final BalancePart part;
        private final String overCode;
        private final String over;
        private final String nearCode;
        private final String near;

        Edge(BalancePart part, String overCode, String over, String nearCode, String near) {
            this.part = part;
            this.overCode = overCode;
            this.over = over;
            this.nearCode = nearCode;
            this.near = near;
        }
    }
}
