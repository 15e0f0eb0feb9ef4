package trestle.charging;

import java.util.OptionalDouble;
import trestle.battery.Cell;
import trestle.battery.Chemistry;
import trestle.battery.Segment;
import trestle.units.Temperature;
import trestle.units.Time;

/** What cells may take while they are charged, by temperature. */
final class CellCare {
    /** Temperature that a rating holds for where none is stated, K: 25 °C. */
    static final double RATED_K = 298.15;

    /** Growth of the largest rate without plating with temperature, K, [1, 2]. */
    private static final double COLD_K = 3200;

    /** Below this lithium cells are not charged; common limit of data sheets, from memory. */
    static final double FREEZING_K = Temperature.kFromC(0);

    /** From here on less, and from the last on none; common limits of data sheets, from memory. */
    static final double WARM_K = Temperature.kFromC(45);

    private static final double HOT_K = Temperature.kFromC(50);
    static final double TOO_HOT_K = Temperature.kFromC(60);

    /** Hold voltages in the warmth; a battery association's guidance, second hand. */
    private static final double WARM_HOLD_V = 4.15;

    private static final double HOT_HOLD_V = 4.10;
    private static final double WARM_LFP_SHARE = 0.5;

    private CellCare() {}

    /** Rating of a segment's cells together, A; typical of the chemistry where its sheet's is not given. */
    static double ratedA(Segment segment) {
        Cell cell = segment.cell();
        double typicalA = cell.capacityC() * cell.dynamics().chargeRatePerH() / Time.sFromH(1);
        return segment.parallelCount() * cell.limits().maxChargeCurrentA().orElse(typicalA);
    }

    /**
     * Share of the rating that cells may take in the cold: {@code exp(−3200 (1/T − 1/T0))} below the temperature T0
     * that the rating holds for.
     *
     * @param temperatureK of the cells, K
     * @param ratingK that the rating holds for, K; empty: 25 °C
     * @return share, 0 to 1; 0 below freezing but for a rating that holds there
     */
    static double coldFraction(double temperatureK, OptionalDouble ratingK) {
        double ratedK = ratingK.orElse(RATED_K);
        if (temperatureK < Math.min(FREEZING_K, ratedK)) {
            return 0;
        }
        return Math.min(1, Math.exp(-COLD_K * (1 / temperatureK - 1 / ratedK)));
    }

    /** Share of the rating that warm cells may take. */
    static double warmFraction(double temperatureK, Chemistry chemistry) {
        if (temperatureK >= TOO_HOT_K) {
            return 0;
        }
        return temperatureK >= WARM_K && chemistry == Chemistry.LFP ? WARM_LFP_SHARE : 1;
    }

    /** Voltage that a cell is held at, V: less where it is warm. */
    static double holdV(double wantedV, double temperatureK, Chemistry chemistry) {
        if (temperatureK < WARM_K || chemistry == Chemistry.LFP) {
            return wantedV;
        }
        return Math.min(wantedV, temperatureK < HOT_K ? WARM_HOLD_V : HOT_HOLD_V);
    }
}
