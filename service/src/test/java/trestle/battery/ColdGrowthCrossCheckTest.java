package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Growth of the drop in the cold, against an earlier implementation of our own: reference/cold-growth. */
class ColdGrowthCrossCheckTest {
    private static final double HEAT_CAPACITY_J_PER_K = 65.55;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/cold-growth/vectors.csv", numLinesToSkip = 1)
    void energyToThreeVolts(double startC, double growthK, String coolingWPerK, double energyWh, Double endC) {
        double startK = startC + 273.15;
        Bath bath = coolingWPerK.equals("inf")
                ? Bath.keepingAt(startK)
                : new Bath(startK, startK, Double.parseDouble(coolingWPerK), HEAT_CAPACITY_J_PER_K);
        CellModel model = CellModel.plain(Chemistry.LI_ION.set().withColdFactorK(growthK), 4.9 * 3600, 1);
        Pack pack = Cells.pack(Segment.full(1, 1, Cells.nmc(4.9)));
        PackState start = PackState.of(pack, List.of(new CellState(model, bath, 1)));
        Discharge run = Discharge.of(start, new Load.Power(8.82), new Cutoff.PackVoltage(3.0));
        assertThat(run.energyJ() / 3600).isCloseTo(energyWh, withPercentage(0.5));
        if (endC != null) {
            // Laws of temperature are refreshed at a quarter of a kelvin.
            assertThat(run.end().temperatureK(0) - 273.15).isCloseTo(endC, within(0.3));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/cold-growth/growth.csv", numLinesToSkip = 1)
    void growthOfTheDrop(double growthK, double at10, double at0, double atMinus10, double atMinus20) {
        assertThat(growth(growthK, 40)).isEqualTo(1);
        assertThat(growth(growthK, 25)).isEqualTo(1);
        assertThat(growth(growthK, 10)).isCloseTo(at10, within(0.0005));
        assertThat(growth(growthK, 0)).isCloseTo(at0, within(0.0005));
        assertThat(growth(growthK, -10)).isCloseTo(atMinus10, within(0.0005));
        assertThat(growth(growthK, -20)).isCloseTo(atMinus20, within(0.0005));
    }

    private static double growth(double growthK, double temperatureC) {
        CellSet set = Chemistry.LI_ION.set().withColdFactorK(growthK);
        CellState cell = new CellState(CellModel.plain(set, 18_000, 1), Bath.keepingAt(temperatureC + 273.15), 0.5);
        cell.prepare();
        return cell.coldFactor();
    }
}
