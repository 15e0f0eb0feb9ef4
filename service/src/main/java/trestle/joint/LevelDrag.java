package trestle.joint;

import java.util.OptionalDouble;
import trestle.flight.DragPolar;
import trestle.flight.LevelFlight;
import trestle.numeric.Guard;
import trestle.propulsion.DragCurve;

/**
 * Drag of level flight from a polar, as what the drive must hold.
 *
 * @param polar drag polar on the wing area
 * @param massKg take-off mass, kg, above 0
 * @param wingAreaM2 wing area, m², above 0
 * @param densityKgPerM3 density of the air, kg/m³, above 0
 */
public record LevelDrag(DragPolar polar, double massKg, double wingAreaM2, double densityKgPerM3) implements DragCurve {
    /** Checks the physics. */
    public LevelDrag {
        Guard.present("polar", polar);
        Guard.positive("massKg", massKg);
        Guard.positive("wingAreaM2", wingAreaM2);
        Guard.positive("densityKgPerM3", densityKgPerM3);
    }

    @Override
    public double dragN(double airspeedMPerS) {
        return LevelFlight.dragN(polar, massKg, wingAreaM2, densityKgPerM3, airspeedMPerS);
    }

    @Override
    public OptionalDouble liftCoefficient(double airspeedMPerS) {
        double pressurePa = LevelFlight.dynamicPressurePa(densityKgPerM3, airspeedMPerS);
        return OptionalDouble.of(LevelFlight.liftCoefficient(massKg, wingAreaM2, pressurePa));
    }
}
