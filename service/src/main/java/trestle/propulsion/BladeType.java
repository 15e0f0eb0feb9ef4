package trestle.propulsion;

/**
 * Kinds of propeller blade, each with effective constants for the blade-element model.
 *
 * <p>The constants are fitted to one half of the wind-tunnel data of [2], never to the other half,
 * against which they are checked. Several are traded against each other (chord against pitch, drag
 * floor against drag rise): they describe blades, not aerofoils.
 */
public enum BladeType {
    /** Moulded propellers of 9 to 14 in, many product families mixed. */
    GENERAL("general", 0.954, -0.16, 0.962, Math.toRadians(-4.55), 0.0343, -0.18, 0.060, 0.10, 0.13, 0.04),
    /** Folding carbon and current thin electric propellers, from about 12 in. */
    EFFICIENT("efficient", 0.978, 0.04, 1.004, Math.toRadians(-3.55), 0.0126, -0.60, 0.024, 0.10, 0.13, 0.03),
    /** Broad slow-flight blades: good for static thrust, weak in cruise. */
    WIDE("wide", 1.342, -0.16, 1.093, Math.toRadians(-3.65), 0.0247, -0.18, 0.060, 0.10, 0.20, 0.10);

    /** Diameter at which the chord table holds without scaling, m: 10.5 in. */
    private static final double REFERENCE_DIAMETER_M = 0.2667;

    private final String label;
    private final double chordScaleRatio;
    private final double chordDiameterExponent;
    private final double pitchRatio;
    private final double zeroLiftAngleRad;
    private final double profileDragCoefficient;
    private final double reynoldsExponent;
    private final double liftDragFactor;
    private final double thrustErrorFraction;
    private final double powerErrorFraction;
    private final double efficiencyError;

    BladeType(
            String label,
            double chordScaleRatio,
            double chordDiameterExponent,
            double pitchRatio,
            double zeroLiftAngleRad,
            double profileDragCoefficient,
            double reynoldsExponent,
            double liftDragFactor,
            double thrustErrorFraction,
            double powerErrorFraction,
            double efficiencyError) {
        this.label = label;
        this.chordScaleRatio = chordScaleRatio;
        this.chordDiameterExponent = chordDiameterExponent;
        this.pitchRatio = pitchRatio;
        this.zeroLiftAngleRad = zeroLiftAngleRad;
        this.profileDragCoefficient = profileDragCoefficient;
        this.reynoldsExponent = reynoldsExponent;
        this.liftDragFactor = liftDragFactor;
        this.thrustErrorFraction = thrustErrorFraction;
        this.powerErrorFraction = powerErrorFraction;
        this.efficiencyError = efficiencyError;
    }

    /** The word for messages. */
    String label() {
        return label;
    }

    /** Chord over that of the mean blade: {@code cs (D / 0.2667 m)^m}. */
    double chordScale(double diameterM) {
        return chordScaleRatio * Math.pow(diameterM / REFERENCE_DIAMETER_M, chordDiameterExponent);
    }

    /** Aerodynamic over printed pitch. */
    double pitchRatio() {
        return pitchRatio;
    }

    /** Angle to the chord at which a section has no lift, rad, negative. */
    double zeroLiftAngleRad() {
        return zeroLiftAngleRad;
    }

    /** Profile drag coefficient at a Reynolds number of 100 000. */
    double profileDragCoefficient() {
        return profileDragCoefficient;
    }

    /** Power by which profile drag goes with the Reynolds number, negative. */
    double reynoldsExponent() {
        return reynoldsExponent;
    }

    /** Drag rise with the square of lift away from its best. */
    double liftDragFactor() {
        return liftDragFactor;
    }

    /**
     * How far static thrust is usually off, as found on propellers the fit never saw.
     *
     * @return fraction of the thrust
     */
    public double thrustErrorFraction() {
        return thrustErrorFraction;
    }

    /**
     * How far static power is usually off, as found on propellers the fit never saw.
     *
     * @return fraction of the power
     */
    public double powerErrorFraction() {
        return powerErrorFraction;
    }

    /**
     * How far propeller efficiency is usually off, as found on propellers the fit never saw.
     *
     * @return difference in efficiency
     */
    public double efficiencyError() {
        return efficiencyError;
    }
}
