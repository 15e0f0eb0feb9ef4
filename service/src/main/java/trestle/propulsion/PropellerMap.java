package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;

/** Thrust and power coefficient of one propeller, cheap to ask: tabulated once, then read. */
sealed interface PropellerMap permits BladeElementMap, ComparedMap, ScaledMap, MeasuredMap {

    /**
     * The coefficients.
     *
     * @param advanceRatio J, 0 or more; past the end of the map it is continued
     * @param revPerS rotation, rev/s, above 0
     * @return CT and CP
     */
    PropellerCoefficients at(double advanceRatio, double revPerS);

    /** Advance ratio past which the map only continues itself. */
    double greatestAdvanceRatio();

    /** Least advance ratio that was measured; empty for a model, which begins at rest. */
    OptionalDouble leastMeasuredAdvanceRatio();

    /**
     * The map of a propeller in an air.
     *
     * @param propeller the propeller
     * @param air the air it turns in
     * @param fastestRevPerS fastest rotation that will be asked for, rev/s
     * @return its map
     */
    static PropellerMap of(Propeller propeller, AirState air, double fastestRevPerS) {
        PropellerData data = propeller.data();
        if (data instanceof CoefficientTable table) {
            return MeasuredMap.of(table);
        }
        PropellerMap modelled = propeller.comparison().of(BladeElementMap.of(propeller, air, fastestRevPerS));
        return data instanceof StaticTest test
                ? ScaledMap.meeting(test, propeller, modelled, air, fastestRevPerS)
                : modelled;
    }
}
