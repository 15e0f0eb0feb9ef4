package trestle.magnetics;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trestle.numeric.Root;

/** How power leads disturb a compass, and how far off they must be. */
public final class CompassClearance {
    /** Far finer than leads can be laid, m. */
    private static final double DISTANCE_ACCURACY_M = 1e-8;

    /** Nearest to the limit of touching a lead that the search for a distance begins, relative. */
    private static final double OFF_THE_LEAD = 1e-9;

    /**
     * The field of a pair falls with the square of the distance: thirty doublings outrun any
     * current.
     */
    private static final int MOST_DOUBLINGS = 30;

    private CompassClearance() {}

    /**
     * Adds up the fields, turns them to heading errors, and finds the distances to keep.
     *
     * @param task leads, earth's field, allowed error
     * @return the clearance
     */
    public static Clearance of(CompassTask task) {
        LeadFields cruise = fields(task, task.runs());
        Optional<LeadFields> fullThrottle = task.knowsFullThrottle()
                ? Optional.of(fields(
                        task, task.runs().stream().map(LeadRun::atFullThrottle).toList()))
                : Optional.empty();
        return new Clearance(cruise, fullThrottle, CompassChecks.of(task, cruise, fullThrottle));
    }

    private static LeadFields fields(CompassTask task, List<LeadRun> runs) {
        List<Disturbance> alone = runs.stream()
                .map(run -> disturbance(task, run.fieldT(), leastM(task, List.of(run))))
                .toList();
        double worstT = runs.stream().mapToDouble(LeadRun::fieldT).sum();
        double likelyT = Math.sqrt(
                runs.stream().mapToDouble(run -> run.fieldT() * run.fieldT()).sum());
        return new LeadFields(
                alone,
                disturbance(task, worstT, leastM(task, runs)),
                disturbance(task, likelyT, leastLikelyM(task, runs)));
    }

    /**
     * Heading error of a horizontal field from its most awkward side, a little aft of across: {@code asin(B / Bh)}.
     *
     * @param fieldT B, T, 0 or more
     * @param earthHorizontalT Bh, T, above 0
     * @return heading error, rad, 0 to π/2; empty where the field is stronger than the earth's, for then the compass can
     *     point anywhere
     */
    static OptionalDouble headingErrorRad(double fieldT, double earthHorizontalT) {
        return fieldT <= earthHorizontalT
                ? OptionalDouble.of(Math.asin(fieldT / earthHorizontalT))
                : OptionalDouble.empty();
    }

    private static Disturbance disturbance(CompassTask task, double fieldT, double leastM) {
        return new Disturbance(
                fieldT, fieldT / task.earthHorizontalT(), headingErrorRad(fieldT, task.earthHorizontalT()), leastM);
    }

    private static double leastM(CompassTask task, List<LeadRun> runs) {
        List<LeadRun> live = live(runs);
        return distanceM(
                task,
                live,
                distanceM ->
                        live.stream().mapToDouble(run -> run.fieldT(distanceM)).sum());
    }

    private static double leastLikelyM(CompassTask task, List<LeadRun> runs) {
        List<LeadRun> live = live(runs);
        return distanceM(
                task,
                live,
                distanceM -> Math.sqrt(live.stream()
                        .mapToDouble(run -> run.fieldT(distanceM))
                        .map(fieldT -> fieldT * fieldT)
                        .sum()));
    }

    private static List<LeadRun> live(List<LeadRun> runs) {
        return runs.stream().filter(run -> run.currentA() > 0).toList();
    }

    /**
     * The common distance from all runs at which their field is the allowed one. The field falls
     * steadily from without bound beside a lead to nothing far off, so there is one, unless the
     * current is so small that touching the lead is far enough.
     */
    private static double distanceM(CompassTask task, List<LeadRun> live, DoubleUnaryOperator fieldT) {
        if (live.isEmpty()) {
            return 0;
        }
        double allowedT = task.allowedFieldT();
        double nearM =
                live.stream().mapToDouble(LeadRun::effectiveSeparationM).max().orElseThrow() / 2 * (1 + OFF_THE_LEAD);
        double farM = 2 * nearM;
        for (int i = 0; i < MOST_DOUBLINGS && fieldT.applyAsDouble(farM) > allowedT; i++) {
            farM *= 2;
        }
        // In 1 / sqrt(B) the far field is straight, which a bracketed solver likes.
        return Root.between(
                        distanceM -> 1 / Math.sqrt(fieldT.applyAsDouble(distanceM)) - 1 / Math.sqrt(allowedT),
                        nearM,
                        farM,
                        DISTANCE_ACCURACY_M)
                .orElse(nearM);
    }
}
