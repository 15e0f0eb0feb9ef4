package trestle.massbalance;

/**
 * A wing seen from above.
 *
 * @param areaM2 area of both halves, m²
 * @param spanM span, m
 * @param aspectRatio span squared over area
 * @param meanAerodynamicChordM mean aerodynamic chord (MAC), m
 * @param macLeadingEdgeArmM leading edge of the MAC, m aft of the datum
 * @param macLateralM distance of the MAC from the plane of symmetry, m
 * @param halfChordSweepTangent tangent of the sweep of the half-chord line, area-weighted
 */
public record Planform(
        double areaM2,
        double spanM,
        double aspectRatio,
        double meanAerodynamicChordM,
        double macLeadingEdgeArmM,
        double macLateralM,
        double halfChordSweepTangent) {
    private static final double QUARTER = 0.25;

    /**
     * Adds up the panels: each quantity of the mean chord is the area-weighted mean of the panels',
     * [2]. Dihedral shortens a panel's span by its cosine.
     *
     * @param wing the wing
     * @return its planform
     */
    public static Planform of(Wing wing) {
        double halfArea = 0;
        double halfSpan = 0;
        double chordMoment = 0;
        double leadingEdgeMoment = 0;
        double lateralMoment = 0;
        double sweepMoment = 0;
        double panelLeadingEdgeM = wing.rootLeadingEdgeArmM();
        for (Panel panel : wing.panels()) {
            double root = panel.rootChordM();
            double tip = panel.tipChordM();
            double span = panel.projectedSpanM();
            double area = span * (root + tip) / 2;
            double station = MeanChord.spanFraction(root, tip);
            chordMoment += area * MeanChord.lengthM(root, tip);
            leadingEdgeMoment += area * (panelLeadingEdgeM + station * panel.sweepM());
            lateralMoment += area * (halfSpan + station * span);
            sweepMoment += area * (panel.sweepM() + (tip - root) / 2) / span;
            halfArea += area;
            halfSpan += span;
            panelLeadingEdgeM += panel.sweepM();
        }
        double areaM2 = 2 * halfArea;
        double spanM = 2 * halfSpan;
        return new Planform(
                areaM2,
                spanM,
                spanM * spanM / areaM2,
                chordMoment / halfArea,
                leadingEdgeMoment / halfArea,
                lateralMoment / halfArea,
                sweepMoment / halfArea);
    }

    /**
     * An arm as a share of the MAC.
     *
     * @param armM arm, m
     * @return 0 at its leading edge, 1 at its trailing edge
     */
    public double macFraction(double armM) {
        return (armM - macLeadingEdgeArmM) / meanAerodynamicChordM;
    }

    /**
     * The arm of a share of the MAC.
     *
     * @param macFraction 0 at its leading edge, 1 at its trailing edge
     * @return arm, m
     */
    public double armM(double macFraction) {
        return macLeadingEdgeArmM + macFraction * meanAerodynamicChordM;
    }

    /**
     * The aerodynamic centre of the wing alone.
     *
     * @return arm of the quarter MAC, m
     */
    public double quarterMacArmM() {
        return armM(QUARTER);
    }
}
