package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;

/**
 * The blade-element model, solved once over advance ratio at two rotations, then read.
 *
 * <p>At one advance ratio rotation enters through profile drag alone, so between the two (and a
 * little below) coefficients go in a straight line with the profile drag at 75 % radius.
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

    private final BladeElementModel model;
    private final double reynoldsPerRevPerS;
    private final CoefficientGrid fast;
    private final CoefficientGrid slow;
    private final double fastDrag;
    private final double slowDrag;

    private BladeElementMap(
            BladeElementModel model, double reynoldsPerRevPerS, double fastestRevPerS) {
        this.model = model;
        this.reynoldsPerRevPerS = reynoldsPerRevPerS;
        double spacing = REACH * model.noLiftAdvanceRatio() / (NODES - 1);
        double fastReynolds = reynoldsPerRevPerS * fastestRevPerS;
        double slowReynolds = SLOW_RATIO * fastReynolds;
        fast = new CoefficientGrid(model, fastReynolds, spacing, NODES);
        slow = new CoefficientGrid(model, slowReynolds, spacing, NODES);
        fastDrag = model.referenceDrag(fastReynolds);
        slowDrag = model.referenceDrag(slowReynolds);
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
        if (slowDrag == fastDrag) {
            return atFast;
        }
        PropellerCoefficients atSlow = slow.at(advanceRatio);
        double slowness =
                (model.referenceDrag(reynoldsPerRevPerS * revPerS) - fastDrag)
                        / (slowDrag - fastDrag);
        return new PropellerCoefficients(
                atFast.thrust() + slowness * (atSlow.thrust() - atFast.thrust()),
                atFast.power() + slowness * (atSlow.power() - atFast.power()));
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
