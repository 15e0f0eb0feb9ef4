package trestle.propulsion;

import java.util.List;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;

/**
 * The blade-element model, solved once over advance ratio at two rotations, then read.
 *
 * <p>At one advance ratio rotation enters through profile drag alone, so between the two (and a
 * little below) coefficients go in a straight line with the drag of the blade, which is tabulated
 * too.
 */
final class BladeElementMap implements PropellerMap {
    /**
     * Grid in advance ratio: thrust within 0.2 %, power within 1.2 % of the model, see the test.
     */
    private static final int NODES = 25;

    /** Slower grid over faster one. */
    private static final double SLOW_RATIO = 0.4;

    /** Last node over the advance ratio of no lift at 75 % radius: the wind drives all by then. */
    private static final double REACH = 1.3;

    /** Grid in rotation from none to the fastest. */
    private static final int ROTATIONS = 65;

    private final double fastestRevPerS;
    private final CoefficientGrid fast;
    private final CoefficientGrid slow;

    /** Where between the fast grid (0) and the slow one (1) each rotation stands. */
    private final double[] slowness = new double[ROTATIONS];

    private BladeElementMap(BladeElementModel model, double reynoldsPerRevPerS, double fastestRevPerS) {
        this.fastestRevPerS = fastestRevPerS;
        double spacing = REACH * model.noLiftAdvanceRatio() / (NODES - 1);
        double fastReynolds = reynoldsPerRevPerS * fastestRevPerS;
        double slowReynolds = SLOW_RATIO * fastReynolds;
        List<CoefficientGrid> grids = CoefficientGrid.of(model, List.of(fastReynolds, slowReynolds), spacing, NODES);
        fast = grids.get(0);
        slow = grids.get(1);
        double fastDrag = model.bladeDrag(fastReynolds);
        double rise = model.bladeDrag(slowReynolds) - fastDrag;
        for (int i = 0; i < ROTATIONS; i++) {
            double reynolds = fastReynolds * i / (ROTATIONS - 1);
            slowness[i] = rise == 0 ? 0 : (model.bladeDrag(reynolds) - fastDrag) / rise;
        }
    }

    static BladeElementMap of(Propeller propeller, AirState air, double fastestRevPerS) {
        return new BladeElementMap(
                BladeElementModel.of(propeller),
                BladeElementModel.rotationReynolds(propeller.diameterM(), air, 1),
                fastestRevPerS);
    }

    @Override
    public PropellerCoefficients at(double advanceRatio, double revPerS) {
        PropellerCoefficients atFast = fast.at(advanceRatio);
        PropellerCoefficients atSlow = slow.at(advanceRatio);
        double share = slowness(revPerS);
        return new PropellerCoefficients(
                atFast.thrust() + share * (atSlow.thrust() - atFast.thrust()),
                atFast.power() + share * (atSlow.power() - atFast.power()));
    }

    private double slowness(double revPerS) {
        double place = Math.max(0, Math.min(1, revPerS / fastestRevPerS)) * (ROTATIONS - 1);
        int node = Math.min(ROTATIONS - 2, (int) place);
        return slowness[node] + (place - node) * (slowness[node + 1] - slowness[node]);
    }

    @Override
    public double greatestAdvanceRatio() {
        return fast.greatestAdvanceRatio();
    }

    @Override
    public OptionalDouble leastMeasuredAdvanceRatio() {
        return OptionalDouble.empty();
    }
}
