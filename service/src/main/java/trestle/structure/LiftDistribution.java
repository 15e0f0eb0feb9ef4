package trestle.structure;

import java.util.List;

/** How lift is spread along the span. */
public enum LiftDistribution {
    /** Half as the chord, half as an ellipse: O. Schrenk, NACA TM 948, 1940. */
    SCHRENK,
    /** As an ellipse. */
    ELLIPTIC;

    /**
     * Lift per length of a whole lift of 1: {@code c_S / S}, {@code c_S = ½ [c + 4 S / (π b) sqrt(1 − (2y/b)²)]}.
     *
     * @param wing the wing
     * @param lateralM y, 0 to the half span, m
     * @return 1/m
     */
    public double perLength(HalfWing wing, double lateralM) {
        double half = wing.halfSpanM();
        double ellipse = 2 / (Math.PI * half) * Math.sqrt(Math.max(0, 1 - lateralM * lateralM / (half * half)));
        return this == ELLIPTIC ? ellipse : (wing.chordM(lateralM) / wing.areaM2() + ellipse) / 2;
    }

    /**
     * Where the lift of a half wing stands.
     *
     * @param wing the wing
     * @return from the plane of symmetry, m
     */
    public double centroidM(HalfWing wing) {
        double[] at = Beam.stations(wing.halfSpanM(), List.of());
        Beam beam = Beam.of(at, y -> perLength(wing, y), List.of());
        return beam.bendingNm(0) / beam.shearN(0);
    }
}
