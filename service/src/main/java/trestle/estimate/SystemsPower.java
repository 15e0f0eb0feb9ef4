package trestle.estimate;

/** What everything but the motors takes, where nothing is known of it but the size of the aircraft: usual practice. */
public final class SystemsPower {
    private static final double SMALL_KG = 6;
    private static final double MIDDLE_KG = 12;

    private SystemsPower() {}

    /**
     * Power at the pack.
     *
     * @param takeoffMassKg mass at take-off, kg; the classes are 3 to 6, 6 to 12 and 12 to 25 kg
     * @return its spread, W
     */
    public static Spread ofMass(double takeoffMassKg) {
        if (takeoffMassKg < SMALL_KG) {
            return Spread.between(5, 9, 16);
        }
        return takeoffMassKg < MIDDLE_KG ? Spread.between(7, 13, 25) : Spread.between(10, 20, 45);
    }

    /** The class of a mass, in words. */
    public static String classOf(double takeoffMassKg) {
        if (takeoffMassKg < SMALL_KG) {
            return "aircraft of 3 to 6 kg";
        }
        return takeoffMassKg < MIDDLE_KG ? "aircraft of 6 to 12 kg" : "aircraft of 12 to 25 kg";
    }
}
