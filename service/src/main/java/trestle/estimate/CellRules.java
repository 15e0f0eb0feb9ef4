package trestle.estimate;

/**
 * What a cell is likely to be, by its kind: resistance over 10 s at half charge and 25 °C times capacity, in Ω Ah, and
 * energy over mass, in Wh/kg. Cylinders and energy over mass are from memory but for one porous-electrode model and one
 * measured cell; pouches from two points; so all are shown as usual practice.
 */
public enum CellRules {
    /** High-energy nickel cylinder. */
    ENERGY(Spread.between(0.12, 0.16, 0.20), Spread.between(240, 255, 270)),
    /** Power-type nickel cylinder. */
    POWER(Spread.between(0.055, 0.075, 0.105), Spread.between(200, 215, 235)),
    /** Cobalt pouch. */
    POUCH(Spread.between(0.020, 0.040, 0.080), Spread.between(135, 164, 191)),
    /** Power-type iron-phosphate cylinder. */
    LFP_POWER(Spread.between(0.020, 0.028, 0.045), Spread.between(90, 105, 120)),
    /** Energy-type iron phosphate. */
    LFP_ENERGY(Spread.between(0.035, 0.060, 0.100), Spread.between(90, 105, 120));

    private final Spread ohmAmpereHour;
    private final Spread wattHourPerKg;

    CellRules(Spread ohmAmpereHour, Spread wattHourPerKg) {
        this.ohmAmpereHour = ohmAmpereHour;
        this.wattHourPerKg = wattHourPerKg;
    }

    /**
     * Resistance over 10 s at half charge and 25 °C.
     *
     * @param capacityAh capacity of the cell, Ah
     * @return its spread, Ω
     */
    public Spread resistanceOhm(double capacityAh) {
        return ohmAmpereHour.times(1 / capacityAh);
    }

    /** Energy over mass, Wh/kg: of one cell; for a pouch of the pack with its wrap. */
    public Spread wattHourPerKg() {
        return wattHourPerKg;
    }

    /**
     * Growth of a cell's drop in the cold, K: of nickel from one measured 18650 (P. Kollmeyer et al., doi
     * 10.17632/cp3473x7xv.3), of a pouch from one (10.17632/4fx8cjprxm.1), of phosphate from one (G. Plett, Battery Management
     * Systems 1, 2015).
     */
    public Spread coldGrowthK() {
        return switch (this) {
            case ENERGY, POWER -> z -> Math.max(0, 600 + (z < 0 ? 600 : 700) * clipped(z) / Spread.Z90);
            case POUCH -> Spread.between(1500, 2200, 2900);
            case LFP_POWER, LFP_ENERGY -> Spread.between(300, 1000, 1600);
        };
    }

    private static double clipped(double z) {
        return Math.max(-Spread.FURTHEST, Math.min(Spread.FURTHEST, z));
    }

    /** Heat that an installed cell gives to the air over what is reckoned from its covering; nobody measured it. */
    public static Spread heatLossRatio() {
        return Spread.logNormal(1, 0.7);
    }

    /**
     * Resistance of a pouch by the current that is printed on it: 0.17/√n over its capacity.
     *
     * @param printedC printed rating n, 1/h
     * @param capacityAh capacity, Ah
     * @return its spread, Ω
     */
    public static Spread pouchResistanceOhm(double printedC, double capacityAh) {
        return Spread.logNormal(0.17 / Math.sqrt(printedC) / capacityAh, 0.45);
    }
}
