package trestle.structure;

import trestle.numeric.Guard;

/**
 * A spar, its mirror image in the other half wing.
 *
 * @param fromM its inner end, m from the plane of symmetry
 * @param toM its outer end, m, above the inner
 * @param section one of them
 * @param count how many side by side
 * @param material what it is made of
 * @param onFoam whether its caps are bonded to foam
 */
public record Spar(double fromM, double toM, Section section, int count, Material material, boolean onFoam) {
    /** Checks the physics. */
    public Spar {
        Guard.notNegative("fromM", fromM);
        Guard.positive("toM - fromM", toM - fromM);
        Guard.present("section", section);
        Guard.present("material", material);
        Guard.positive("count", count);
    }

    boolean covers(double lateralM) {
        return fromM <= lateralM && lateralM <= toM;
    }

    double stiffnessNm2() {
        return count * material.modulusPa() * section.inertiaM4();
    }

    String said() {
        String size = switch (section.shape()) {
            case TUBE -> mm(section.heightM()) + "/" + mm(section.insideDiameterM()) + " mm tube";
            case ROD -> mm(section.heightM()) + " mm rod";
            case RECTANGLE -> mm(section.widthM()) + " x " + mm(section.heightM()) + " mm strip";
            case CAPPED -> mm(section.heightM()) + " mm capped spar";
        };
        return count > 1 ? count + " of the " + size : size;
    }

    static String mm(double lengthM) {
        return Double.toString(Math.round(lengthM * 1e4) / 10.0).replaceAll("\\.0$", "");
    }
}
