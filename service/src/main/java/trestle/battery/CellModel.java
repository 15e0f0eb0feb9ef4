package trestle.battery;

/**
 * A parameter set brought to one cell's size, resistance and health. Symbols of the model in
 * brackets.
 *
 * @param set its parameters
 * @param capacityC charge between empty and full as it is now, C [Q]
 * @param ohmicOhm ohmic resistance at 25 °C, Ω [Rs]
 * @param exchangeA exchange current at 25 °C, A [i0]
 * @param fullFraction state of charge at its full voltage, 1 unless it is charged to less
 */
record CellModel(CellSet set, double capacityC, double ohmicOhm, double exchangeA, double fullFraction) {
    /** Temperature of the sets' parameters, K: 25 °C. */
    static final double REFERENCE_K = 298.15;

    /**
     * Growth of resistance over loss of capacity: 1.5 times at 80 % health; an engineering
     * assumption from memory.
     */
    static final double GROWTH_PER_LOSS = 2.5;

    /** A set scaled by capacity, its resistance by a factor. */
    static CellModel plain(CellSet set, double capacityC, double factor) {
        return new CellModel(
                set, capacityC, set.ohmicOhmC() / capacityC * factor, set.exchangePerS() * capacityC / factor, 1);
    }

    /**
     * The model of a cell.
     *
     * @param cell the new cell
     * @param healthFraction capacity left, 0 to 1
     * @return its model
     */
    static CellModel of(Cell cell, double healthFraction) {
        CellSet set = setOf(cell);
        double factor = resistanceFactor(cell, set) * growthRatio(healthFraction);
        CellModel asNew = plain(set, cell.capacityC(), factor);
        return new CellModel(
                set,
                cell.capacityC() * healthFraction,
                asNew.ohmicOhm,
                asNew.exchangeA,
                set.electrodes().fractionAtOpenCircuitV(cell.fullVoltageV()));
    }

    /**
     * Growth of resistance with loss of capacity: {@code 1 + 2.5 (1 - health)}.
     *
     * @param healthFraction capacity left, 0 to 1
     * @return resistance over the new cell's
     */
    static double growthRatio(double healthFraction) {
        return 1 + GROWTH_PER_LOSS * (1 - healthFraction);
    }

    private static CellSet setOf(Cell cell) {
        CellSet fitted = cell.dynamics().set();
        CellSet set = cell.coldGrowthK().isPresent()
                ? fitted.withColdFactorK(cell.coldGrowthK().getAsDouble())
                : fitted;
        return cell.openCircuitCurve().isEmpty()
                ? set
                : set.withElectrodes(cell.openCircuitCurve().move(set.electrodes()));
    }

    private static double resistanceFactor(Cell cell, CellSet set) {
        InternalResistance known = cell.resistance();
        if (known instanceof InternalResistance.Dc dc) {
            return factor(set, cell.capacityC(), dc.resistanceOhm());
        }
        if (known instanceof InternalResistance.Ac ac) {
            double dcOhm = ac.resistanceOhm() / InternalResistance.Ac.SHARE_OF_DC;
            return factor(set, cell.capacityC(), dcOhm);
        }
        return 1;
    }

    /** Where no factor gives the measured value: the ratio of the two, as near as it gets. */
    private static double factor(CellSet set, double capacityC, double dcOhm) {
        return PulseResistance.factor(set, capacityC, dcOhm)
                .orElseGet(() -> dcOhm / PulseResistance.ohm(set, capacityC, 1));
    }
}
