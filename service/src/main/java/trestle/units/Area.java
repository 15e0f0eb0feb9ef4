package trestle.units;

/**
 * Area: square decimetre (wings), square millimetre (conductors) and square kilometre (ground) at the edge, square metre
 * inside.
 */
public final class Area {
    private Area() {}

    /**
     * Area, m².
     *
     * @param areaDm2 area, dm²
     * @return area, m²
     */
    public static double m2FromDm2(double areaDm2) {
        return areaDm2 / 100;
    }

    /**
     * Area, dm².
     *
     * @param areaM2 area, m²
     * @return area, dm²
     */
    public static double dm2FromM2(double areaM2) {
        return areaM2 * 100;
    }

    /**
     * Area, m².
     *
     * @param areaMm2 area, mm²
     * @return area, m²
     */
    public static double m2FromMm2(double areaMm2) {
        return areaMm2 / 1e6;
    }

    /**
     * Area, mm².
     *
     * @param areaM2 area, m²
     * @return area, mm²
     */
    public static double mm2FromM2(double areaM2) {
        return areaM2 * 1e6;
    }

    /**
     * Area, m².
     *
     * @param areaKm2 area, km²
     * @return area, m²
     */
    public static double m2FromKm2(double areaKm2) {
        return areaKm2 * 1e6;
    }

    /**
     * Area, km².
     *
     * @param areaM2 area, m²
     * @return area, km²
     */
    public static double km2FromM2(double areaM2) {
        return areaM2 / 1e6;
    }
}
