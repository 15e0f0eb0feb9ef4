package trestle.propulsion;

import java.util.OptionalDouble;

/**
 * A modelled propeller with thrust and power multiplied so as to meet a measurement.
 *
 * @param modelled the map to scale
 * @param thrustRatio measured over modelled thrust
 * @param powerRatio measured over modelled power
 */
record ScaledMap(PropellerMap modelled, double thrustRatio, double powerRatio) implements PropellerMap {

    /** The map that meets a static test of this propeller. */
    static ScaledMap meeting(StaticTest test, Propeller propeller, PropellerMap modelled) {
        PropellerCoefficients measured = test.coefficients(propeller.diameterM());
        PropellerCoefficients expected = expected(test, propeller);
        return new ScaledMap(modelled, measured.thrust() / expected.thrust(), measured.power() / expected.power());
    }

    /** What the model alone expects of a static test. */
    static PropellerCoefficients expected(StaticTest test, Propeller propeller) {
        return BladeElementModel.of(propeller)
                .at(
                        0,
                        BladeElementModel.rotationReynolds(
                                propeller.diameterM(), test.air(), test.rotationRadPerS() / (2 * Math.PI)));
    }

    @Override
    public PropellerCoefficients at(double advanceRatio, double revPerS) {
        PropellerCoefficients bare = modelled.at(advanceRatio, revPerS);
        return new PropellerCoefficients(thrustRatio * bare.thrust(), powerRatio * bare.power());
    }

    @Override
    public double greatestAdvanceRatio() {
        return modelled.greatestAdvanceRatio();
    }

    @Override
    public OptionalDouble leastMeasuredAdvanceRatio() {
        return modelled.leastMeasuredAdvanceRatio();
    }
}
