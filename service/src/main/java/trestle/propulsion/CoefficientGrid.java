package trestle.propulsion;

import trestle.numeric.EvenCubic;

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
