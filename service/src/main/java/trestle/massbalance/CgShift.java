package trestle.massbalance;

/** How moving or adding mass moves the CG, [1] chapters 2 and 7. */
final class CgShift {
    private CgShift() {}

    /**
     * CG shift from moving a mass: {@code Δx = mi d / m}.
     *
     * @param movedMassKg mass moved, kg, above 0
     * @param byM how far, m, aft positive
     * @param totalMassKg mass of the aircraft, kg, above 0
     * @return shift of the CG, m, aft positive
     */
    static double byMovingM(double movedMassKg, double byM, double totalMassKg) {
        return movedMassKg * byM / totalMassKg;
    }

    /**
     * How far to move a mass to shift the CG: {@code d = m Δx / mi}.
     *
     * @param movedMassKg mass moved, kg, above 0
     * @param cgShiftM wanted shift of the CG, m, aft positive
     * @param totalMassKg mass of the aircraft, kg, above 0
     * @return move, m, aft positive
     */
    static double moveForM(double movedMassKg, double cgShiftM, double totalMassKg) {
        return totalMassKg * cgShiftM / movedMassKg;
    }

    /**
     * Mass that brings the CG to a target: {@code mb = m (xt − x) / (xb − xt)}.
     *
     * @param totalMassKg mass of the aircraft without it, kg, above 0
     * @param cgArmM CG without it, m
     * @param targetArmM target, m
     * @param ballastArmM where it goes, m, not at the target
     * @return mass, kg; below 0 where mass would have to be taken away there
     */
    static double ballastKg(double totalMassKg, double cgArmM, double targetArmM, double ballastArmM) {
        return totalMassKg * (targetArmM - cgArmM) / (ballastArmM - targetArmM);
    }
}
