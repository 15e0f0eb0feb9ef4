package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.numeric.Root;

/**
 * A modelled propeller that meets a static test: thrust and power are multiplied in full at rest, and less the
 * faster it flies, since what is wrong at rest says little of what is wrong in flight.
 *
 * <p>The multiplier is {@code 1 + (k - 1) (1 - (J / Je)²)}, from k at rest to 1 at {@code Je}, half of the advance
 * ratio at which the model's thrust ends, and 1 beyond. The exponent was chosen on the 26 propellers that the blade
 * constants were fitted to [2]: of 1, 1½, 2, 2½, 3 and 4 it comes within 0.03 % of the least error of shaft power at
 * a measured thrust, and thrust and power fall with it. Multipliers at every advance ratio made that error greater
 * in flight. No power is below what momentum theory [4] asks for the thrust.
 *
 * @param modelled the map to scale
 * @param thrustRatio measured over modelled thrust
 * @param powerRatio measured over modelled power
 * @param endAdvanceRatio Je, from which on the model stands alone
 */
record ScaledMap(PropellerMap modelled, double thrustRatio, double powerRatio, double endAdvanceRatio)
        implements PropellerMap {
    /** Where the test ends to count, over the advance ratio at which thrust ends. */
    private static final double END_RATIO = 0.5;

    private static final double ACCURACY_RATIO = 1e-6;

    /** The map that meets a static test of this propeller. */
    static ScaledMap meeting(
            StaticTest test, Propeller propeller, PropellerMap modelled, AirState air, double fastestRevPerS) {
        PropellerCoefficients measured = test.coefficients(propeller.diameterM());
        PropellerCoefficients expected = modelled.at(0, revPerS(test, air));
        return new ScaledMap(
                modelled,
                measured.thrust() / expected.thrust(),
                measured.power() / expected.power(),
                END_RATIO * zeroThrustAdvanceRatio(modelled, fastestRevPerS));
    }

    /** What the model alone expects of a static test. */
    static PropellerCoefficients expected(StaticTest test, Propeller propeller) {
        return BladeElementModel.of(propeller)
                .at(
                        0,
                        BladeElementModel.rotationReynolds(
                                propeller.diameterM(), test.air(), test.rotationRadPerS() / (2 * Math.PI)));
    }

    /** The rotation that has in the air of the flight the Reynolds numbers that the test had in its own, rev/s. */
    private static double revPerS(StaticTest test, AirState air) {
        double kinematicRatio =
                test.air().densityKgPerM3() / test.air().viscosityPaS() * air.viscosityPaS() / air.densityKgPerM3();
        return test.rotationRadPerS() / (2 * Math.PI) * kinematicRatio;
    }

    private static double zeroThrustAdvanceRatio(PropellerMap modelled, double revPerS) {
        double end = modelled.greatestAdvanceRatio();
        return Root.between(j -> modelled.at(j, revPerS).thrust(), 0, end, end * ACCURACY_RATIO)
                .orElse(end);
    }

    @Override
    public PropellerCoefficients at(double advanceRatio, double revPerS) {
        PropellerCoefficients bare = modelled.at(advanceRatio, revPerS);
        double along = advanceRatio / endAdvanceRatio;
        double share = Math.max(0, 1 - along * along);
        double thrust = (1 + share * (thrustRatio - 1)) * bare.thrust();
        double power = (1 + share * (powerRatio - 1)) * bare.power();
        return new PropellerCoefficients(thrust, Math.max(power, leastPower(thrust, advanceRatio, share)));
    }

    /** Power that momentum theory asks for a thrust in flight, as far as the test counts. */
    private static double leastPower(double thrust, double advanceRatio, double share) {
        return share > 0 && advanceRatio > 0 && thrust > 0
                ? thrust * advanceRatio / new PropellerCoefficients(thrust, 0).idealEfficiency(advanceRatio)
                : Double.NEGATIVE_INFINITY;
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
