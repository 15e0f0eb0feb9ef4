package trestle.wiring;

import java.util.Optional;
import trestle.numeric.Root;

/**
 * A wire that has settled: heat made equals heat given off.
 *
 * @param surfaceK surface temperature, K
 * @param conductorK copper temperature, K
 */
record SteadyState(double surfaceK, double conductorK) {
    /** A hundredth of what any thermometer on a wire resolves. */
    private static final double ACCURACY_K = 1e-6;

    /**
     * Solves {@code I² R'(Tc) = q'(Ts)}, {@code Tc = Ts + q'(Ts) r}.
     *
     * <p>The left side is a straight line in Ts for a given q'; the right side grows faster than
     * one. So there is one root, or none where the resistance outruns the cooling.
     *
     * @param wire the wire
     * @param path the way of its heat
     * @param currentA current in this wire, A, not negative
     * @return the steady state; empty when there is none below the melting point of copper
     */
    static Optional<SteadyState> of(Wire wire, HeatPath path, double currentA) {
        double squareA2 = currentA * currentA;
        double inner = path.innerResistanceKMPerW();
        var surfaceK = Root.between(
                ts -> {
                    double heat = path.heatWPerM(ts);
                    return squareA2 * wire.resistancePerMOhm(ts + heat * inner) - heat;
                },
                path.sinkK(),
                Copper.MELTING_POINT_K,
                ACCURACY_K);
        if (surfaceK.isEmpty()) {
            return Optional.empty();
        }
        double ts = surfaceK.getAsDouble();
        double tc = ts + path.heatWPerM(ts) * inner;
        return tc < Copper.MELTING_POINT_K ? Optional.of(new SteadyState(ts, tc)) : Optional.empty();
    }

    /**
     * The current that brings the copper to a temperature and holds it there.
     *
     * @param wire the wire
     * @param path the way of its heat
     * @param conductorK copper temperature, K
     * @return current, A; 0 where the surroundings are no cooler
     */
    static double currentA(Wire wire, HeatPath path, double conductorK) {
        if (conductorK <= path.sinkK()) {
            return 0;
        }
        double inner = path.innerResistanceKMPerW();
        double surfaceK = Root.between(
                        ts -> ts + path.heatWPerM(ts) * inner - conductorK, path.sinkK(), conductorK, ACCURACY_K)
                .orElse(conductorK);
        return Math.sqrt(path.heatWPerM(surfaceK) / wire.resistancePerMOhm(conductorK));
    }

    /**
     * The current that brings the surface to a temperature and holds it there.
     *
     * @param wire the wire
     * @param path the way of its heat
     * @param surfaceK surface temperature, K
     * @return current, A; 0 where the surroundings are no cooler
     */
    static double currentAtSurfaceA(Wire wire, HeatPath path, double surfaceK) {
        if (surfaceK <= path.sinkK()) {
            return 0;
        }
        double heat = path.heatWPerM(surfaceK);
        return Math.sqrt(heat / wire.resistancePerMOhm(surfaceK + heat * path.innerResistanceKMPerW()));
    }
}
