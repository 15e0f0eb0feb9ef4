package trestle.battery;

import java.util.List;
import java.util.stream.IntStream;
import trestle.numeric.Guard;

/**
 * One cell of a segment while it is charged: the model of a discharge with the current turned round, its electrode
 * tables going on with their last slope above full. Not thread-safe; lives inside one run.
 */
public final class ChargingCell {
    /** Of a current found, over itself. */
    private static final double ACCURACY = 1e-9;

    private static final int MOST_STEPS = 60;

    private final Segment segment;
    private final CellState state;

    ChargingCell(Segment segment, CellState state) {
        this.segment = segment;
        this.state = state;
    }

    /**
     * The cells of a rested pack, one for each segment.
     *
     * @param pack the pack, at its segments' states of charge
     * @param surroundings air, temperature at the start and covering
     * @return the cells
     */
    public static List<ChargingCell> of(Pack pack, Surroundings surroundings) {
        PackState start = PackState.of(pack, surroundings);
        return IntStream.range(0, pack.segments().size())
                .mapToObj(k -> new ChargingCell(pack.segments().get(k), start.copyOfCell(k)))
                .toList();
    }

    /**
     * The segment that it stands for.
     *
     * @return the segment
     */
    public Segment segment() {
        return segment;
    }

    /**
     * Another cell in the same state.
     *
     * @return a copy
     */
    public ChargingCell copy() {
        return new ChargingCell(segment, state.copy());
    }

    /**
     * Takes over another state of the same cell.
     *
     * @param other the other
     */
    public void take(ChargingCell other) {
        state.take(other.state);
    }

    /** Works out what does not depend on the current; needed after each step. */
    public void prepare() {
        state.prepare();
    }

    /**
     * Terminal voltage, which rises with the current.
     *
     * @param chargingA current into the cell, A, 0 or more
     * @return voltage, V
     */
    public double voltageV(double chargingA) {
        return state.voltageV(-chargingA);
    }

    /**
     * Rise of voltage with current.
     *
     * @param chargingA current into the cell, A, 0 or more
     * @return slope, Ω
     */
    public double slopeOhm(double chargingA) {
        return state.slopeOhm(chargingA);
    }

    /**
     * The current at which the cell shows a voltage, by Newton's method: voltage over current is concave, so each step
     * from below stays below the root.
     *
     * @param voltageV voltage, V
     * @return current into the cell, A; 0 where it shows more at rest
     */
    public double currentAtA(double voltageV) {
        double currentA = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double lackV = voltageV - voltageV(currentA);
            if (currentA == 0 && lackV <= 0) {
                return 0;
            }
            double moreA = lackV / slopeOhm(currentA);
            currentA += moreA;
            if (Math.abs(moreA) <= ACCURACY * currentA) {
                break;
            }
        }
        return Math.max(0, currentA);
    }

    /**
     * Heat set free: what it takes beyond its voltage at rest.
     *
     * @param chargingA current into the cell, A, 0 or more
     * @return heat, W
     */
    public double heatW(double chargingA) {
        return chargingA * (voltageV(chargingA) - state.restV());
    }

    /**
     * Goes on at a constant current.
     *
     * @param chargingA current into the cell, A, 0 or more
     * @param heatW heat set free in it, W
     * @param durationS how long, s
     */
    public void advance(double chargingA, double heatW, double durationS) {
        state.advance(-Guard.notNegative("chargingA", chargingA), heatW, durationS);
    }

    /**
     * Charge that it has, of what it holds now.
     *
     * @return share, about 0 to 1
     */
    public double chargeFraction() {
        return state.charge;
    }

    /**
     * Temperature.
     *
     * @return temperature, K
     */
    public double temperatureK() {
        return state.temperatureK;
    }

    /**
     * Charge between empty and full as it is now.
     *
     * @return charge of one cell, C
     */
    public double capacityC() {
        return state.cell().capacityC();
    }

    /**
     * Voltage after a long rest at a state of charge.
     *
     * @param fraction charge, of what it holds now
     * @return voltage, V
     */
    public double restVoltageV(double fraction) {
        return state.cell().set().electrodes().openCircuitV(fraction);
    }
}
