package trestle.structure;

import trestle.numeric.Guard;

/**
 * A straight-edged panel of a half wing, seen from above.
 *
 * @param rootChordM inner chord, m, above 0
 * @param tipChordM outer chord, m, 0 or more
 * @param spanM span seen from above, m, above 0
 * @param sweepM how far the outer leading edge lies aft of the inner, m
 * @param massKg its own mass without payload, kg; 0 where not given
 */
public record WingPanel(double rootChordM, double tipChordM, double spanM, double sweepM, double massKg) {
    /** Checks the physics. */
    public WingPanel {
        Guard.positive("rootChordM", rootChordM);
        Guard.notNegative("tipChordM", tipChordM);
        Guard.positive("spanM", spanM);
        Guard.finite("sweepM", sweepM);
        Guard.notNegative("massKg", massKg);
    }

    double areaM2() {
        return spanM * (rootChordM + tipChordM) / 2;
    }

    double chordM(double within) {
        return rootChordM + (tipChordM - rootChordM) * within / spanM;
    }
}
