package trestle.wiring;

import java.util.Optional;

/**
 * How hot the copper gets in a short peak.
 *
 * <p>Two lumps per metre: the copper, and the insulation with its whole heat capacity at the
 * surface, the inner thermal resistance between them. Of all ways to share the insulation's
 * capacity this stores the least heat for a given copper temperature, so the answer errs to the hot
 * side: {@code C1 Tc' = I² R'(Tc) − (Tc − Ts)/r}, {@code C2 Ts' = (Tc − Ts)/r − q'(Ts)}. Foam
 * stores nothing, which errs to the same side.
 *
 * <p>Integrated by ROS2, [9]: second order for any Jacobian, damped for stiff thin walls, step size
 * from the embedded first-order result.
 */
final class PeakRise {
    private static final double GAMMA = 1 - 1 / Math.sqrt(2);

    /** Of the first-order result in a step; the second-order one that is kept is far closer. */
    private static final double STEP_TOLERANCE_K = 0.1;

    private static final int FIRST_STEPS = 64;
    private static final double LEAST_STEP_FRACTION = 1e-7;

    /** Usual bounds on the change of a step size, and the share of the best step that is taken. */
    private static final double LEAST_CHANGE = 0.1;

    private static final double MOST_CHANGE = 5;
    private static final double STEP_CAUTION = 0.9;

    /** Below this rise a chord is all rounding. */
    private static final double LEAST_RISE_K = 1e-3;

    /** Ordinary cases take under 100. */
    private static final int MOST_STEPS = 5000;

    private final Wire wire;
    private final HeatPath path;
    private final double squareA2;
    private final double copper;
    private final double insulation;
    private final double inner;

    private PeakRise(Wire wire, HeatPath path, double currentA) {
        this.wire = wire;
        this.path = path;
        this.squareA2 = currentA * currentA;
        this.copper = wire.copperCapacityJPerMK();
        this.insulation = wire.insulationCapacityJPerMK();
        this.inner = path.innerResistanceKMPerW();
    }

    /**
     * The wire at the end of a peak, or of a time without current.
     *
     * @param wire the wire
     * @param path the way of its heat
     * @param from where it starts
     * @param currentA current in this wire during the peak, A
     * @param durationS duration, s, above 0
     * @return its temperatures; empty where the copper melts
     */
    static Optional<PeakEnd> end(Wire wire, HeatPath path, SteadyState from, double currentA, double durationS) {
        return new PeakRise(wire, path, currentA).integrate(from, durationS);
    }

    private Optional<PeakEnd> integrate(SteadyState from, double durationS) {
        double leastStepS = LEAST_STEP_FRACTION * durationS;
        State now = new State(from.conductorK(), from.surfaceK());
        double timeS = 0;
        double stepS = durationS / FIRST_STEPS;
        for (int step = 0; step < MOST_STEPS; step++) {
            stepS = Math.min(stepS, durationS - timeS);
            Step tried = tried(now, stepS);
            if (tried.usable() && (tried.errorK() <= STEP_TOLERANCE_K || stepS <= leastStepS)) {
                now = tried.end();
                timeS += stepS;
                if (now.copperK() >= Copper.MELTING_POINT_K) {
                    return Optional.empty();
                }
                if (timeS >= durationS) {
                    return Optional.of(new PeakEnd(now.surfaceK(), now.copperK()));
                }
            }
            stepS *= tried.usable() ? change(tried.errorK()) : LEAST_CHANGE;
        }
        return settled();
    }

    /** Both temperatures, K. */
    private record State(double copperK, double surfaceK) {}

    /** Where a step ends, and how far the first-order result is from it, K. */
    private record Step(State end, double errorK) {
        boolean usable() {
            return Double.isFinite(errorK);
        }
    }

    /**
     * One step of ROS2: {@code (I − γ h J) k1 = f(u)}, {@code (I − γ h J) k2 = f(u + h k1) − 2 k1},
     * {@code u' = u + h (1.5 k1 + 0.5 k2)}; the matrix is ((a, b), (c, d)).
     */
    private Step tried(State u, double h) {
        double heat = path.heatWPerM(u.surfaceK());
        double a = 1 + GAMMA * h * (1 / inner - squareA2 * growth()) / copper;
        double b = -GAMMA * h / (inner * copper);
        double c = -GAMMA * h / (inner * insulation);
        double d = 1 + GAMMA * h * (1 / inner + slope(u.surfaceK(), heat)) / insulation;
        double determinant = a * d - b * c;
        double f1 = copperRate(u.copperK(), u.surfaceK());
        double f2 = surfaceRate(u.copperK(), u.surfaceK(), heat);
        double k1Copper = (d * f1 - b * f2) / determinant;
        double k1Surface = (a * f2 - c * f1) / determinant;
        double copperK = u.copperK() + h * k1Copper;
        double surfaceK = u.surfaceK() + h * k1Surface;
        if (!(determinant > 0) || !(surfaceK > 0) || !(copperK > 0)) {
            return new Step(u, Double.POSITIVE_INFINITY);
        }
        double g1 = copperRate(copperK, surfaceK) - 2 * k1Copper;
        double g2 = surfaceRate(copperK, surfaceK, path.heatWPerM(surfaceK)) - 2 * k1Surface;
        double k2Copper = (d * g1 - b * g2) / determinant;
        double k2Surface = (a * g2 - c * g1) / determinant;
        double errorK = h / 2 * Math.max(Math.abs(k1Copper + k2Copper), Math.abs(k1Surface + k2Surface));
        return new Step(
                new State(
                        u.copperK() + h * (1.5 * k1Copper + 0.5 * k2Copper),
                        u.surfaceK() + h * (1.5 * k1Surface + 0.5 * k2Surface)),
                errorK);
    }

    /** Slope of the heat given off, W/(m K), as a chord: ROS2 bears a rough Jacobian. */
    private double slope(double surfaceK, double heatWPerM) {
        return heatWPerM / Math.max(surfaceK - path.sinkK(), LEAST_RISE_K);
    }

    private static double change(double errorK) {
        return Math.max(
                LEAST_CHANGE,
                Math.min(MOST_CHANGE, STEP_CAUTION * Math.sqrt(STEP_TOLERANCE_K / (errorK + Double.MIN_NORMAL))));
    }

    /** Where the steps run out: what the peak would settle at, which no shorter peak exceeds. */
    private Optional<PeakEnd> settled() {
        return SteadyState.of(wire, path, Math.sqrt(squareA2))
                .map(state -> new PeakEnd(state.surfaceK(), state.conductorK()));
    }

    private double copperRate(double tc, double ts) {
        return (squareA2 * wire.resistancePerMOhm(tc) - (tc - ts) / inner) / copper;
    }

    private double surfaceRate(double tc, double ts, double heatWPerM) {
        return ((tc - ts) / inner - heatWPerM) / insulation;
    }

    /** How the resistance of a metre grows with temperature, Ω/(m K). */
    private double growth() {
        return wire.gauge().resistancePerMOhm() * Copper.TEMPERATURE_COEFFICIENT_PER_K;
    }
}
