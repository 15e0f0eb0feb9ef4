package trestle.propulsion;

import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import trestle.atmosphere.AirState;

/**
 * A propeller from diameter, pitch and blades alone: 24 rings, each solved on its own.
 *
 * <p>The blade is a mean one: chord from the table below, twist of a constant pitch, {@code β =
 * atan(pf P / (2 π r))}, held to 54.2°. Nothing inside 15 % of the radius counts. Each ring starts
 * from the root that it found last, so an instance is for one thread. A ring has one root, but for
 * crowded hubs (five blades or more) in or near the wind-driven state; there it keeps to its last
 * one.
 */
final class BladeElementModel {
    /** Against 96 rings, 24 are 0.2 % high in static thrust; the constants were fitted with 24. */
    static final int STRIPS = 24;

    private static final double HUB_RATIO = 0.15;
    private static final double GREATEST_TWIST_RAD = Math.toRadians(54.2);

    /** Mean of the measured blades of the fitting half of [2]. */
    private static final double[] RADIUS_RATIOS = {.15, .20, .25, .30, .40, .50, .60, .70, .75, .80, .90, .95, 1.0};

    private static final double[] CHORD_RATIOS = {
        .147, .152, .162, .171, .181, .182, .176, .162, .152, .140, .108, .081, .054
    };

    private static final PolynomialSplineFunction CHORD =
            new LinearInterpolator().interpolate(RADIUS_RATIOS, CHORD_RATIOS);

    /** Where a propeller's pitch is judged. */
    private static final double REFERENCE_RADIUS_RATIO = 0.75;

    private final int bladeCount;
    private final double noLiftAdvanceRatio;
    private final double solidity;
    private final BladeStrip[] strips = new BladeStrip[STRIPS];
    private final double[] lastAngleRad = new double[STRIPS];

    /**
     * Lays out the blade.
     *
     * @param diameterM diameter D, m, above 0
     * @param pitchM printed pitch P, m, above 0
     * @param bladeCount number of blades, 1 or more
     * @param type kind of blade
     */
    BladeElementModel(double diameterM, double pitchM, int bladeCount, BladeType type) {
        this.bladeCount = bladeCount;
        double pitchPerDiameter = pitchM / diameterM;
        double chordScale = type.chordScale(diameterM);
        solidity = bladeCount * chordScale * meanBladeArea() / Math.PI;
        for (int i = 0; i < STRIPS; i++) {
            double x = HUB_RATIO + (i + 0.5) * stripWidth();
            strips[i] = strip(x, chordScale, pitchPerDiameter, bladeCount, type);
        }
        noLiftAdvanceRatio = Math.PI
                * REFERENCE_RADIUS_RATIO
                * Math.tan(twistRad(REFERENCE_RADIUS_RATIO, pitchPerDiameter, type) - type.zeroLiftAngleRad());
    }

    static BladeElementModel of(Propeller propeller) {
        return new BladeElementModel(
                propeller.diameterM(), propeller.pitchM(), propeller.bladeCount(), propeller.bladeType());
    }

    /**
     * What rotation, size and air amount to in the model: {@code ρ n D² / μ}.
     *
     * @param diameterM diameter D, m
     * @param air the air, for ρ and μ
     * @param revPerS rotation n, rev/s
     * @return without dimension
     */
    static double rotationReynolds(double diameterM, AirState air, double revPerS) {
        return air.densityKgPerM3() * revPerS * diameterM * diameterM / air.viscosityPaS();
    }

    /**
     * Thrust and power coefficient.
     *
     * @param advanceRatio J, 0 or more
     * @param rotationReynolds {@code ρ n D² / μ}, above 0
     * @return CT and CP
     */
    PropellerCoefficients at(double advanceRatio, double rotationReynolds) {
        return at(advanceRatio, rotationReynolds, lastAngleRad);
    }

    /**
     * Thrust and power coefficient, from guesses.
     *
     * @param advanceRatio J, 0 or more
     * @param rotationReynolds {@code ρ n D² / μ}, above 0
     * @param anglesRad inflow angle of each ring: where to begin, and what was found, rad
     * @return CT and CP
     */
    PropellerCoefficients at(double advanceRatio, double rotationReynolds, double[] anglesRad) {
        double thrust = 0;
        double power = 0;
        for (int i = 0; i < STRIPS; i++) {
            BladeStrip strip = strips[i];
            double drag = strip.profileDrag(advanceRatio, rotationReynolds);
            double angle = strip.inflowAngleRad(advanceRatio, drag, anglesRad[i]);
            anglesRad[i] = angle;
            double resultant = strip.resultant(angle, advanceRatio, drag);
            thrust += strip.thrust(resultant);
            power += strip.power(resultant);
        }
        double scale = bladeCount * stripWidth();
        return new PropellerCoefficients(scale * thrust, scale * power);
    }

    /**
     * Profile drag of the blade at rest, each ring by its share in power, {@code c x³}: all that
     * rotation changes, in one number.
     */
    double bladeDrag(double rotationReynolds) {
        double drag = 0;
        double weight = 0;
        for (BladeStrip strip : strips) {
            drag += strip.dragWeight() * strip.profileDrag(0, rotationReynolds);
            weight += strip.dragWeight();
        }
        return drag / weight;
    }

    /** Area of the blades over that of the disc; the chord is straight between its points. */
    double solidity() {
        return solidity;
    }

    /** Advance ratio at which the section at 75 % radius has no lift. */
    double noLiftAdvanceRatio() {
        return noLiftAdvanceRatio;
    }

    private static BladeStrip strip(
            double radiusRatio, double chordScale, double pitchPerDiameter, int bladeCount, BladeType type) {
        return new BladeStrip(
                radiusRatio,
                CHORD.value(radiusRatio) * chordScale,
                twistRad(radiusRatio, pitchPerDiameter, type),
                bladeCount,
                type);
    }

    /** Area of the mean blade over the square of its radius. */
    private static double meanBladeArea() {
        double area = 0;
        for (int i = 1; i < RADIUS_RATIOS.length; i++) {
            area += (RADIUS_RATIOS[i] - RADIUS_RATIOS[i - 1]) * (CHORD_RATIOS[i] + CHORD_RATIOS[i - 1]) / 2;
        }
        return area;
    }

    private static double stripWidth() {
        return (1 - HUB_RATIO) / STRIPS;
    }

    private static double twistRad(double radiusRatio, double pitchPerDiameter, BladeType type) {
        return Math.min(GREATEST_TWIST_RAD, Math.atan(type.pitchRatio() * pitchPerDiameter / (Math.PI * radiusRatio)));
    }
}
