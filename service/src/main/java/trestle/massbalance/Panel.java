package trestle.massbalance;

import trestle.numeric.Guard;

/**
 * A straight-edged panel of a half wing.
 *
 * @param rootChordM chord at its inner end, m, above 0
 * @param tipChordM chord at its outer end, m, 0 or more
 * @param spanM length from inner to outer end, along the panel, m, above 0
 * @param sweepM how far the leading edge at the outer end lies aft of that at the inner end, m
 * @param dihedralRad slope upwards to the outer end, rad, within ±80°: steeper is a fin
 */
public record Panel(double rootChordM, double tipChordM, double spanM, double sweepM, double dihedralRad) {
    private static final double STEEPEST_RAD = Math.toRadians(80);

    /** Checks the physics. */
    public Panel {
        Guard.positive("rootChordM", rootChordM);
        Guard.notNegative("tipChordM", tipChordM);
        Guard.positive("spanM", spanM);
        Guard.finite("sweepM", sweepM);
        Guard.within("dihedralRad", dihedralRad, -STEEPEST_RAD, STEEPEST_RAD);
    }

    /**
     * Span seen from above.
     *
     * @return span times the cosine of the dihedral, m
     */
    public double projectedSpanM() {
        return spanM * Math.cos(dihedralRad);
    }
}
