package trestle.battery;

import java.util.List;
import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * One cell, new, as its user knows it.
 *
 * @param chemistry kind of cell
 * @param dynamics chemistry whose resistance, lags and laws of temperature it has: a custom cell's own
 *     choice, otherwise its chemistry
 * @param capacityC rated charge, C, above 0
 * @param resistance what is known of its resistance
 * @param massKg mass of the bare cell, kg; empty: worked out from the chemistry
 * @param limits limits on its data sheet
 * @param openCircuitCurve measured open-circuit curve; none: the
 *     chemistry's own, which {@link Chemistry#CUSTOM} does not have
 * @param coldGrowthK growth of its drop in the cold, K, 0 or more; empty: its chemistry's
 * @param heatLossRatio heat that it gives to the air over what its covering lets through, above 0
 */
public record Cell(
        Chemistry chemistry,
        Chemistry dynamics,
        double capacityC,
        InternalResistance resistance,
        OptionalDouble massKg,
        CellLimits limits,
        OpenCircuitCurve openCircuitCurve,
        OptionalDouble coldGrowthK,
        double heatLossRatio) {

    /** Checks the physics. */
    public Cell {
        Guard.present("chemistry", chemistry);
        Guard.present("dynamics", dynamics);
        if (dynamics == Chemistry.CUSTOM || (chemistry != Chemistry.CUSTOM && dynamics != chemistry)) {
            throw new ImpossibleValue("dynamics", "only a custom cell behaves like another chemistry");
        }
        Guard.positive("capacityC", capacityC);
        massKg.ifPresent(it -> Guard.positive("massKg", it));
        Guard.present("openCircuitCurve", openCircuitCurve);
        coldGrowthK.ifPresent(it -> Guard.notNegative("coldGrowthK", it));
        Guard.positive("heatLossRatio", heatLossRatio);
        if (chemistry == Chemistry.CUSTOM && openCircuitCurve.isEmpty()) {
            throw new ImpossibleValue("openCircuitCurve", "a custom cell needs its own open-circuit curve");
        }
    }

    /**
     * A cell that grows cold and sheds heat as its chemistry and its covering have it.
     *
     * @param chemistry kind of cell
     * @param dynamics chemistry whose resistance, lags and laws of temperature it has
     * @param capacityC rated charge, C
     * @param resistance what is known of its resistance
     * @param massKg mass of the bare cell, kg
     * @param limits limits on its data sheet
     * @param openCircuitCurve measured open-circuit curve
     */
    public Cell(
            Chemistry chemistry,
            Chemistry dynamics,
            double capacityC,
            InternalResistance resistance,
            OptionalDouble massKg,
            CellLimits limits,
            OpenCircuitCurve openCircuitCurve) {
        this(chemistry, dynamics, capacityC, resistance, massKg, limits, openCircuitCurve, OptionalDouble.empty(), 1);
    }

    /**
     * A cell that behaves like its chemistry; a custom one like {@link Chemistry#LI_ION}.
     *
     * @param chemistry kind of cell
     * @param capacityC rated charge, C
     * @param resistance what is known of its resistance
     * @param massKg mass of the bare cell, kg
     * @param limits limits on its data sheet
     * @param openCircuitCurve measured open-circuit curve
     */
    public Cell(
            Chemistry chemistry,
            double capacityC,
            InternalResistance resistance,
            OptionalDouble massKg,
            CellLimits limits,
            List<OpenCircuitPoint> openCircuitCurve) {
        this(
                chemistry,
                chemistry == Chemistry.CUSTOM ? Chemistry.LI_ION : chemistry,
                capacityC,
                resistance,
                massKg,
                limits,
                OpenCircuitCurve.of(openCircuitCurve));
    }

    /**
     * A cell of which only the chemistry and the capacity are known.
     *
     * @param chemistry kind of cell
     * @param capacityC rated charge, C
     * @return the cell
     */
    public static Cell typical(Chemistry chemistry, double capacityC) {
        return new Cell(
                chemistry,
                capacityC,
                new InternalResistance.Typical(),
                OptionalDouble.empty(),
                CellLimits.UNKNOWN,
                List.of());
    }

    /**
     * Least voltage in use: the data sheet's, the empty end of the cell's own curve for a custom
     * cell, or the chemistry's.
     *
     * @return minimum voltage, V
     */
    public double minimumVoltageV() {
        return limits.minimumVoltageV()
                .orElseGet(() -> isCustom() ? openCircuitCurve.at(0) : chemistry.minimumVoltageV());
    }

    /**
     * Voltage at which charging ends, found as the minimum is.
     *
     * @return full voltage, V
     */
    public double fullVoltageV() {
        return limits.fullVoltageV().orElseGet(() -> isCustom() ? openCircuitCurve.at(1) : chemistry.fullVoltageV());
    }

    /**
     * Below this the cell is harmed: the chemistry's limit; a custom cell's minimum voltage.
     *
     * @return over-discharge voltage, V
     */
    public double overDischargeV() {
        return isCustom() ? minimumVoltageV() : chemistry.overDischargeV();
    }

    /**
     * Mean open-circuit voltage of a custom cell; otherwise the chemistry's label voltage.
     *
     * @return nominal voltage, V
     */
    public double nominalVoltageV() {
        return isCustom() ? openCircuitCurve.meanV() : chemistry.nominalVoltageV();
    }

    /**
     * Rated charge times nominal voltage.
     *
     * @return nominal energy, J
     */
    public double nominalEnergyJ() {
        return capacityC * nominalVoltageV();
    }

    /**
     * The mass given, or the one typical of the chemistry for this energy.
     *
     * @return mass of the bare cell, kg
     */
    public double massOrTypicalKg() {
        return massKg.orElseGet(() -> nominalEnergyJ() / dynamics.specificEnergyJPerKg());
    }

    private boolean isCustom() {
        return chemistry == Chemistry.CUSTOM;
    }
}
