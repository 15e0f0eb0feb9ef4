package trestle.endpoint.common;

import java.util.Optional;
import trestle.api.model.ApiCellFormat;
import trestle.api.model.ApiCellKind;
import trestle.api.model.ApiChemistry;

/** What a cell of a size and a kind usually holds, Ah; from memory, no maker's. */
public final class CellFormats {
    private CellFormats() {}

    /**
     * Capacity of a cylinder.
     *
     * @param kind of the cell, or null
     * @param format of the cell, or null
     * @return capacity, Ah; empty where no such cell is usual
     */
    public static Optional<Double> usualAh(ApiCellKind kind, ApiCellFormat format) {
        if (kind == null || format == null) {
            return Optional.empty();
        }
        return switch (kind) {
            case ENERGY ->
                switch (format) {
                    case _18650 -> Optional.of(3.4);
                    case _21700 -> Optional.of(5.0);
                    default -> Optional.empty();
                };
            case POWER ->
                switch (format) {
                    case _18650 -> Optional.of(2.6);
                    case _21700 -> Optional.of(4.2);
                    default -> Optional.empty();
                };
            case LFP_POWER ->
                switch (format) {
                    case _18650 -> Optional.of(1.1);
                    case _26650 -> Optional.of(2.5);
                    default -> Optional.empty();
                };
            case LFP_ENERGY ->
                switch (format) {
                    case _18650 -> Optional.of(1.6);
                    case _26650 -> Optional.of(3.4);
                    default -> Optional.empty();
                };
            case POUCH -> Optional.empty();
        };
    }

    /** Voltage that energy over capacity is reckoned with, V. */
    public static double nominalV(ApiCellKind kind) {
        return switch (kind) {
            case ENERGY, POWER -> nominalV(ApiChemistry.LI_ION);
            case POUCH -> nominalV(ApiChemistry.LIPO);
            case LFP_POWER, LFP_ENERGY -> nominalV(ApiChemistry.LFP);
        };
    }

    static double nominalV(ApiChemistry chemistry) {
        return switch (chemistry) {
            case LFP -> 3.2;
            case LIPO -> 3.7;
            default -> 3.6;
        };
    }
}
