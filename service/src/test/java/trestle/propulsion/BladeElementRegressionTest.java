package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.units.Length;

/**
 * Our own numbers: the same equations, written apart in another language with vectors and plain
 * halving, 5 printed decimals. A trip means look again.
 */
class BladeElementRegressionTest {
    @ParameterizedTest
    @CsvSource({
        "GENERAL,   11,  7, 2, 5000, 0.10559, 0.04885, 0.08051, 0.04727, 0.03395, 0.03224",
        "GENERAL,   16,  8, 2, 5000, 0.08710, 0.03368, 0.05649, 0.03112, 0.00857, 0.01534",
        "GENERAL,   10, 10, 2, 4000, 0.11003, 0.08730, 0.11699, 0.08914, 0.09400, 0.08331",
        "GENERAL,    9,  6, 3, 5000, 0.15307, 0.07886, 0.11675, 0.07504, 0.05434, 0.05329",
        "EFFICIENT, 11,  7, 2, 5000, 0.10786, 0.04185, 0.08115, 0.04180, 0.03324, 0.02625",
        "EFFICIENT, 16,  8, 2, 5000, 0.09248, 0.02947, 0.05851, 0.02720, 0.00693, 0.00815",
        "EFFICIENT, 10, 10, 2, 4000, 0.11359, 0.07950, 0.11951, 0.08143, 0.09573, 0.07801",
        "EFFICIENT,  9,  6, 3, 5000, 0.15182, 0.06723, 0.11480, 0.06554, 0.05228, 0.04376",
        "WIDE,      11,  7, 2, 5000, 0.14228, 0.07000, 0.11117, 0.06677, 0.05446, 0.04680",
        "WIDE,      16,  8, 2, 5000, 0.11595, 0.04703, 0.07754, 0.04234, 0.01858, 0.02171",
        "WIDE,      10, 10, 2, 4000, 0.14883, 0.12705, 0.16030, 0.13118, 0.13665, 0.12486",
        "WIDE,       9,  6, 3, 5000, 0.20370, 0.11166, 0.15859, 0.10464, 0.08387, 0.07579"
    })
    void coefficientsAgreeWithAnIndependentProgram(
            BladeType type,
            double diameterIn,
            double pitchIn,
            int blades,
            double rpm,
            double staticThrust,
            double staticPower,
            double slowThrust,
            double slowPower,
            double fastThrust,
            double fastPower) {
        double diameterM = Length.mFromIn(diameterIn);
        double reynolds = 1.225 * rpm / 60 * diameterM * diameterM / 1.81e-5;
        BladeElementModel model = new BladeElementModel(diameterM, Length.mFromIn(pitchIn), blades, type);
        agree(model.at(0, reynolds), staticThrust, staticPower);
        agree(model.at(0.3, reynolds), slowThrust, slowPower);
        agree(model.at(0.6, reynolds), fastThrust, fastPower);
    }

    private static void agree(PropellerCoefficients got, double thrust, double power) {
        assertThat(got.thrust()).isCloseTo(thrust, within(6e-6));
        assertThat(got.power()).isCloseTo(power, within(6e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "GENERAL,   1e5,  0, 0.42710, 0.03452",
        "GENERAL,   1e5,  5, 0.89264, 0.04568",
        "GENERAL,   1e5, 10, 1.28761, 0.09615",
        "GENERAL,   1e5, 15, 1.20402, 0.24549",
        "GENERAL,   1e5, 30, 1.21494, 0.68419",
        "EFFICIENT, 2e5,  0, 0.33327, 0.00886",
        "EFFICIENT, 2e5,  5, 0.80066, 0.01137",
        "EFFICIENT, 2e5, 10, 1.22720, 0.03365",
        "EFFICIENT, 2e5, 15, 1.26926, 0.15260"
    })
    void sectionPolarAgreesWithAnIndependentProgram(
            BladeType type, double reynolds, double angleDeg, double lift, double drag) {
        double angle = Math.toRadians(angleDeg) - type.zeroLiftAngleRad();
        double separation = SectionPolar.separation(angle);
        assertThat(SectionPolar.lift(angle, Math.sin(angle), Math.cos(angle), separation))
                .isCloseTo(lift, within(6e-6));
        assertThat(SectionPolar.drag(
                        angle,
                        Math.sin(angle),
                        separation,
                        SectionPolar.profileDrag(type, reynolds),
                        type.liftDragFactor()))
                .isCloseTo(drag, within(6e-6));
    }
}
