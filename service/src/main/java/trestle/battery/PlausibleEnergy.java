package trestle.battery;

/**
 * What bare cells of a chemistry hold for their mass; typical values from memory.
 *
 * @param absurdlyLowWhPerKg below this no such cell was made, Wh/kg
 * @param leastWhPerKg least of usual cells, Wh/kg
 * @param mostWhPerKg greatest of usual cells, Wh/kg
 * @param absurdlyHighWhPerKg above this no such cell was made, Wh/kg
 */
record PlausibleEnergy(double absurdlyLowWhPerKg, double leastWhPerKg, double mostWhPerKg, double absurdlyHighWhPerKg) {

    static PlausibleEnergy of(Chemistry chemistry) {
        return switch (chemistry) {
            case LI_ION -> new PlausibleEnergy(40, 120, 300, 450);
            case LIPO -> new PlausibleEnergy(30, 80, 270, 400);
            case LFP -> new PlausibleEnergy(25, 60, 180, 280);
            case CUSTOM -> new PlausibleEnergy(15, 40, 400, 600);
        };
    }
}
