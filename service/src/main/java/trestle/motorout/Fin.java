package trestle.motorout;

import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * The fins, and the rudders on them; a V-tail as the fin that it is: its area times the squared sine of its dihedral.
 *
 * @param areaM2 area of one with its rudder, m², above 0
 * @param heightM height of one, m, above 0
 * @param quarterChordArmM station of the quarter point of the mean chord, m aft of the datum
 * @param count how many alike, 1 or more
 * @param efficiencyRatio dynamic pressure there over that of the free stream, above 0
 * @param rudderChordFraction chord of the rudder over that of the fin, above 0 to 1; empty without a rudder
 * @param rudderDeflectionRad greatest deflection of the rudder, rad, above 0
 */
public record Fin(
        double areaM2,
        double heightM,
        double quarterChordArmM,
        int count,
        double efficiencyRatio,
        OptionalDouble rudderChordFraction,
        double rudderDeflectionRad) {
    /** A tailplane closes one end, [1]; a fin of a pair stands free. */
    private static final double END_PLATE = 1.55;

    /** Lift slope of a real section over that of a thin one. */
    private static final double SECTION_RATIO = 0.95;

    /** Gap, thickness and angle. Common practice, no source. */
    private static final double RUDDER_RATIO = 0.8;

    /** What a fin alone may stand to the wind. Common practice, no source. */
    private static final double SIDESLIP_RAD = Math.toRadians(10);

    /** Checks the physics. */
    public Fin {
        Guard.positive("areaM2", areaM2);
        Guard.positive("heightM", heightM);
        Guard.positive("efficiencyRatio", efficiencyRatio);
        Guard.positive("rudderDeflectionRad", rudderDeflectionRad);
        rudderChordFraction.ifPresent(share -> Guard.within("rudderChordFraction", share, Double.MIN_NORMAL, 1));
        if (count < 1) {
            throw new ImpossibleValue("count", "count is " + count + ", and must be at least 1");
        }
    }

    /**
     * Aspect ratio as it acts.
     *
     * @return {@code 1.55 h²/S}, of a pair {@code h²/S}
     */
    public double aspectRatio() {
        return (count == 1 ? END_PLATE : 1) * heightM * heightM / areaM2;
    }

    /**
     * Lift slope after Helmbold, {@code 2 π A / (2 + √(4 + (A/κ)²))}, κ 0.95.
     *
     * @return slope, per rad
     */
    public double liftSlopePerRad() {
        double ratio = aspectRatio() / SECTION_RATIO;
        return 2 * Math.PI * aspectRatio() / (2 + Math.sqrt(4 + ratio * ratio));
    }

    /**
     * How much of an angle of attack a deflection is worth, {@code τ = 1 − (θ − sin θ)/π, cos θ = 2E − 1}, [2].
     *
     * @return τ, 0 to 1; 0 without a rudder
     */
    public double rudderEffect() {
        if (rudderChordFraction.isEmpty()) {
            return 0;
        }
        double theta = Math.acos(2 * rudderChordFraction.getAsDouble() - 1);
        return 1 - (theta - Math.sin(theta)) / Math.PI;
    }

    /**
     * Greatest yawing moment of full rudder, or of the fin at 10° of sideslip where it has none.
     *
     * @param pressurePa dynamic pressure of the free stream, Pa
     * @param armM from the centre of gravity to the fin, m
     * @return moment, N m
     */
    public double controlNm(double pressurePa, double armM) {
        double angleRad =
                rudderChordFraction.isPresent() ? RUDDER_RATIO * rudderEffect() * rudderDeflectionRad : SIDESLIP_RAD;
        return pressurePa * efficiencyRatio * count * areaM2 * armM * liftSlopePerRad() * angleRad;
    }
}
