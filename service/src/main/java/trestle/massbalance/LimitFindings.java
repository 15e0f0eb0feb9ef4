package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Length;
import trestle.units.Mass;

/** Mass and CG against their limits; inside by less than the tolerance is not yet inside. */
final class LimitFindings {
    private LimitFindings() {}

    static List<Finding> of(Limits limits, Optional<Planform> planform, List<Standing> standings) {
        List<Finding> findings = new ArrayList<>();
        OptionalDouble forwardM = place(limits.forward(), planform);
        OptionalDouble aftM = place(limits.aft(), planform);
        unplaced(limits.forward(), forwardM, BalancePart.FORWARD_LIMIT).ifPresent(findings::add);
        unplaced(limits.aft(), aftM, BalancePart.AFT_LIMIT).ifPresent(findings::add);
        if (forwardM.isPresent() && aftM.isPresent() && forwardM.getAsDouble() > aftM.getAsDouble()) {
            findings.add(crossed(forwardM.getAsDouble(), aftM.getAsDouble()));
        }
        if (limits.lateralM().isPresent()
                && standings.stream().allMatch(standing -> standing.lateral().isEmpty())) {
            findings.add(lateralUnknown());
        }
        for (Standing standing : standings) {
            limits.maximumTakeoffMassKg()
                    .ifPresent(limit -> mass(standing, limit).ifPresent(findings::add));
            forwardM.ifPresent(limit -> forward(standing, limit).ifPresent(findings::add));
            aftM.ifPresent(limit -> aft(standing, limit).ifPresent(findings::add));
            limits.lateralM().ifPresent(limit -> lateral(standing, limit).ifPresent(findings::add));
        }
        return findings;
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

    private static Optional<Finding> unplaced(Optional<Station> limit, OptionalDouble placedM, BalancePart part) {
        if (limit.isEmpty() || placedM.isPresent()) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                Severity.ATTENTION,
                "limit-needs-wing",
                Subject.of(part),
                "A limit in percent of the mean chord was not checked, as there is no"
                        + " wing: give the wing, or the limit as an arm."));
    }

    private static Finding lateralUnknown() {
        return Finding.of(
                Severity.ATTENTION,
                "lateral-limit-unchecked",
                Subject.of(BalancePart.LATERAL_LIMIT),
                "The lateral limit was not checked, as no item has a lateral place and no weighing"
                        + " on three supports tells one.");
    }

    private static Finding crossed(double forwardM, double aftM) {
        return Finding.of(
                Severity.STOP,
                "limits-crossed",
                Subject.of(BalancePart.FORWARD_LIMIT),
                Length.mmFromM(forwardM),
                Length.mmFromM(aftM),
                text(
                        "The forward limit at %.1f mm lies behind the aft limit at %.1f mm, so" + " no CG meets both.",
                        Length.mmFromM(forwardM), Length.mmFromM(aftM)));
    }

    private static Optional<Finding> mass(Standing standing, double limitKg) {
        double massG = Mass.gFromKg(standing.massKg());
        double limitG = Mass.gFromKg(limitKg);
        double spareKg = limitKg - standing.massKg();
        if (spareKg < -MassBalance.ROUNDING_KG) {
            return Optional.of(Finding.of(
                    Severity.STOP,
                    "mass-over-limit",
                    standing.about(BalancePart.MAXIMUM_TAKEOFF_MASS),
                    massG,
                    limitG,
                    text(
                            "%s mass of %.0f g is %.0f g over the greatest take-off" + " mass of %.0f g.",
                            standing.called(), massG, massG - limitG, limitG)));
        }
        if (spareKg < standing.massToleranceKg() - MassBalance.ROUNDING_KG) {
            return Optional.of(Finding.of(
                    Severity.ATTENTION,
                    "mass-near-limit",
                    standing.about(BalancePart.MAXIMUM_TAKEOFF_MASS),
                    massG,
                    limitG,
                    text(
                            "%s mass of %.0f g keeps under the greatest take-off mass"
                                    + " of %.0f g by less than its tolerance of %.0f g.",
                            standing.called(), massG, limitG, Mass.gFromKg(standing.massToleranceKg()))));
        }
        return Optional.empty();
    }

    private static Optional<Finding> forward(Standing standing, double limitM) {
        return standing.arm()
                .flatMap(armM -> judged(standing, Edge.FORWARD, armM - limitM, standing.armToleranceM(), armM, limitM));
    }

    private static Optional<Finding> aft(Standing standing, double limitM) {
        return standing.arm()
                .flatMap(armM -> judged(standing, Edge.AFT, limitM - armM, standing.armToleranceM(), armM, limitM));
    }

    private static Optional<Finding> lateral(Standing standing, double limitM) {
        return standing.lateral()
                .flatMap(lateralM -> judged(
                        standing,
                        Edge.LATERAL,
                        limitM - Math.abs(lateralM),
                        standing.lateralToleranceM(),
                        lateralM,
                        limitM));
    }

    private static Optional<Finding> judged(
            Standing standing, Edge edge, double insideM, double toleranceM, double atM, double limitM) {
        double atMm = Length.mmFromM(atM);
        double limitMm = Length.mmFromM(limitM);
        Subject subject = standing.about(edge.part);
        if (insideM < -MassBalance.ROUNDING_M) {
            String message = text(edge.over, standing.called(), atMm, Length.mmFromM(-insideM), limitMm);
            return Optional.of(Finding.of(Severity.STOP, edge.overCode, subject, atMm, limitMm, message));
        }
        if (insideM < toleranceM - MassBalance.ROUNDING_M) {
            String message = text(edge.near, standing.called(), atMm, limitMm, Length.mmFromM(toleranceM));
            return Optional.of(Finding.of(Severity.ATTENTION, edge.nearCode, subject, atMm, limitMm, message));
        }
        return Optional.empty();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /** The sides a CG can leave its range by, and how to say so. */
    private enum Edge {
        FORWARD(
                BalancePart.FORWARD_LIMIT,
                "cg-ahead-of-limit",
                "%s CG at %.1f mm is %.1f mm ahead of the forward limit at %.1f mm.",
                "cg-near-forward-limit",
                "%s CG at %.1f mm is behind the forward limit at %.1f mm by less than its tolerance" + " of %.1f mm."),
        AFT(
                BalancePart.AFT_LIMIT,
                "cg-behind-limit",
                "%s CG at %.1f mm is %.1f mm behind the aft limit at %.1f mm.",
                "cg-near-aft-limit",
                "%s CG at %.1f mm is ahead of the aft limit at %.1f mm by less than its tolerance" + " of %.1f mm."),
        LATERAL(
                BalancePart.LATERAL_LIMIT,
                "cg-lateral-over-limit",
                "%s CG at %.1f mm from the centre plane is %.1f mm outside the lateral limit of" + " %.1f mm.",
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
