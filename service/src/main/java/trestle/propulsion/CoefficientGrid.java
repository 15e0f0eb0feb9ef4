package trestle.propulsion;

/**
 * Coefficients at even steps of advance ratio from rest, read by a cubic through the neighbours.
 */
final class CoefficientGrid {
    private final double spacing;
    private final double[] thrusts;
    private final double[] powers;

    /**
     * Solves a model at every node.
     *
     * @param model the model
     * @param rotationReynolds {@code ρ n D² / μ} of the whole grid
     * @param spacing step in advance ratio, above 0
     * @param nodes how many, 3 or more
     */
    CoefficientGrid(BladeElementModel model, double rotationReynolds, double spacing, int nodes) {
        this.spacing = spacing;
        thrusts = new double[nodes];
        powers = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            PropellerCoefficients solved = model.at(i * spacing, rotationReynolds);
            thrusts[i] = solved.thrust();
            powers[i] = solved.power();
        }
    }

    /**
     * CT and CP. Past the last node both go with {@code J²}: a propeller that the wind drives then
     * brakes by airspeed alone, whatever its rotation.
     */
    PropellerCoefficients at(double advanceRatio) {
        double end = greatestAdvanceRatio();
        if (advanceRatio > end) {
            double growth = (advanceRatio / end) * (advanceRatio / end);
            return new PropellerCoefficients(
                    growth * thrusts[thrusts.length - 1], growth * powers[powers.length - 1]);
        }
        int node = Math.min(thrusts.length - 2, (int) (advanceRatio / spacing));
        double share = advanceRatio / spacing - node;
        return new PropellerCoefficients(cubic(thrusts, node, share), cubic(powers, node, share));
    }

    /** Advance ratio of the last node. */
    double greatestAdvanceRatio() {
        return spacing * (thrusts.length - 1);
    }

    /** Cubic Hermite interpolation with central differences for slopes (Catmull and Rom). */
    private static double cubic(double[] values, int node, double share) {
        double from = values[node];
        double to = values[node + 1];
        double slopeFrom = node > 0 ? (to - values[node - 1]) / 2 : to - from;
        double slopeTo = node < values.length - 2 ? (values[node + 2] - from) / 2 : to - from;
        double bend = slopeFrom + slopeTo - 2 * (to - from);
        double curve = to - from - slopeFrom - bend;
        return from + share * (slopeFrom + share * (curve + share * bend));
    }
}
