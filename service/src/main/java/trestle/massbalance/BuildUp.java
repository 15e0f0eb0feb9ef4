package trestle.massbalance;

import java.util.List;

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
     * Inertia of point items about the CG: {@code Ixx = Σ m (y² + z²)} and so on, distances from
     * the CG.
     *
     * @param items at least one
     * @param centre their mass and CG
     * @return moments of inertia
     */
    public static Inertia inertia(List<Item> items, Centre centre) {
        double xx = 0;
        double yy = 0;
        double zz = 0;
        for (Item item : items) {
            PointMass point = item.pointMass();
            xx += point.massKg() * square(point.armM() - centre.armM());
            yy += point.massKg() * square(point.lateralM() - centre.lateralM());
            zz += point.massKg() * square(point.verticalM() - centre.verticalM());
        }
        return new Inertia(yy + zz, xx + zz, xx + yy);
    }

    private static double square(double value) {
        return value * value;
    }
}
