package trestle.massbalance;

/** The mean aerodynamic chord of one straight-edged panel, [2]. */
final class MeanChord {
    private MeanChord() {}

    /**
     * Length of the mean chord: {@code (2/3) (cr² + cr ct + ct²) / (cr + ct)}.
     *
     * @param rootChordM chord at the inner end, m, above 0
     * @param tipChordM chord at the outer end, m, 0 or more
     * @return mean aerodynamic chord, m
     */
    static double lengthM(double rootChordM, double tipChordM) {
        return 2.0
                / 3
                * (rootChordM * rootChordM + rootChordM * tipChordM + tipChordM * tipChordM)
                / (rootChordM + tipChordM);
    }

    /**
     * Where along the panel it lies: {@code (cr + 2 ct) / (3 (cr + ct))}.
     *
     * @param rootChordM chord at the inner end, m, above 0
     * @param tipChordM chord at the outer end, m, 0 or more
     * @return share of the panel's span from its inner end, 1/3 to 2/3
     */
    static double spanFraction(double rootChordM, double tipChordM) {
        return (rootChordM + 2 * tipChordM) / (3 * (rootChordM + tipChordM));
    }
}
