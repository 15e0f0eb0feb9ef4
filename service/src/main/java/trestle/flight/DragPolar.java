package trestle.flight;

import trestle.numeric.Guard;

/**
 * A parabolic drag polar: {@code C_D = C_Dmin + K (C_L − C_L0)²}, [1] section 6.1.
 *
 * @param leastDragCoefficient least drag coefficient of the whole aircraft, above 0
 * @param inducedFactor {@code K = 1 / (π e A)}, above 0
 * @param liftCoefficientAtLeastDrag {@code C_L0}; 0 for the plain polar
 */
public record DragPolar(double leastDragCoefficient, double inducedFactor, double liftCoefficientAtLeastDrag) {
    /** Checks the physics. */
    public DragPolar {
        Guard.positive("leastDragCoefficient", leastDragCoefficient);
        Guard.positive("inducedFactor", inducedFactor);
        Guard.within("liftCoefficientAtLeastDrag", liftCoefficientAtLeastDrag, -1, 1.5);
    }

    /**
     * The plain polar from Oswald's efficiency.
     *
     * @param zeroLiftCoefficient drag coefficient at no lift, above 0
     * @param oswaldEfficiency Oswald's span efficiency of the whole aircraft, above 0
     * @param aspectRatio span² over area, above 0
     * @return the polar
     */
    public static DragPolar of(double zeroLiftCoefficient, double oswaldEfficiency, double aspectRatio) {
        Guard.positive("oswaldEfficiency", oswaldEfficiency);
        Guard.positive("aspectRatio", aspectRatio);
        return new DragPolar(zeroLiftCoefficient, 1 / (Math.PI * oswaldEfficiency * aspectRatio), 0);
    }

    /**
     * Drag coefficient at a lift coefficient.
     *
     * @param liftCoefficient lift coefficient
     * @return drag coefficient
     */
    public double dragCoefficient(double liftCoefficient) {
        double fromLeast = liftCoefficient - liftCoefficientAtLeastDrag;
        return leastDragCoefficient + inducedFactor * fromLeast * fromLeast;
    }

    /**
     * Lift coefficient of the flattest glide, where {@code C_L / C_D} is greatest: {@code
     * sqrt(C_Dmin / K + C_L0²)}.
     *
     * @return lift coefficient
     */
    public double bestGlideLiftCoefficient() {
        return Math.sqrt(
                leastDragCoefficient / inducedFactor + liftCoefficientAtLeastDrag * liftCoefficientAtLeastDrag);
    }

    /**
     * Lift coefficient of least sink and least thrust power, where {@code C_L^1.5 / C_D} is
     * greatest: {@code −C_L0 + sqrt(4 C_L0² + 3 C_Dmin / K)}; {@code sqrt(3 C_D0 / K)} for the
     * plain polar.
     *
     * @return lift coefficient
     */
    public double leastPowerLiftCoefficient() {
        return -liftCoefficientAtLeastDrag
                + Math.sqrt(4 * liftCoefficientAtLeastDrag * liftCoefficientAtLeastDrag
                        + 3 * leastDragCoefficient / inducedFactor);
    }
}
