package trestle.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How near a part is to giving way.
 *
 * @param mode how it would
 * @param stressPa what it bears at the load, Pa
 * @param allowedPa what it may bear there, Pa
 */
public record Stress(FailureMode mode, double stressPa, double allowedPa) {
    /** Stresses under this are none, Pa. */
    private static final double NONE_PA = 1;

    /**
     * Reserve factor.
     *
     * @return allowed over borne
     */
    public double reserve() {
        return allowedPa / Math.max(NONE_PA, stressPa);
    }

    /** Wrinkling stress of caps on this foam; absent where foam or its moduli are not known. */
    static OptionalDouble wrinkling(Spar spar, OptionalDouble foamPa, OptionalDouble foamShearPa) {
        return spar.onFoam() && foamPa.isPresent() && foamShearPa.isPresent()
                ? OptionalDouble.of(Buckling.wrinklingStressPa(
                        spar.material().modulusPa(), foamPa.getAsDouble(), foamShearPa.getAsDouble()))
                : OptionalDouble.empty();
    }

    /**
     * The way in which a spar gives first.
     *
     * @param spar the spar
     * @param shearN on all of its count, N
     * @param bendingNm on all of its count, N m
     * @param factor of safety
     * @param wrinklingPa of its caps; absent where not judged
     * @return the least reserve
     */
    static Stress worst(Spar spar, double shearN, double bendingNm, double factor, OptionalDouble wrinklingPa) {
        Material material = spar.material();
        double fibre = spar.section().bendingStressPa(Math.abs(bendingNm) / spar.count());
        double shear = spar.section().shearStressPa(Math.abs(shearN) / spar.count());
        List<Stress> all = new ArrayList<>(List.of(
                new Stress(FailureMode.TENSION, fibre, material.allowedTensionPa(factor)),
                new Stress(FailureMode.COMPRESSION, fibre, material.allowedCompressionPa(factor)),
                new Stress(FailureMode.SHEAR, shear, material.allowedShearPa(factor))));
        double radiusOverWall = spar.section().radiusOverWall();
        if (radiusOverWall > Buckling.THIN_WALL) {
            all.add(new Stress(
                    FailureMode.LOCAL_BUCKLING, fibre, Buckling.bendingStressPa(material, radiusOverWall) / factor));
        }
        wrinklingPa.ifPresent(pa -> all.add(new Stress(FailureMode.WRINKLING, fibre, pa / factor)));
        return all.stream().min(Comparator.comparingDouble(Stress::reserve)).orElseThrow();
    }
}
