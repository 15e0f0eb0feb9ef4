package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A climb and a long cruise with bursts, against the porous-electrode model of PyBaMM, at 40 samples;
 * see the READMEs of okane2022 and ai2020. In the first flight 3.0 V is crossed in the step of a
 * burst, where the energy can hardly miss.
 */
class MissionReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "okane2022, mission_25C.csv, 25, 36.4, 4.55, 18.2, 0.0083",
        "ai2020, mission_10C.csv, 10, 17.32, 2.165, 8.66, 0.0042"
    })
    void voltageAndEnergyOfAStepwiseLoad(
            String source, String file, double ambientC, double climbW, double cruiseW, double burstW, double rmsV) {
        SampledCurve reference = SampledCurve.read("/reference/" + source + "/" + file);
        PackState full = Cells.one(Cells.setOf(source), Bath.keepingAt(ambientC + 273.15), 1);
        SampledCurve ours = SampledCurve.of(full, flight(climbW, cruiseW, burstW, 60), 2.4);
        double error = reference.energyErrorPercent(ours, 3.0);
        assertThat(error).isCloseTo(0, within(0.02));
        assertThat(reference.rmsAtSamplesV(ours)).isLessThan(rmsV);
    }

    private static Load.Profile flight(double climbW, double cruiseW, double burstW, int cycles) {
        List<PowerStep> steps = new ArrayList<>();
        steps.add(new PowerStep(climbW, 90));
        for (int i = 0; i < cycles; i++) {
            steps.add(new PowerStep(cruiseW, 580));
            steps.add(new PowerStep(burstW, 20));
        }
        return new Load.Profile(steps);
    }
}
