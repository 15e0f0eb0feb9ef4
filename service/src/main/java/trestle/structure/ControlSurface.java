package trestle.structure;

import java.util.OptionalDouble;

/**
 * A control surface and its servo.
 *
 * @param name what it is called
 * @param spanM along the hinge, m
 * @param surfaceChordM aft of the hinge, m
 * @param sectionChordM of wing and surface together, m
 * @param deflectionRad rad
 * @param attackRad angle of attack, rad
 * @param airspeedMPerS at which it deflects so far, m/s
 * @param count surfaces that one servo moves
 * @param servoTorqueNm stall torque, N m; absent without a servo
 * @param servoTravelRad travel of the servo that gives the deflection, rad
 * @param stallCurrentA A; absent where not known
 * @param idleCurrentA A; absent where not known
 */
public record ControlSurface(
        String name,
        double spanM,
        double surfaceChordM,
        double sectionChordM,
        double deflectionRad,
        double attackRad,
        double airspeedMPerS,
        int count,
        OptionalDouble servoTorqueNm,
        double servoTravelRad,
        OptionalDouble stallCurrentA,
        OptionalDouble idleCurrentA) {
    /** Friction of hinge and linkage; common practice, no source. */
    static final double FRICTION = 1.2;

    /** {@code H = q S_f c_f (b1 α + b2 δ)}, N m; negative turns the surface back. */
    double hingeMomentNm() {
        double ratio = surfaceChordM / sectionChordM;
        double q = Flight.SEA_LEVEL_KG_PER_M3 * airspeedMPerS * airspeedMPerS / 2;
        double volume = spanM * surfaceChordM * surfaceChordM;
        return q * volume * (Hinge.b1(ratio) * attackRad + Hinge.b2(ratio) * deflectionRad);
    }

    /** {@code 1.2 |H| count δ / β}, N m. */
    double neededNm() {
        return FRICTION * Math.abs(hingeMomentNm()) * count * Math.abs(deflectionRad) / servoTravelRad;
    }
}
