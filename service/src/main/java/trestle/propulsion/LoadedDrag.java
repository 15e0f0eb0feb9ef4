package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * Drag that is known at one airspeed, of an aircraft whose weight and wing are known beside it.
 *
 * @param drag drag over airspeed
 * @param weightN weight W, N, above 0
 * @param wingAreaM2 wing area S, m², above 0
 * @param densityKgPerM3 density of the air ρ, kg/m³, above 0
 */
public record LoadedDrag(DragCurve drag, double weightN, double wingAreaM2, double densityKgPerM3)
        implements DragCurve {
    /** Checks the physics. */
    public LoadedDrag {
        Guard.present("drag", drag);
        Guard.positive("weightN", weightN);
        Guard.positive("wingAreaM2", wingAreaM2);
        Guard.positive("densityKgPerM3", densityKgPerM3);
    }

    @Override
    public double dragN(double airspeedMPerS) {
        return drag.dragN(airspeedMPerS);
    }

    /** {@code C_L = 2 W / (ρ V² S)}. */
    @Override
    public OptionalDouble liftCoefficient(double airspeedMPerS) {
        return OptionalDouble.of(2 * weightN / (densityKgPerM3 * airspeedMPerS * airspeedMPerS * wingAreaM2));
    }

    @Override
    public boolean holdsInSlowFlight() {
        return drag.holdsInSlowFlight();
    }
}
