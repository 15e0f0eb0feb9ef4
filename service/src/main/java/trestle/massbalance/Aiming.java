package trestle.massbalance;

import java.util.OptionalDouble;
import trestle.finding.Judge;

/** Where a CG should be. */
final class Aiming {
    private Aiming() {}

    /**
     * The target's arm: the one that was asked for; else, for a CG that is not well inside its range, the middle of the
     * range; else, for a static margin outside what flies well, where it is usual.
     *
     * @param found mass, CG, wing, neutral point and limits
     * @param judge notes what was assumed
     * @return arm, m; empty where there is no target, or none that can be placed
     */
    static OptionalDouble targetM(Situation found, Judge judge) {
        if (found.task().target().isPresent()) {
            return found.task().target().get().armM(found.planform(), found.neutralPoint());
        }
        if (found.hasRange() && found.nearOrOutsideRange()) {
            return OptionalDouble.of(insideRangeM(found, judge));
        }
        boolean oneEnd = found.forwardM().isPresent() != found.aftM().isPresent();
        if (oneEnd && found.nearOrOutsideRange() && found.neutralPoint().isEmpty()) {
            judge.assume(
                    found.target(),
                    "the target is the one limit of the CG, inside it by the CG's tolerance",
                    "no other limit, neutral point or target is given");
            double toleranceM = found.centre().armToleranceM();
            return OptionalDouble.of(
                    found.aftM().isPresent()
                            ? found.aftM().getAsDouble() - toleranceM
                            : found.forwardM().getAsDouble() + toleranceM);
        }
        if (!found.marginOff() || found.offTheWing()) {
            return OptionalDouble.empty();
        }
        judge.assume(
                found.target(),
                "the target is a static margin of 10 %, inside the limits where there are any",
                "the static margin is outside 5 to 25 % and no target is given; common practice, no source");
        double targetM = Math.max(usualM(found), found.forwardM().orElse(Double.NEGATIVE_INFINITY));
        return OptionalDouble.of(Math.min(targetM, found.aftM().orElse(Double.POSITIVE_INFINITY)));
    }

    private static double insideRangeM(Situation found, Judge judge) {
        double forwardM = found.forwardM().getAsDouble();
        double middleM = (forwardM + found.aftM().getAsDouble()) / 2;
        if (found.neutralPoint().isPresent() && usualM(found) < middleM) {
            judge.assume(
                    found.target(),
                    "the target is a static margin of 10 %, or the forward limit where that is aft of it",
                    "the CG is not inside its range by its tolerance, midway the margin would be less, and no target is"
                            + " given; common practice, no source");
            return Math.max(forwardM, usualM(found));
        }
        judge.assume(
                found.target(),
                "the target is midway between the forward and the aft limit",
                "the CG is not inside its range by its tolerance and no target is given");
        return middleM;
    }

    private static double usualM(Situation found) {
        return found.neutralPoint().orElseThrow().armM()
                - StabilityChecks.USUAL_MARGIN_FRACTION
                        * found.planform().orElseThrow().meanAerodynamicChordM();
    }
}
