package trestle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Medians of the fitted rules, worked from their constants, and makers' sheets that the bands must contain (figures of
 * four outrunners as their sheets state them, second hand).
 */
class PartRulesReferenceTest {
    private static final Percentage PRINTED = Percentage.withPercentage(0.3);

    @Test
    void aMotorByItsMass() {
        assertThat(MotorRules.resistanceOfMass(450, 200)).isCloseTo(0.0652, PRINTED);
        assertThat(MotorRules.noLoadOfMass(450, 200)).isCloseTo(0.8875, PRINTED);
        assertThat(MotorRules.maxCurrentOfMass(450, 200)).isCloseTo(39.33, PRINTED);
        assertThat(MotorRules.resistanceOfMass(320, 450)).isCloseTo(0.0352, PRINTED);
        assertThat(MotorRules.noLoadOfMass(320, 450)).isCloseTo(1.324, PRINTED);
        assertThat(MotorRules.maxCurrentOfMass(320, 450)).isCloseTo(71.5, PRINTED);
    }

    @Test
    void aMotorByItsRatings() {
        assertThat(MotorRules.resistanceOfCurrent(450, 35)).isCloseTo(0.0753, PRINTED);
        assertThat(MotorRules.massOfPower(800)).isCloseTo(168.5, PRINTED);
        assertThat(MotorRules.massOfPower(1500)).isCloseTo(285.8, PRINTED);
        assertThat(MotorRules.massOfPowerAndSpeed(1500, 450)).isCloseTo(275.8, PRINTED);
    }

    /** Speed constant, mass, stated resistance and no-load current; the band is P10 to P90, wider for the second. */
    @ParameterizedTest
    @CsvSource({
        "710, 57, 0.345, 0.40, 1.3",
        "660, 320, 0.041, 2.0, 1.05",
        "205, 630, 0.048, 1.9, 0.6",
        "535, 560, 0.009, 2.4, 1.2",
    })
    void makersSheetsLieAsFarOffAsTheScatterSays(
            double rpmPerV, double massG, double resistanceOhm, double noLoadA, double deviations) {
        double off = Math.log(resistanceOhm / MotorRules.resistanceOfMass(rpmPerV, massG)) / 0.50;
        assertThat(Math.abs(off)).isLessThan(deviations);
        assertThat(Math.abs(Math.log(noLoadA / MotorRules.noLoadOfMass(rpmPerV, massG)) / 0.60))
                .isLessThan(Spread.Z90);
    }

    @Test
    void aController() {
        assertThat(ControllerRules.massG(40, 22.2)).isCloseTo(39.7, PRINTED);
        assertThat(ControllerRules.massG(80, 44.4)).isCloseTo(96.3, PRINTED);
        assertThat(ControllerRules.massG(120, 51.8)).isCloseTo(148, Percentage.withPercentage(0.4));
        assertThat(ControllerRules.resistanceOhm(80).median()).isCloseTo(0.003125, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"13, 35.7", "15, 50.0", "18, 76.9", "22, 123.5"})
    void aPropellersMass(double diameterIn, double massG) {
        assertThat(PropellerRules.massG(diameterIn).median()).isCloseTo(massG, PRINTED);
    }

    /** A printed 65C pouch of 4.7 Ah showed 4.5 mΩ (P. Kollmeyer et al., doi 10.17632/4fx8cjprxm.1). */
    @Test
    void aMeasuredPouchLiesInTheBandOfItsPrintedRating() {
        Spread spread = CellRules.pouchResistanceOhm(65, 4.7);
        assertThat(0.0045).isBetween(spread.low(), spread.high());
    }
}
