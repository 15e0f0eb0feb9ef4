package trestle.propulsion;

import java.util.List;
import trestle.numeric.EvenCubic;

/**
 * Coefficients at even steps of advance ratio from rest, read by a cubic through the neighbours.
 */
final class CoefficientGrid {
    private final double spacing;
    private final double[] thrusts;
    private final double[] powers;

    /** Angles of the rings at the node just solved, and at the one before it. */
    private double[] anglesRad = new double[BladeElementModel.STRIPS];

    private double[] beforeRad = new double[BladeElementModel.STRIPS];

    private CoefficientGrid(double spacing, int nodes) {
        this.spacing = spacing;
        thrusts = new double[nodes];
        powers = new double[nodes];
    }

    /**
     * Solves a model at every node, at several rotations. A root at one rotation is next to that at another, and roots
     * go on from node to node: each search begins where these say.
     *
     * @param model the model
     * @param rotationReynolds {@code ρ n D² / μ} of each grid
     * @param spacing step in advance ratio, above 0
     * @param nodes how many, 3 or more
     * @return a grid for each rotation
     */
    static List<CoefficientGrid> of(BladeElementModel model, List<Double> rotationReynolds, double spacing, int nodes) {
        List<CoefficientGrid> grids = rotationReynolds.stream()
                .map(r -> new CoefficientGrid(spacing, nodes))
                .toList();
        for (int i = 0; i < nodes; i++) {
            for (int k = 0; k < grids.size(); k++) {
                double[] guess = k == 0 ? grids.get(0).onwardRad() : grids.get(k - 1).anglesRad;
                grids.get(k).solve(i, model, rotationReynolds.get(k), guess);
            }
        }
        return grids;
    }

    private double[] onwardRad() {
        double[] onward = new double[anglesRad.length];
        for (int i = 0; i < onward.length; i++) {
            onward[i] = 2 * anglesRad[i] - beforeRad[i];
        }
        return onward;
    }

    private void solve(int node, BladeElementModel model, double rotationReynolds, double[] guessRad) {
        double[] found = guessRad.clone();
        PropellerCoefficients solved = model.at(node * spacing, rotationReynolds, found);
        thrusts[node] = solved.thrust();
        powers[node] = solved.power();
        beforeRad = node == 0 ? found : anglesRad;
        anglesRad = found;
    }

    /**
     * CT and CP. Past the last node both go with {@code J²}: a propeller that the wind drives then
     * brakes by airspeed alone, whatever its rotation.
     */
    PropellerCoefficients at(double advanceRatio) {
        double end = greatestAdvanceRatio();
        if (advanceRatio > end) {
            double growth = (advanceRatio / end) * (advanceRatio / end);
            return new PropellerCoefficients(growth * thrusts[thrusts.length - 1], growth * powers[powers.length - 1]);
        }
        double place = advanceRatio / spacing;
        return new PropellerCoefficients(EvenCubic.at(thrusts, place), EvenCubic.at(powers, place));
    }

    /** Advance ratio of the last node. */
    double greatestAdvanceRatio() {
        return spacing * (thrusts.length - 1);
    }
}
