package trestle.battery;

import java.util.List;
import java.util.stream.IntStream;
import trestle.numeric.Guard;

/**
 * A pack at one moment: charge, temperature and lags of each segment. Immutable; a discharge starts
 * from one and ends in another, so that a flight can be followed leg by leg and cut anywhere.
 */
public final class PackState {
    private final Pack pack;
    private final List<CellState> cells;

    private PackState(Pack pack, List<CellState> cells) {
        this.pack = pack;
        this.cells = cells;
    }

    /**
     * A rested pack.
     *
     * @param pack the pack, at its segments' states of charge
     * @param surroundings air and temperature at the start
     * @return its state
     */
    public static PackState of(Pack pack, Surroundings surroundings) {
        double perCellWPerK = Cooling.perCellWPerK(pack, surroundings.covering());
        return of(
                pack,
                pack.segments().stream()
                        .map(it -> cell(it, Cooling.bath(it, perCellWPerK, surroundings)))
                        .toList());
    }

    /** A state made of cell states that nobody else holds. */
    static PackState of(Pack pack, List<CellState> cells) {
        return new PackState(pack, cells);
    }

    static CellState cell(Segment segment, Bath bath) {
        CellModel model = CellModel.of(segment.cell(), segment.healthFraction());
        return new CellState(model, bath, segment.stateOfChargeFraction() * model.fullFraction());
    }

    /**
     * The pack whose state it is.
     *
     * @return the pack
     */
    public Pack pack() {
        return pack;
    }

    /**
     * Mean charge of a segment's cells, of what they hold now.
     *
     * @param segment position in the pack, from 0
     * @return state of charge, about 0 to 1
     */
    public double stateOfChargeFraction(int segment) {
        return cells.get(segment).charge;
    }

    /**
     * Temperature of a segment's cells.
     *
     * @param segment position in the pack, from 0
     * @return temperature, K
     */
    public double temperatureK(int segment) {
        return cells.get(segment).temperatureK;
    }

    /**
     * Voltage of one cell of a segment after a long rest.
     *
     * @param segment position in the pack, from 0
     * @return voltage, V
     */
    public double restVoltageV(int segment) {
        return cells.get(segment).restV();
    }

    /**
     * Voltage of the pack after a long rest.
     *
     * @return voltage, V
     */
    public double restVoltageV() {
        return IntStream.range(0, cells.size())
                .mapToDouble(k -> pack.segments().get(k).seriesCount() * restVoltageV(k))
                .sum();
    }

    /**
     * Terminal voltage of the pack in this very moment under a current, before charge has moved.
     *
     * @param currentA current, A, not negative
     * @return voltage at the end of the leads, V; falls with the current, in the end below 0
     */
    public double terminalVoltageV(double currentA) {
        Circuit circuit = new Circuit(this);
        circuit.solveCurrent(Guard.notNegative("currentA", currentA));
        return circuit.voltageV();
    }

    CellState copyOfCell(int segment) {
        return cells.get(segment).copy();
    }
}
