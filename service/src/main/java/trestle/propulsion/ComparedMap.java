package trestle.propulsion;

import java.util.OptionalDouble;

/**
 * A modelled propeller that takes another power, and another rotation, at each thrust and airspeed than its model: with n
 * the modelled rotation it turns r n and takes p P. So {@code CT'(J) = CT(rJ) / r²} and {@code CP'(J) = p CP(rJ) / r³},
 * which follows from the definitions of the coefficients; no power is below what momentum theory [4] asks for the thrust.
 *
 * @param modelled the map of the model
 * @param powerRatio p, above 0
 * @param rotationRatio r, above 0
 */
record ComparedMap(PropellerMap modelled, double powerRatio, double rotationRatio) implements PropellerMap {

    @Override
    public PropellerCoefficients at(double advanceRatio, double revPerS) {
        PropellerCoefficients bare = modelled.at(advanceRatio * rotationRatio, revPerS / rotationRatio);
        double thrust = bare.thrust() / (rotationRatio * rotationRatio);
        double power = powerRatio * bare.power() / (rotationRatio * rotationRatio * rotationRatio);
        return new PropellerCoefficients(thrust, Math.max(power, leastPower(thrust, advanceRatio)));
    }

    private static double leastPower(double thrust, double advanceRatio) {
        return thrust > 0 && advanceRatio > 0
                ? thrust * advanceRatio / new PropellerCoefficients(thrust, 0).idealEfficiency(advanceRatio)
                : Double.NEGATIVE_INFINITY;
    }

    @Override
    public double greatestAdvanceRatio() {
        return modelled.greatestAdvanceRatio() / rotationRatio;
    }

    @Override
    public OptionalDouble leastMeasuredAdvanceRatio() {
        return modelled.leastMeasuredAdvanceRatio();
    }
}
