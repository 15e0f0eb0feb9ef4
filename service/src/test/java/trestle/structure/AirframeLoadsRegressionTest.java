package trestle.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Our own earlier numbers of an invented aircraft, worked with another program; nothing published. */
class AirframeLoadsRegressionTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    static Material material(double modulusPa) {
        return new Material("own", modulusPa, NONE, 1277e6, 572e6, 60e6, NONE, 0.5, 0.4, "the request");
    }

    static LoadsTask task(LiftDistribution lift, boolean relief, Section spar, double cruiseMPerS) {
        HalfWing wing = new HalfWing(List.of(
                new WingPanel(0.31, 0.31, 0.7, 0, relief ? 0.74 * 0.217 / 0.392 : 0),
                new WingPanel(0.31, 0.19, 0.7, 0.06, relief ? 0.74 * 0.175 / 0.392 : 0)));
        Spar joiner = new Spar(0, 1, Section.round(0.016, 0.012), 1, material(103e9), false);
        return new LoadsTask(
                6.9,
                wing,
                lift,
                1.25,
                -0.8,
                wing.liftSlopePerRad(),
                1.225,
                cruiseMPerS,
                NONE,
                NONE,
                NONE,
                OptionalDouble.of(3.8),
                -1.5,
                NONE,
                1.5,
                Gust.scaledMPerS(wing.meanChordM()),
                NONE,
                relief ? List.of(new WingItem("servo", 0.024, 0.64)) : List.of(),
                List.of(new Spar(0, 1.4, spar, 1, material(120e9), false)),
                List.of(new Joint("outer panel", 0.7, joiner, 0.12, OptionalDouble.of(0.09e6), 0.5, 0.016)),
                NONE,
                NONE,
                new TorsionMoments(-0.05, 0.3, 0, 0, 0),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of());
    }

    private static LoadsResult flown(LiftDistribution lift, boolean relief) {
        return AirframeLoads.of(task(lift, relief, Section.round(0.020, 0.017), 20));
    }

    @Test
    void rootLoads() {
        StationLoad bare = flown(LiftDistribution.SCHRENK, false).stations().get(0);
        assertThat(bare.shearN()).isCloseTo(128.57, within(5e-3));
        assertThat(bare.bendingNm()).isCloseTo(79.98, within(5e-3));
        StationLoad relieved = flown(LiftDistribution.SCHRENK, true).stations().get(0);
        assertThat(relieved.shearN()).isCloseTo(100.09, within(5e-3));
        assertThat(relieved.bendingNm()).isCloseTo(61.48, within(5e-3));
        StationLoad elliptic =
                flown(LiftDistribution.ELLIPTIC, false).stations().get(0);
        assertThat(elliptic.bendingNm()).isCloseTo(76.39, within(5e-3));
    }

    @Test
    void sparJoinerAndTip() {
        LoadsResult result = flown(LiftDistribution.SCHRENK, true);
        assertThat(result.stations().get(0).stress().orElseThrow().stressPa()).isCloseTo(163.77e6, within(5e3));
        assertThat(result.tipOneGM().getAsDouble()).isCloseTo(0.01639, within(5e-6));
        JointLoad joint = result.joints().get(0);
        assertThat(joint.shearN()).isCloseTo(41.52, within(5e-3));
        assertThat(joint.bendingNm()).isCloseTo(12.491, within(5e-4));
        assertThat(joint.stress().stressPa()).isCloseTo(45.44e6, within(5e3));
        assertThat(joint.bearingPa()).isCloseTo(0.412e6, within(5e2));
        assertThat(joint.reverseShearN()).isCloseTo(167, within(0.5));
        assertThat(result.judgement().findings())
                .anyMatch(f -> f.code().equals("socket-crushes") && f.message().contains("engage 605 mm"));
        assertThat(result.proof().halfWingLoadN()).isBetween(99.5, 100.5);
    }

    @Test
    void speedsAndGusts() {
        LoadsResult result = flown(LiftDistribution.SCHRENK, true);
        assertThat(result.stallMPerS()).isCloseTo(10.617, within(5e-4));
        assertThat(result.manoeuvreMPerS()).isCloseTo(20.697, within(5e-4));
        assertThat(new HalfWing(List.of(new WingPanel(0.31, 0.31, 0.7, 0, 0), new WingPanel(0.31, 0.19, 0.7, 0.06, 0)))
                        .liftSlopePerRad())
                .isCloseTo(4.942, within(5e-4));
        assertThat(result.gust().massRatio()).isCloseTo(10.385, within(5e-4));
        assertThat(result.gust().alleviation()).isCloseTo(0.58264, within(5e-6));
        assertThat(Gust.scaledMPerS(0.28)).isCloseTo(11.521, within(5e-4));
        double[] speeds = {15, 20, 26};
        double[] uncapped = {4.531, 5.708, 7.121};
        double[] capped = {2.495, 4.435, 7.121};
        for (int i = 0; i < speeds.length; i++) {
            assertThat(1 + result.gust().increment(speeds[i])).isCloseTo(uncapped[i], within(5e-4));
            assertThat(result.gust().up(speeds[i])).isCloseTo(capped[i], within(5e-4));
        }
    }

    @Test
    void aWeakSparIsNamedWithWhatWouldStand() {
        LoadsResult result = AirframeLoads.of(task(LiftDistribution.SCHRENK, true, Section.round(0.016, 0.014), 20));
        assertThat(result.judgement().findings())
                .filteredOn(f -> f.code().equals("spar-too-weak"))
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("369 MPa", "191", "2.0 g", "22/20 mm", "14.9 m/s"));
    }

    @Test
    void servoLandingAndPull() {
        ControlSurface aileron = new ControlSurface(
                "aileron", 0.5, 0.06, 0.24, Math.toRadians(20), 0, 25, 1, NONE, Math.toRadians(45), NONE, NONE);
        assertThat(aileron.hingeMomentNm()).isCloseTo(-0.22696, within(5e-6));
        assertThat(aileron.neededNm() / ControlSurface.FRICTION).isCloseTo(0.10087, within(5e-6));
        assertThat(LandingLoad.increment(1.5, 0.02, 0.5)).isCloseTo(11.472, within(5e-4));
        assertThat(LandingLoad.energyJ(6.9, 1.5)).isCloseTo(7.7625, within(5e-5));
    }
}
