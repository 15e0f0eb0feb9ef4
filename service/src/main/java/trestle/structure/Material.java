package trestle.structure;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * What a spar is made of: typical strength, Pa, and what is left of it in design.
 *
 * @param name as the request has it
 * @param modulusPa along it, Pa
 * @param transverseModulusPa across it, Pa; as along it where absent
 * @param tensionPa rupture in tension, Pa
 * @param compressionPa rupture in compression, yield of a metal, Pa
 * @param shearPa rupture in shear, Pa
 * @param yieldPa yield of a metal, Pa; absent where there is none
 * @param knockdown share of the typical strength that is counted on, 0 to 1
 * @param shearKnockdown the same in shear
 * @param source where the numbers are from
 */
public record Material(
        String name,
        double modulusPa,
        OptionalDouble transverseModulusPa,
        double tensionPa,
        double compressionPa,
        double shearPa,
        OptionalDouble yieldPa,
        double knockdown,
        double shearKnockdown,
        String source) {
    /** Checks the physics. */
    public Material {
        Guard.positive("modulusPa", modulusPa);
        Guard.positive("tensionPa", tensionPa);
        Guard.positive("compressionPa", compressionPa);
        Guard.positive("shearPa", shearPa);
        Guard.within("knockdown", knockdown, 0.01, 1);
        Guard.within("shearKnockdown", shearKnockdown, 0.01, 1);
    }

    /** What it may bear in tension at limit load: rupture over the factor of safety, and no more than yield. */
    double allowedTensionPa(double factor) {
        return knockdown * Math.min(tensionPa / factor, yieldPa.orElse(Double.MAX_VALUE));
    }

    /** The same in compression; a metal's is a yield, which limit load may reach, held to its tension at breaking load. */
    double allowedCompressionPa(double factor) {
        return yieldPa.isPresent()
                ? knockdown * Math.min(compressionPa, tensionPa / factor)
                : knockdown * compressionPa / factor;
    }

    double allowedShearPa(double factor) {
        return shearKnockdown * shearPa / factor;
    }
}
