package trestle.structure;

import trestle.numeric.Guard;

/**
 * Cross-section of a spar or joiner; sizes that its shape has not are 0.
 *
 * @param shape its shape
 * @param heightM height in the direction of bending, the outside diameter of a round one, m
 * @param widthM width, the outside diameter of a round one, m
 * @param insideDiameterM of a tube, m
 * @param capThicknessM of each cap, m
 * @param webThicknessM of the web, m; 0 for none
 * @param webModulusRatio modulus of the web over that of the caps
 */
public record Section(
        SparShape shape,
        double heightM,
        double widthM,
        double insideDiameterM,
        double capThicknessM,
        double webThicknessM,
        double webModulusRatio) {
    /** Checks the physics. */
    public Section {
        Guard.present("shape", shape);
        Guard.positive("heightM", heightM);
        Guard.positive("widthM", widthM);
        Guard.notNegative("insideDiameterM", insideDiameterM);
    }

    /**
     * A tube, or a rod with no inside.
     *
     * @param outsideM outside diameter, m
     * @param insideM inside diameter, m, 0 for a rod
     * @return the section
     */
    public static Section round(double outsideM, double insideM) {
        return new Section(insideM > 0 ? SparShape.TUBE : SparShape.ROD, outsideM, outsideM, insideM, 0, 0, 0);
    }

    boolean round() {
        return shape == SparShape.TUBE || shape == SparShape.ROD;
    }

    /**
     * Second moment of area, that of a web in terms of the caps' modulus: {@code π (D⁴ − d⁴)/64}; {@code b h³/12}; {@code
     * w [h³ − (h − 2t)³]/12 + (E_web/E_cap) t_w (h − 2t)³/12}.
     *
     * @return m⁴
     */
    public double inertiaM4() {
        if (round()) {
            return Math.PI * (Math.pow(heightM, 4) - Math.pow(insideDiameterM, 4)) / 64;
        }
        double whole = Math.pow(heightM, 3) / 12;
        if (shape == SparShape.RECTANGLE) {
            return widthM * whole;
        }
        double between = Math.pow(heightM - 2 * capThicknessM, 3) / 12;
        return widthM * (whole - between) + webModulusRatio * webThicknessM * between;
    }

    /**
     * Stress of the outer fibre: {@code M (h/2) / I}.
     *
     * @param bendingNm M, N m
     * @return Pa
     */
    public double bendingStressPa(double bendingNm) {
        return bendingNm * heightM / 2 / inertiaM4();
    }

    /**
     * Greatest shear stress: tube {@code (4V/3A)(D² + D d + d²)/(D² + d²)}, rectangle {@code 1.5 V/A}, capped {@code V /
     * (t_w (h − t))}; 0 for caps without a web, whose core carries it.
     *
     * @param shearN V, N
     * @return Pa
     */
    public double shearStressPa(double shearN) {
        if (round()) {
            double outer = heightM;
            double inner = insideDiameterM;
            double area = Math.PI * (outer * outer - inner * inner) / 4;
            return 4
                    * shearN
                    / (3 * area)
                    * (outer * outer + outer * inner + inner * inner)
                    / (outer * outer + inner * inner);
        }
        if (shape == SparShape.RECTANGLE) {
            return 1.5 * shearN / (widthM * heightM);
        }
        return webThicknessM > 0 ? shearN / (webThicknessM * (heightM - capThicknessM)) : 0;
    }

    /** Radius of the wall's middle over its thickness; 0 for what is no tube. */
    double radiusOverWall() {
        return shape == SparShape.TUBE ? (heightM + insideDiameterM) / 2 / (heightM - insideDiameterM) : 0;
    }
}
