package trestle.joint;

import java.util.List;
import java.util.OptionalDouble;
import trestle.battery.Cell;
import trestle.battery.CellLimits;
import trestle.battery.Chemistry;
import trestle.battery.Covering;
import trestle.battery.Cutoff;
import trestle.battery.InternalResistance;
import trestle.battery.OpenCircuitCurve;
import trestle.battery.Pack;
import trestle.battery.Segment;
import trestle.battery.Surroundings;

/** Go-arounds of a 6S4P pack of 4.9 Ah cells, 700 W, down to 18.6 V. */
final class GoAroundTasks {
    static final double CUTOFF_V = 18.6;
    static final Climbing CLIMBING = new Climbing(13, 6, 66);

    private GoAroundTasks() {}

    /** Cells that shed their heat at once and grow no colder than 25 °C. */
    static GoAroundTask isothermal(double chargeFraction) {
        Cell cell = new Cell(
                Chemistry.LI_ION,
                Chemistry.LI_ION,
                4.9 * 3600,
                new InternalResistance.Typical(),
                OptionalDouble.empty(),
                CellLimits.UNKNOWN,
                OpenCircuitCurve.of(List.of()),
                OptionalDouble.of(0),
                1e6);
        return task(cell, chargeFraction, 298.15, CUTOFF_V);
    }

    static GoAroundTask usual(double chargeFraction, double airK, double cutoffV) {
        return task(Cell.typical(Chemistry.LI_ION, 4.9 * 3600), chargeFraction, airK, cutoffV);
    }

    static GoAroundTask task(Cell cell, double chargeFraction, double airK, double cutoffV) {
        Pack pack = new Pack(List.of(Segment.full(6, 4, cell)), 0);
        return new GoAroundTask(
                new PackStore(pack, new Cutoff.PackVoltage(cutoffV), Surroundings.of(airK, Covering.BARE)),
                List.of(),
                150,
                OptionalDouble.of(chargeFraction),
                FullPower.constant(700, 20),
                0,
                powerW -> 20 * powerW / 700,
                CLIMBING,
                30,
                30);
    }
}
