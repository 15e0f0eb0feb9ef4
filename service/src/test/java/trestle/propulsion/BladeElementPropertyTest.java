package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;
import trestle.numeric.Root;

class BladeElementPropertyTest {
    private static final AirState AIR = StandardAtmosphere.at(0);

    /**
     * Any propeller of 0.1 to 0.8 m, pitch 0.2 to 1.5 diameters, 1 to 6 blades, at any advance
     * ratio to 2 and at 500 to 12 000 rpm, is solved; what it gives is finite and obeys momentum
     * theory.
     */
    @Test
    void tenThousandRandomPropellersAreAllSolved() {
        Random random = new Random(20_140_101);
        for (int i = 0; i < 10_000; i++) {
            double diameterM = 0.1 + 0.7 * random.nextDouble();
            double pitchM = diameterM * (0.2 + 1.3 * random.nextDouble());
            BladeType type = BladeType.values()[random.nextInt(3)];
            int blades = 1 + random.nextInt(6);
            double advanceRatio = i % 10 == 0 ? 0 : 2 * random.nextDouble();
            double revPerS = (500 + 11_500 * random.nextDouble()) / 60;
            PropellerCoefficients got = new BladeElementModel(diameterM, pitchM, blades, type)
                    .at(advanceRatio, revPerS * diameterM * diameterM / 1.48e-5);
            assertThat(Double.isFinite(got.thrust()) && Double.isFinite(got.power()))
                    .describedAs("case %d", i)
                    .isTrue();
            assertThat(got.efficiency(advanceRatio))
                    .describedAs("case %d", i)
                    .isBetween(0.0, 1.0)
                    .isLessThanOrEqualTo(advanceRatio == 0 ? 0 : got.idealEfficiency(advanceRatio));
            assertThat(got.figureOfMerit()).isLessThan(advanceRatio == 0 ? 1 : 1e9);
            if (advanceRatio == 0) {
                assertThat(got.thrust()).describedAs("case %d", i).isPositive();
                assertThat(got.power()).describedAs("case %d", i).isPositive();
            }
        }
    }

    /**
     * Up to four blades, one ring has one inflow angle: the quick walk finds what halving finds.
     */
    @Property(tries = 200)
    void quickSolutionEqualsPlainHalving(
            @ForAll @DoubleRange(min = 0.16, max = 0.99) double radiusRatio,
            @ForAll @DoubleRange(min = 0.3, max = 1.3) double pitchRatio,
            @ForAll @DoubleRange(min = 0, max = 2) double advanceRatio,
            @ForAll @DoubleRange(min = 0, max = 1.5) double guessRad,
            @ForAll @IntRange(min = 2, max = 4) int blades) {
        BladeType type = BladeType.GENERAL;
        double twistRad = Math.min(0.94, Math.atan(pitchRatio / (Math.PI * radiusRatio)));
        BladeStrip strip = new BladeStrip(radiusRatio, 0.16, twistRad, blades, type);
        double noLift = twistRad - type.zeroLiftAngleRad();
        boolean pulling = advanceRatio <= Math.PI * radiusRatio * Math.tan(noLift);
        double low = pulling ? 1e-6 : noLift;
        double high = pulling ? noLift : Math.PI / 2;
        for (int halving = 0; halving < 50; halving++) {
            double middle = (low + high) / 2;
            if (strip.residual(middle, advanceRatio, 0.03) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(strip.inflowAngleRad(advanceRatio, 0.03, guessRad)).isCloseTo(low, within(1e-7));
    }

    @Property(tries = 100)
    void aLargerPropellerOfThePitchPullsMoreAtRest(
            @ForAll @DoubleRange(min = 0.2, max = 0.5) double diameterM,
            @ForAll @DoubleRange(min = 1.02, max = 1.3) double growth,
            @ForAll @DoubleRange(min = 0.4, max = 1.0) double pitchRatio,
            @ForAll BladeType type) {
        double pitchM = pitchRatio * diameterM;
        double revPerS = 80;
        assertThat(staticThrustN(diameterM * growth, pitchM, type, revPerS))
                .isGreaterThan(staticThrustN(diameterM, pitchM, type, revPerS));
    }

    /** Above the advance ratio of the blades' stall, thrust falls with advance ratio. */
    @Property(tries = 50)
    void thrustFallsWithAdvanceRatioOnceTheBladesFly(
            @ForAll @DoubleRange(min = 0.2, max = 0.5) double diameterM,
            @ForAll @DoubleRange(min = 0.4, max = 0.8) double pitchRatio,
            @ForAll BladeType type) {
        BladeElementModel model = new BladeElementModel(diameterM, pitchRatio * diameterM, 2, type);
        double before = Double.MAX_VALUE;
        for (double share = 0.45; share < 1; share += 0.025) {
            double thrust = model.at(share * model.noLiftAdvanceRatio(), 6e5).thrust();
            assertThat(thrust).isLessThan(before);
            before = thrust;
        }
    }

    /** The tabulated map against the model itself, over the rotations that a drive uses. */
    @Property(tries = 100)
    void tabulatedPropellerEqualsTheModel(
            @ForAll @DoubleRange(min = 0.2, max = 0.6) double diameterM,
            @ForAll @DoubleRange(min = 0.3, max = 1.1) double pitchRatio,
            @ForAll @DoubleRange(min = 0, max = 0.95) double shareOfNoLift,
            @ForAll @DoubleRange(min = 0.25, max = 1) double shareOfFastest,
            @ForAll @IntRange(min = 2, max = 4) int blades,
            @ForAll BladeType type) {
        double fastest = 120;
        double revPerS = shareOfFastest * fastest;
        Propeller propeller = Propeller.ofSize(diameterM, pitchRatio * diameterM, blades, type);
        PropellerMap map = PropellerMap.of(propeller, AIR, fastest);
        BladeElementModel model = new BladeElementModel(diameterM, pitchRatio * diameterM, blades, type);
        double advanceRatio = shareOfNoLift * model.noLiftAdvanceRatio();
        double reynolds = AIR.densityKgPerM3() * revPerS * diameterM * diameterM / AIR.viscosityPaS();
        PropellerCoefficients exact = model.at(advanceRatio, reynolds);
        PropellerCoefficients atRest = model.at(0, reynolds);
        PropellerCoefficients read = map.at(advanceRatio, revPerS);
        assertThat(read.thrust()).isCloseTo(exact.thrust(), within(0.002 * atRest.thrust()));
        assertThat(read.power()).isCloseTo(exact.power(), within(0.005 * atRest.power()));
    }

    @Property(tries = 50)
    void staticTestIsMetByTheScaledPropeller(
            @ForAll @DoubleRange(min = 0.7, max = 1.4) double thrustRatio,
            @ForAll @DoubleRange(min = 0.7, max = 1.4) double powerRatio) {
        double revPerS = 90;
        double diameterM = 0.4;
        StaticTest test = new StaticTest(2 * Math.PI * revPerS, 25 * thrustRatio, 350 * powerRatio, AIR);
        Propeller propeller = new Propeller(diameterM, 0.2, 2, BladeType.EFFICIENT, test, OptionalDouble.empty());
        PropellerCoefficients got = PropellerMap.of(propeller, AIR, 120).at(0, revPerS);
        double scaleN = AIR.densityKgPerM3() * revPerS * revPerS * Math.pow(diameterM, 4);
        assertThat(got.thrust() * scaleN).isCloseTo(test.thrustN(), within(0.1));
        assertThat(got.power() * scaleN * revPerS * diameterM).isCloseTo(test.shaftPowerW(), within(2.0));
    }

    @Test
    void aPropellerThatFliesAtItsPitchSpeedGivesLittleThrust() {
        BladeElementModel model = new BladeElementModel(0.28, 0.18, 2, BladeType.EFFICIENT);
        OptionalDouble zeroThrust = Root.between(j -> model.at(j, 4e5).thrust(), 0, 2, 1e-6);
        assertThat(zeroThrust.orElseThrow()).isCloseTo(0.18 / 0.28 * 1.25, within(0.12));
    }

    private static double staticThrustN(double diameterM, double pitchM, BladeType type, double revPerS) {
        double reynolds = AIR.densityKgPerM3() * revPerS * diameterM * diameterM / AIR.viscosityPaS();
        return new BladeElementModel(diameterM, pitchM, 2, type).at(0, reynolds).thrust()
                * AIR.densityKgPerM3()
                * revPerS
                * revPerS
                * Math.pow(diameterM, 4);
    }
}
