package trestle.survey;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

/** Turns from one line to the next. */
final class Turns {
    private Turns() {}

    /**
     * Radius at a ground speed and a bank: {@code V² / (g tan φ)}.
     *
     * @param groundMPerS ground speed, m/s
     * @param bankRad bank, rad, above 0
     * @return radius, m
     */
    static double radiusM(double groundMPerS, double bankRad) {
        return groundMPerS * groundMPerS / (GRAVITY_M_PER_S2 * Math.tan(bankRad));
    }

    /**
     * Way of a turn back to a line beside. Two radii apart or more: two quarter turns and a straight between. Closer: out,
     * round and back in, three tangent arcs of one radius, {@code R (π + 4 α)}, {@code cos α = (R + d/2) / 2R}.
     *
     * @param besideM distance of the lines, m, 0 or more
     * @param radiusM radius, m, above 0
     * @return way, m
     */
    static double wayM(double besideM, double radiusM) {
        if (besideM >= 2 * radiusM) {
            return Math.PI * radiusM + besideM - 2 * radiusM;
        }
        return radiusM * (Math.PI + 4 * awayRad(besideM, radiusM));
    }

    /** How far a close turn first goes to the other side: {@code α}, rad. */
    static double awayRad(double besideM, double radiusM) {
        return Math.acos((radiusM + besideM / 2) / (2 * radiusM));
    }
}
