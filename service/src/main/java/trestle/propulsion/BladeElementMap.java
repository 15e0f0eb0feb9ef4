package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;

/**
 * The blade-element model, solved once on a grid of advance ratio and two rotations, then read.
 *
 * <p>Over advance ratio: cubic through the neighbours. Over rotation: at one advance ratio it
 * enters only through profile drag, which goes with {@code n^m}; so a straight line in {@code n^m}.
 */
final class BladeElementMap implements PropellerMap {
    /** Grid in advance ratio: within 0.3 % of the full model, see the test. */
    private static final int NODES = 33;

    /** Slower grid line over the faster one; below it the straight line goes on. */
    private static final double SLOW_RATIO = 0.4;

    /**
     * Last node over the advance ratio of no lift at 75 % radius: there every propeller is driven
     * by the wind.
     */
    private static final double REACH = 1.3;

    private final double spacing;
    private final double fastestRevPerS;
    private final double reynoldsExponent;
    private final double slowWeight;
    private final double[] fastThrusts;
    private final double[] fastPowers;
    private final double[] slowThrusts;
    private final double[] slowPowers;
    private final double thrustScale;
    private final double powerScale;

    private BladeElementMap(
            double spacing,
            double fastestRevPerS,
            double reynoldsExponent,
            double[][] grid,
            double thrustScale,
            double powerScale) {
        this.spacing = spacing;
        this.fastestRevPerS = fastestRevPerS;
        this.reynoldsExponent = reynoldsExponent;
        slowWeight = 1 / (Math.pow(SLOW_RATIO, reynoldsExponent) - 1);
        fastThrusts = grid[0];
        fastPowers = grid[1];
        slowThrusts = grid[2];
        slowPowers = grid[3];
        this.thrustScale = thrustScale;
        this.powerScale = powerScale;
    }

    static BladeElementMap of(Propeller propeller, AirState air, double fastestRevPerS) {
        BladeElementModel model = model(propeller);
        double spacing = REACH * model.noLiftAdvanceRatio() / (NODES - 1);
        double fastReynolds = rotationReynolds(propeller, air, fastestRevPerS);
        double[][] grid = new double[4][NODES];
        for (int i = 0; i < NODES; i++) {
            PropellerCoefficients fast = model.at(i * spacing, fastReynolds);
            PropellerCoefficients slow = model.at(i * spacing, SLOW_RATIO * fastReynolds);
            grid[0][i] = fast.thrust();
            grid[1][i] = fast.power();
            grid[2][i] = slow.thrust();
            grid[3][i] = slow.power();
        }
        return new BladeElementMap(
                spacing, fastestRevPerS, propeller.bladeType().reynoldsExponent(), grid, 1, 1);
    }

    /** The same map with thrust and power multiplied so as to meet a static test. */
    BladeElementMap scaled(StaticTest test, Propeller propeller) {
        PropellerCoefficients measured = test.coefficients(propeller.diameterM());
        PropellerCoefficients expected = expected(test, propeller);
        return new BladeElementMap(
                spacing,
                fastestRevPerS,
                reynoldsExponent,
                new double[][] {fastThrusts, fastPowers, slowThrusts, slowPowers},
                measured.thrust() / expected.thrust(),
                measured.power() / expected.power());
    }

    /** What the bare model expects of a static test. */
    static PropellerCoefficients expected(StaticTest test, Propeller propeller) {
        double revPerS = test.rotationRadPerS() / (2 * Math.PI);
        return model(propeller).at(0, rotationReynolds(propeller, test.air(), revPerS));
    }

    @Override
    public PropellerCoefficients at(double advanceRatio, double revPerS) {
        double place = Math.max(0, Math.min(NODES - 1, advanceRatio / spacing));
        int node = Math.min(NODES - 2, (int) place);
        double share = place - node;
        double slowness = slowWeight * (Math.pow(revPerS / fastestRevPerS, reynoldsExponent) - 1);
        return new PropellerCoefficients(
                thrustScale * read(fastThrusts, slowThrusts, node, share, slowness),
                powerScale * read(fastPowers, slowPowers, node, share, slowness));
    }

    @Override
    public double greatestAdvanceRatio() {
        return spacing * (NODES - 1);
    }

    @Override
    public OptionalDouble leastMeasuredAdvanceRatio() {
        return OptionalDouble.empty();
    }

    private static double read(
            double[] fast, double[] slow, int node, double share, double slowness) {
        double atFast = cubic(fast, node, share);
        return atFast + slowness * (cubic(slow, node, share) - atFast);
    }

    /** Cubic Hermite interpolation with central differences for slopes (Catmull and Rom). */
    private static double cubic(double[] values, int node, double share) {
        double from = values[node];
        double to = values[node + 1];
        double slopeFrom = node > 0 ? (to - values[node - 1]) / 2 : to - from;
        double slopeTo = node < NODES - 2 ? (values[node + 2] - from) / 2 : to - from;
        double bend = slopeFrom + slopeTo - 2 * (to - from);
        double curve = to - from - slopeFrom - bend;
        return from + share * (slopeFrom + share * (curve + share * bend));
    }

    private static BladeElementModel model(Propeller propeller) {
        return new BladeElementModel(
                propeller.diameterM(),
                propeller.pitchM(),
                propeller.bladeCount(),
                propeller.bladeType());
    }

    private static double rotationReynolds(Propeller propeller, AirState air, double revPerS) {
        return air.densityKgPerM3()
                * revPerS
                * propeller.diameterM()
                * propeller.diameterM()
                / air.viscosityPaS();
    }
}
