package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** The neutral point against our own vortex lattice: reference/neutral-point/README.md. */
class NeutralPointCrossCheckTest {
    private static final Planform WING = Planform.of(
            new Wing(List.of(new Panel(0.31, 0.31, 0.7, 0, 0), new Panel(0.31, 0.19, 0.7, 0.045, 0)), 0.43));
    private static final double LEVER_M = 1.48 - WING.quarterMacArmM();

    /** MG18 and MG19: ideal sections, no wake. The worst is the large tail above the wing, 0.89 %. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/neutral-point/lattice.csv", numLinesToSkip = 1)
    void theFormulaIsWithinNineTenthsOfAPercentOfTheLattice(
            double areaDm2, double spanMm, double heightMm, double shiftPercent) {
        assertThat(formulaPercent(areaDm2, spanMm, heightMm))
                .isCloseTo(shiftPercent, within(heightMm == 0 ? 0.8 : 0.9));
    }

    /** MG18 with the slopes of the lattice itself, as its row at no height tells them: what is left is the height. */
    @ParameterizedTest
    @CsvSource({
        "23.45, 0.325, 150, 24.16",
        "23.45, 0.325, 300, 25.11",
        "23.45, 0.325, 450, 26.16",
        "36.21, 0.325, 150, 37.35"
    })
    void theHeightOfTheTailIsWithinThreeTenthsOfAPercentOfTheLattice(
            double level, double downwash, double heightMm, double shiftPercent) {
        double leverPercent = 100 * LEVER_M / WING.meanAerodynamicChordM();
        double ratio = level / (leverPercent - level);
        double above = LiftSlope.downwashGradient(
                downwash * Math.PI * WING.aspectRatio() / 2, WING.aspectRatio(), heightMm / 2800);
        double risen = ratio * (1 - above) / (1 - downwash);
        assertThat(PitchStability.shiftM(risen, leverPercent, 0)).isCloseTo(shiftPercent, within(0.3));
    }

    /** The lattice's own downwash gradient, to the 0.01 that the law was fitted to. */
    @ParameterizedTest
    @CsvSource({"150, 0.303", "300, 0.273", "450, 0.241"})
    void theDownwashFallsOffAsInTheLattice(double heightMm, double gradient) {
        double slope = 0.325 * Math.PI * WING.aspectRatio() / 2;
        assertThat(LiftSlope.downwashGradient(slope, WING.aspectRatio(), heightMm / 2800))
                .isCloseTo(gradient, within(0.01));
    }

    /** MG19: closed form, two decimals. */
    @ParameterizedTest
    @CsvSource({"9.6, 800, 23.61", "16, 1000, 36.98", "9, 600, 18.67"})
    void theFormulaGivesItsOwnClosedForm(double areaDm2, double spanMm, double shiftPercent) {
        assertThat(formulaPercent(areaDm2, spanMm, 0)).isCloseTo(shiftPercent, within(5e-3));
    }

    private static double formulaPercent(double areaDm2, double spanMm, double heightMm) {
        double areaM2 = areaDm2 / 100;
        double spanM = spanMm / 1000;
        double wingSlope = LiftSlope.perRad(WING.aspectRatio(), WING.halfChordSweepTangent(), 1);
        double tailSlope = LiftSlope.perRad(spanM * spanM / areaM2, 0, 1);
        double downwash = LiftSlope.downwashGradient(wingSlope, WING.aspectRatio(), heightMm / 1000 / WING.spanM());
        double ratio = PitchStability.tailLiftRatio(1, areaM2 / WING.areaM2(), tailSlope / wingSlope, downwash);
        return 100 * PitchStability.shiftM(ratio, LEVER_M, 0) / WING.meanAerodynamicChordM();
    }
}
