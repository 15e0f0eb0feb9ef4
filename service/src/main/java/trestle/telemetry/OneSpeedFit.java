package trestle.telemetry;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.Optional;

/**
 * A power curve through one mean power. One speed cannot tell parasite from induced drag, so the induced part is that of
 * the wing, {@code k1 = 2 g²/(π e b² η)}, and the parasite part what is left; their errors go against each other.
 */
public final class OneSpeedFit {
    /** Usual span efficiency of the whole aircraft: common practice, no source. */
    public static final double SPAN_EFFICIENCY = 0.75;

    /** Usual efficiency from pack to thrust: common practice, no source. */
    public static final double EFFICIENCY = 0.5;

    /** Standard deviation of the induced part, as a share, from both. */
    public static final double INDUCED_DEVIATION = 0.3;

    private OneSpeedFit() {}

    /**
     * The curve.
     *
     * @param mean power and airspeed
     * @param massKg mass flown, kg
     * @param spanM wing span, m
     * @param densityKgPerM3 density, kg/m³
     * @param systemsPowerW power that does not depend on airspeed, W
     * @return the curve; empty where the wing alone would take more than there was
     */
    public static Optional<PowerFit> of(
            PowerAtSpeed mean, double massKg, double spanM, double densityKgPerM3, double systemsPowerW) {
        double v = mean.airspeedMPerS();
        double k1 = 2 * GRAVITY_M_PER_S2 * GRAVITY_M_PER_S2 / (Math.PI * SPAN_EFFICIENCY * spanM * spanM * EFFICIENCY);
        double induced = k1 * massKg * massKg / (densityKgPerM3 * v);
        double parasite = mean.powerW() - systemsPowerW - induced;
        if (parasite <= 0) {
            return Optional.empty();
        }
        double byWing = INDUCED_DEVIATION * induced / parasite;
        double deviation = Math.hypot(mean.deviationW() / parasite, byWing);
        return Optional.of(new PowerFit(
                systemsPowerW,
                parasite / (densityKgPerM3 * v * v * v),
                k1,
                massKg,
                deviation,
                INDUCED_DEVIATION,
                -byWing / deviation,
                0,
                0,
                0,
                v,
                v));
    }
}
