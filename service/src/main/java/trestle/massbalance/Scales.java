package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Mass and CG from scales, and what they say about the list. */
final class Scales {
    /** Supports nearer than a builder's tape tells apart give no direction, m. */
    static final double LEAST_SPREAD_M = 0.001;

    private Scales() {}

    /**
     * Reads the scales: {@code m = Σ ri}, {@code x = Σ ri xi / m}, [1] chapter 3; tolerances as in
     * {@link BuildUp#centre}.
     *
     * @param weighing the scales
     * @param list mass and CG of the list
     * @return what they say; empty where a support carries nothing: then the aircraft was held by
     *     something that is not on a scale
     */
    static Optional<Weighed> read(Weighing weighing, Centre list) {
        List<Support> supports = weighing.supports();
        if (supports.stream().anyMatch(support -> support.netKg() <= 0)) {
            return Optional.empty();
        }
        double massKg = supports.stream().mapToDouble(Support::netKg).sum();
        double armM = supports.stream().mapToDouble(s -> s.netKg() * s.armM()).sum() / massKg;
        double lateralM = supports.stream()
                        .mapToDouble(s -> s.netKg() * s.lateralM().orElse(0))
                        .sum()
                / massKg;
        double massVariance = 0;
        double armVariance = 0;
        double lateralVariance = 0;
        for (Support support : supports) {
            double place = square(support.netKg() * support.placeToleranceM() / massKg);
            double share = support.readingToleranceKg() / massKg;
            massVariance += square(support.readingToleranceKg());
            armVariance += square((support.armM() - armM) * share) + place;
            lateralVariance += square((support.lateralM().orElse(0) - lateralM) * share) + place;
        }
        return Optional.of(against(
                list,
                massKg,
                tellsArm(weighing) ? OptionalDouble.of(armM) : OptionalDouble.empty(),
                tellsLateral(weighing) ? OptionalDouble.of(lateralM) : OptionalDouble.empty(),
                Math.sqrt(massVariance),
                Math.sqrt(armVariance),
                Math.sqrt(lateralVariance)));
    }

    private static Weighed against(
            Centre list,
            double massKg,
            OptionalDouble armM,
            OptionalDouble lateralM,
            double massToleranceKg,
            double armToleranceM,
            double lateralToleranceM) {
        double differenceKg = massKg - list.massKg();
        boolean apart =
                Math.abs(differenceKg) > Math.hypot(massToleranceKg, list.massToleranceKg()) + MassBalance.ROUNDING_KG;
        Optional<MissingItem> missing =
                apart && armM.isPresent() ? Optional.of(missing(list, massKg, armM.getAsDouble())) : Optional.empty();
        return new Weighed(
                massKg,
                armM,
                lateralM,
                massToleranceKg,
                armToleranceM,
                lateralToleranceM,
                differenceKg,
                armM.isPresent() ? OptionalDouble.of(armM.getAsDouble() - list.armM()) : OptionalDouble.empty(),
                missing);
    }

    /** The difference of the masses at the difference of the moments over it. */
    private static MissingItem missing(Centre list, double massKg, double armM) {
        double differenceKg = massKg - list.massKg();
        return new MissingItem(differenceKg, (massKg * armM - list.massKg() * list.armM()) / differenceKg);
    }

    /**
     * Whether the scales tell the arm of the CG.
     *
     * @param weighing the scales
     * @return false where all supports stand at one arm
     */
    static boolean tellsArm(Weighing weighing) {
        double least =
                weighing.supports().stream().mapToDouble(Support::armM).min().orElse(0);
        double most =
                weighing.supports().stream().mapToDouble(Support::armM).max().orElse(0);
        return most - least > LEAST_SPREAD_M;
    }

    /**
     * Whether the scales tell the lateral place of the CG.
     *
     * @param weighing the scales
     * @return true with three supports whose places are known and are not in one line
     */
    static boolean tellsLateral(Weighing weighing) {
        return hasThreePlaces(weighing) && triangleHeightM(weighing) > LEAST_SPREAD_M;
    }

    /**
     * Whether three supports have a known lateral place.
     *
     * @param weighing the scales
     * @return true if so
     */
    static boolean hasThreePlaces(Weighing weighing) {
        return weighing.supports().size() == 3
                && weighing.supports().stream().allMatch(s -> s.lateralM().isPresent());
    }

    /** Least height of the triangle of supports: twice its area over its longest side. */
    private static double triangleHeightM(Weighing weighing) {
        double[] x = weighing.supports().stream().mapToDouble(Support::armM).toArray();
        double[] y = weighing.supports().stream()
                .mapToDouble(s -> s.lateralM().orElse(0))
                .toArray();
        double twiceArea = Math.abs((x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]));
        double longest = Math.max(
                Math.hypot(x[1] - x[0], y[1] - y[0]),
                Math.max(Math.hypot(x[2] - x[0], y[2] - y[0]), Math.hypot(x[2] - x[1], y[2] - y[1])));
        return longest > 0 ? twiceArea / longest : 0;
    }

    private static double square(double value) {
        return value * value;
    }
}
