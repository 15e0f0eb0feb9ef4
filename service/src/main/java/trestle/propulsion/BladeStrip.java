package trestle.propulsion;

/**
 * One ring of the propeller disc: blade elements in their own induced flow.
 *
 * <p>Speeds are in units of {@code n D}: the blade moves at {@code U = π x}, the air comes at
 * {@code J}. The one unknown is the inflow angle φ. Eliminating the resultant speed W and the
 * induced speeds from
 *
 * <pre>
 *   W sin φ = J + W σ Cn / (4 F sin φ)      Cn = cl cos φ − cd sin φ
 *   W cos φ = U − W σ Ct / (4 F sin φ)      Ct = cl sin φ + cd cos φ
 * </pre>
 *
 * <p>leaves {@code f(φ) = U (4 F sin² φ − σ Cn) − J (4 F sin φ cos φ + σ Ct) = 0}, which divides by
 * nothing and holds at rest. At the angle of no lift, φ0, {@code f = (U sin φ0 − J cos φ0)(4 F sin
 * φ0 + σ cd)}, so its sign there is known and the root is always bracketed: below φ0 while the
 * blade pulls, above it while the wind drives it. F is Prandtl's tip factor.
 */
final class BladeStrip {
    private static final double LEAST_ANGLE_RAD = 1e-6;
    private static final double GREATEST_ANGLE_RAD = Math.PI / 2;
    private static final double LEAST_TIP_FACTOR = 1e-4;

    /** Length of the last step, rad: a secant's error is a product of two, so the angle is then better by orders. */
    private static final double LAST_STEP_RAD = 1e-6;

    /** After these the bracket is halved at every step: 40 halvings of π/2 end below 1e-11. */
    private static final int SECANT_STEPS = 12;

    private static final int MOST_STEPS = SECANT_STEPS + 40;

    /** Resultant speed over undisturbed speed: more is a slip of a vanishing denominator. */
    private static final double GREATEST_SPEED_RATIO = 3;

    private final double radiusRatio;
    private final double bladeSpeed;
    private final double solidity;
    private final double noLiftInflowRad;
    private final double sineOfNoLift;
    private final double cosineOfNoLift;
    private final double tipExponent;
    private final double chordPerDiameter;
    private final double liftDragFactor;
    private final BladeType type;

    /** How fast the residual rises at the last root: a like case's is near enough for the first step. */
    private double slopePerRad = 1;

    /** φ and what goes with it, left by the last evaluation of the residual. */
    private double tipFactor;

    private double normal;
    private double tangential;

    BladeStrip(double radiusRatio, double chordPerRadius, double twistRad, int bladeCount, BladeType type) {
        this.radiusRatio = radiusRatio;
        this.type = type;
        bladeSpeed = Math.PI * radiusRatio;
        solidity = bladeCount * chordPerRadius / (2 * Math.PI * radiusRatio);
        noLiftInflowRad = twistRad - type.zeroLiftAngleRad();
        sineOfNoLift = Math.sin(noLiftInflowRad);
        cosineOfNoLift = Math.cos(noLiftInflowRad);
        tipExponent = -0.5 * bladeCount * (1 - radiusRatio) / radiusRatio;
        chordPerDiameter = chordPerRadius / 2;
        liftDragFactor = type.liftDragFactor();
    }

    /** What a drag coefficient on this ring counts for in power: {@code c x³}. */
    double dragWeight() {
        return chordPerDiameter * radiusRatio * radiusRatio * radiusRatio;
    }

    /**
     * Profile drag at an advance ratio.
     *
     * @param advanceRatio J
     * @param rotationReynolds {@code ρ n D² / μ}
     * @return drag coefficient
     */
    double profileDrag(double advanceRatio, double rotationReynolds) {
        return SectionPolar.profileDrag(type, rotationReynolds * chordPerDiameter * undisturbed(advanceRatio));
    }

    /**
     * Solves for the inflow angle, by secants that never leave the bracket.
     *
     * @param advanceRatio J, 0 or more
     * @param profileDrag cd0
     * @param guessRad where to begin: the root of a like case, or any number
     * @return φ, rad
     */
    double inflowAngleRad(double advanceRatio, double profileDrag, double guessRad) {
        boolean pulling = advanceRatio * cosineOfNoLift <= bladeSpeed * sineOfNoLift;
        double low = pulling ? LEAST_ANGLE_RAD : noLiftInflowRad;
        double high = pulling ? noLiftInflowRad : GREATEST_ANGLE_RAD;
        double at = guessRad > low && guessRad < high ? guessRad : (low + high) / 2;
        double residual = residual(at, advanceRatio, profileDrag);
        for (int step = 0; step < MOST_STEPS && residual != 0; step++) {
            if (residual < 0) {
                low = at;
            } else {
                high = at;
            }
            double next = at - residual / slopePerRad;
            if (step >= SECANT_STEPS || !(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - at) < LAST_STEP_RAD) {
                return next;
            }
            double atNext = residual(next, advanceRatio, profileDrag);
            double slope = (atNext - residual) / (next - at);
            if (slope > 0) {
                slopePerRad = slope;
            }
            at = next;
            residual = atNext;
        }
        return at;
    }

    /** The residual f(φ); leaves F, Cn and Ct of this φ behind. */
    double residual(double inflowRad, double advanceRatio, double profileDrag) {
        double sine = Math.sin(inflowRad);
        double cosine = Math.cos(inflowRad);
        double angle = noLiftInflowRad - inflowRad;
        double sineOfAngle = sineOfNoLift * cosine - cosineOfNoLift * sine;
        double cosineOfAngle = cosineOfNoLift * cosine + sineOfNoLift * sine;
        double separation = SectionPolar.separation(angle);
        double lift = SectionPolar.lift(angle, sineOfAngle, cosineOfAngle, separation);
        double drag = SectionPolar.drag(angle, sineOfAngle, separation, profileDrag, liftDragFactor);
        normal = lift * cosine - drag * sine;
        tangential = lift * sine + drag * cosine;
        tipFactor = Math.max(LEAST_TIP_FACTOR, 2 / Math.PI * Math.acos(Math.exp(tipExponent / sine)));
        double flow = 4 * tipFactor * sine;
        return bladeSpeed * (flow * sine - solidity * normal) - advanceRatio * (flow * cosine + solidity * tangential);
    }

    /**
     * The resultant speed at a solved inflow angle.
     *
     * @param inflowRad φ that solves this strip, rad
     * @param advanceRatio J
     * @param profileDrag cd0
     * @return W, in units of n D
     */
    double resultant(double inflowRad, double advanceRatio, double profileDrag) {
        residual(inflowRad, advanceRatio, profileDrag);
        double flow = 4 * tipFactor * Math.sin(inflowRad);
        double below = flow * Math.cos(inflowRad) + solidity * tangential;
        double greatest = GREATEST_SPEED_RATIO * undisturbed(advanceRatio);
        double speed = below == 0 ? greatest : bladeSpeed * flow / below;
        return Math.max(0, Math.min(greatest, speed));
    }

    /** {@code ½ W² c Cn} of one blade per unit of x, with Cn of the last evaluation. */
    double thrust(double resultant) {
        return 0.25 * resultant * resultant * chordPerDiameter * normal;
    }

    /** {@code 2π · ½ W² c r Ct} of one blade per unit of x, with Ct of the last evaluation. */
    double power(double resultant) {
        return 2 * Math.PI * 0.125 * resultant * resultant * chordPerDiameter * radiusRatio * tangential;
    }

    private double undisturbed(double advanceRatio) {
        return Math.sqrt(advanceRatio * advanceRatio + bladeSpeed * bladeSpeed);
    }
}
