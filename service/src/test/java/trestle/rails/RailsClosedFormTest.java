package trestle.rails;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.units.Temperature;

/**
 * Heat and temperature of linear regulators against {@code P = (Vin − Vout) I}, {@code Tj = Ta + P Σ R} by hand;
 * nothing published. No package survives the third.
 */
class RailsClosedFormTest {
    private static final double JUNCTION_LIMIT_C = 125;

    @ParameterizedTest
    @CsvSource({
        "small, 15, 5, 0.2, 20, 25, 2, 65",
        "sink, 12, 5, 1, 16, 25, 7, 137",
        "bare, 12, 5, 0.5, 50, 25, 3.5, 200"
    })
    void heatAndTemperatureOfALinearRegulator(
            String example,
            double inputV,
            double outputV,
            double currentA,
            double resistanceKPerW,
            double ambientC,
            double heatW,
            double junctionC) {
        Cooling cooling =
                new Cooling(resistanceKPerW, Temperature.kFromC(ambientC), Temperature.kFromC(JUNCTION_LIMIT_C));
        Regulator regulator = new Regulator(
                new Conversion.Linear(), outputV, 2, OptionalDouble.empty(), outputV + 2, 30, Optional.of(cooling));
        Load load = new Load("all", 1, currentA, OptionalDouble.empty(), 1, true, LoadRole.OTHER);
        RailBudget budget = Rails.of(
                new RailTask(new Supply(inputV, inputV), List.of(new Rail("rail", regulator, List.of(load), false))));
        RailLoad carried = budget.rails().get(0);
        assertThat(carried.heatW()).as(example).isCloseTo(heatW, within(1e-12));
        assertThat(Temperature.cFromK(carried.temperatureK().getAsDouble()))
                .as(example)
                .isCloseTo(junctionC, within(1e-9));
        assertThat(carried.inputCurrentA()).isCloseTo(currentA, within(1e-12));
        assertThat(budget.judgement().findings())
                .filteredOn(f -> f.severity() == Severity.STOP)
                .extracting(Finding::code)
                .hasSize(junctionC > JUNCTION_LIMIT_C ? 1 : 0)
                .allMatch(code -> code.equals("regulator-too-hot"));
    }

    /** 5 V of 12 V. */
    @Test
    void efficiencyOfALinearRegulatorIsTheRatioOfVoltages() {
        double inputW = new Conversion.Linear().inputPowerW(12, 5, 1);
        assertThat(100 * 5 * 1 / inputW).isCloseTo(41.667, within(5e-4));
    }

    /** 5 W, 125 and 25 °C, 5 + 1 K/W ahead of the sink: 14 K/W. */
    @Test
    void aHeatSinkIsSized() {
        double all = Cooling.greatestResistanceKPerW(5, Temperature.kFromC(25), Temperature.kFromC(125));
        assertThat(all - (5 + 1)).isCloseTo(14, within(1e-9));
    }
}
