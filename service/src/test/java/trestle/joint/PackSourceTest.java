package trestle.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trestle.battery.Cell;
import trestle.battery.Chemistry;
import trestle.battery.Covering;
import trestle.battery.Cutoff;
import trestle.battery.Discharge;
import trestle.battery.Load;
import trestle.battery.Pack;
import trestle.battery.PackState;
import trestle.battery.PowerStep;
import trestle.battery.Segment;
import trestle.battery.Surroundings;

/** A pack as a source behind a plug. */
class PackSourceTest {
    private static final Surroundings ROOM = Surroundings.of(298.15, Covering.BARE);

    private static Pack pack(int series, int parallel, double leadOhm) {
        return new Pack(List.of(Segment.full(series, parallel, Cell.typical(Chemistry.LI_ION, 5 * 3600))), leadOhm);
    }

    private static double ohm(int series, int parallel, double leadOhm) {
        return PackSource.of(pack(series, parallel, leadOhm), ROOM).resistanceOhm();
    }

    @Test
    void cellsInSeriesAddAndInParallelShare() {
        assertThat(ohm(7, 3, 0)).isCloseTo(7.0 / 3 * ohm(1, 1, 0), within(1e-6));
        assertThat(ohm(7, 3, 0.01)).isCloseTo(ohm(7, 3, 0) + 0.01, within(1e-9));
    }

    @Test
    void theVoltageIsThatOfAFullPack() {
        assertThat(PackSource.of(pack(7, 3, 0), ROOM).fullVoltageV()).isCloseTo(29.4, within(1e-9));
    }

    /** Lags only add: a second of load sees more than the first moment. */
    @Test
    void theFirstMomentHasLessResistanceThanASecond() {
        Pack pack = pack(7, 3, 0);
        double restV = PackState.of(pack, ROOM).terminalVoltageV(0);
        Discharge second = Discharge.of(
                PackState.of(pack, ROOM), new Load.Profile(List.of(new PowerStep(600, 1))), new Cutoff.CellMinimum());
        assertThat(ohm(7, 3, 0)).isLessThan((restV - second.endVoltageV()) / second.highestCurrentA());
        assertThat(ohm(7, 3, 0)).isGreaterThan(0.3 * (restV - second.endVoltageV()) / second.highestCurrentA());
    }

    @Test
    void aColdPackHasMore() {
        Surroundings cold = Surroundings.of(273.15, Covering.BARE);
        assertThat(PackSource.of(pack(7, 3, 0), cold).resistanceOhm()).isGreaterThan(1.2 * ohm(7, 3, 0));
    }
}
