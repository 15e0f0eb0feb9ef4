package trestle.battery;

/**
 * Where a pack's energy goes at a load.
 *
 * @param usableEnergyJ down to the cutoff, the reserve included, J; where a profile ends earlier,
 *     what is left above the cutoff at its mean power is counted too
 * @param usableChargeC the charge that goes with it, C
 * @param reserveEnergyJ share of the usable energy held back, J
 * @param energyBelowCutoffJ left below the cutoff: what the same load would still get out down to the
 *     cells' minimum voltage, J
 * @param durationS time to the cutoff, or to the end of the profile, s
 * @param durationToReserveS time after which only the reserve is left, s; no later than the
 *     duration
 */
public record EnergyBudget(
        double usableEnergyJ,
        double usableChargeC,
        double reserveEnergyJ,
        double energyBelowCutoffJ,
        double durationS,
        double durationToReserveS) {

    /**
     * Energy left below the cutoff over all that the load could get out.
     *
     * @return share, 0 to 1
     */
    public double fractionBelowCutoff() {
        double allJ = usableEnergyJ + energyBelowCutoffJ;
        return allJ > 0 ? energyBelowCutoffJ / allJ : 0;
    }
}
