package trestle.massbalance;

import java.util.List;
import java.util.Optional;

/** Mass, CG, inertia and moments from a list of items. */
public final class BuildUp {
    private BuildUp() {}

    /**
     * Mass and CG with their tolerances.
     *
     * <p>{@code m = Σ mi}, {@code x = Σ mi xi / m}, and so in y and z, [1]; {@code dm² = Σ dmi²},
     * {@code dx² = Σ ((xi − x) dmi / m)² + Σ (mi dxi / m)²}: first order, items independent of each
     * other, the pieces of one item alike.
     *
     * @param items at least one
     * @return mass and CG
     */
    public static Centre centre(List<Item> items) {
        double massKg = 0;
        double momentX = 0;
        double momentY = 0;
        double momentZ = 0;
        for (Item item : items) {
            PointMass point = item.pointMass();
            massKg += point.massKg();
            momentX += point.momentKgM();
            momentY += point.massKg() * point.lateralM();
            momentZ += point.massKg() * point.verticalM();
        }
        double armM = momentX / massKg;
        double lateralM = momentY / massKg;
        double massVariance = 0;
        double armVariance = 0;
        double lateralVariance = 0;
        for (Item item : items) {
            PointMass point = item.pointMass();
            double itemToleranceKg = item.quantityCount() * item.massToleranceKg();
            massVariance += square(itemToleranceKg);
            armVariance += square((point.armM() - armM) * itemToleranceKg / massKg)
                    + square(point.massKg() * item.armToleranceM() / massKg);
            lateralVariance += square((point.lateralM() - lateralM) * itemToleranceKg / massKg);
        }
        return new Centre(
                massKg,
                armM,
                lateralM,
                momentZ / massKg,
                Math.sqrt(massVariance),
                Math.sqrt(armVariance),
                Math.sqrt(lateralVariance));
    }

    /**
     * The table of moments.
     *
     * @param items at least one
     * @param massKg their whole mass, kg
     * @return one line an item, in their order
     */
    public static List<Moment> moments(List<Item> items, double massKg) {
        return items.stream()
                .map(item -> new Moment(
                        item.name(),
                        item.totalMassKg(),
                        item.armM(),
                        item.pointMass().momentKgM(),
                        item.totalMassKg() / massKg))
                .toList();
    }

    /**
     * Inertia about the CG: {@code Ixx = Σ (own + m (y² + z²))} and so on, distances from the CG; what is not spread is a
     * point.
     *
     * @param task the aircraft
     * @param centre mass and CG of its items
     * @return moments of inertia; empty unless an item is spread over the wing, which has most of the roll inertia
     */
    public static Optional<Inertia> inertia(BalanceTask task, Centre centre) {
        if (task.items().stream().noneMatch(i -> i.spread().orElse(null) instanceof Spread.OverWing)) {
            return Optional.empty();
        }
        Wing wing = task.wing().orElse(null);
        Tail tail = task.tail().orElse(null) instanceof Tail behind ? behind : null;
        double roll = 0;
        double pitch = 0;
        double yaw = 0;
        for (Item item : task.items()) {
            PointMass point = item.pointMass();
            double xx = point.massKg() * square(point.armM() - centre.armM());
            double yy = point.massKg() * square(point.lateralM() - centre.lateralM());
            double zz = point.massKg() * square(point.verticalM() - centre.verticalM());
            Inertia own = item.spread()
                    .map(spread -> SpreadInertia.of(spread, point.massKg(), wing, tail))
                    .orElse(Inertia.NONE);
            roll += own.rollKgM2() + yy + zz;
            pitch += own.pitchKgM2() + xx + zz;
            yaw += own.yawKgM2() + xx + yy;
        }
        return Optional.of(new Inertia(roll, pitch, yaw));
    }

    private static double square(double value) {
        return value * value;
    }
}
