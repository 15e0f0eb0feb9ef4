package trestle.structure;

import java.util.OptionalDouble;

/**
 * What a joint bears at the design load.
 *
 * @param name its name
 * @param lateralM m
 * @param shearN N
 * @param bendingNm N m
 * @param stress of the joiner
 * @param bearingPa pressure at the mouth of the socket, Pa
 * @param bearingReserve absent where the socket's strength is not known
 * @param reverseShearN inside the joiner, N
 * @param reverseReserve of that shear
 */
public record JointLoad(
        String name,
        double lateralM,
        double shearN,
        double bendingNm,
        Stress stress,
        double bearingPa,
        OptionalDouble bearingReserve,
        double reverseShearN,
        double reverseReserve) {
    static JointLoad of(Joint joint, Beam beam, double factor) {
        double shear = Math.abs(beam.shearN(joint.lateralM()));
        double bending = Math.abs(beam.bendingNm(joint.lateralM()));
        double bearing = Pin.mouthNPerM(shear, bending, joint.engagementM())
                / joint.joiner().count()
                / joint.bearingWidthM();
        double reverse = Pin.reverseShearN(shear, bending, joint.engagementM());
        double reverseStress =
                joint.joiner().section().shearStressPa(reverse / joint.joiner().count());
        double allowed = joint.joiner().material().allowedShearPa(factor);
        return new JointLoad(
                joint.name(),
                joint.lateralM(),
                shear,
                bending,
                Stress.worst(joint.joiner(), shear, bending, factor, OptionalDouble.empty()),
                bearing,
                joint.bearingPa().isPresent()
                        ? OptionalDouble.of(new Stress(
                                        FailureMode.BEARING,
                                        bearing,
                                        joint.bearingPa().getAsDouble() * joint.bearingKnockdown() / factor)
                                .reserve())
                        : OptionalDouble.empty(),
                reverse,
                new Stress(FailureMode.SHEAR, reverseStress, allowed).reserve());
    }
}
