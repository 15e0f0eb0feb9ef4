package trestle.structure;

/**
 * What twists the wing.
 *
 * @param momentCoefficient of the section at no lift
 * @param sparFraction of the chord at which the spar stands
 * @param aileronDeg deflection down, degrees
 * @param aileronFromM inner end, m
 * @param aileronToM outer end, m
 */
public record TorsionMoments(
        double momentCoefficient, double sparFraction, double aileronDeg, double aileronFromM, double aileronToM) {
    /** Change of moment coefficient per degree of down aileron: CS-VLA 349(b), from memory. */
    private static final double PER_DEGREE = -0.01;

    /** Centre of mass of the wing over the chord; an assumption. */
    private static final double MASS_FRACTION = 0.42;

    double perLength(HalfWing wing, double y, double dynamicPa, double liftNPerM, double weightNPerM) {
        double chord = wing.chordM(y);
        double coefficient = momentCoefficient + (y >= aileronFromM && y <= aileronToM ? PER_DEGREE * aileronDeg : 0);
        return dynamicPa * chord * chord * coefficient
                + liftNPerM * (sparFraction - 0.25) * chord
                + weightNPerM * (MASS_FRACTION - sparFraction) * chord;
    }
}
