package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The cell model against isothermal discharges at constant power that we computed with the
 * porous-electrode model of PyBaMM on published parameter sets, the sets that the model was fitted
 * to: this shows how well the small model follows the large one, not how well either follows a given
 * cell. Sources in the README of each folder, some 40 points a curve. Errors of energy are in percent of the total energy of the curve, at each
 * cutoff from 3.5 V down in steps of 0.1 V.
 */
class CellModelReferenceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery-curves/isothermal.csv", numLinesToSkip = 1)
    void isothermalDischargesAreFollowed(String source, String file, double powerW, double ratePerH, double ambientC) {
        SampledCurve reference = SampledCurve.read("/reference/" + source + "/" + file);
        PackState full = Cells.one(Cells.setOf(source), Bath.keepingAt(ambientC + 273.15), 1);
        SampledCurve ours = SampledCurve.of(full, new Load.Power(powerW), reference.lastV() - 0.1);
        Limit limit = Limit.of(source, ratePerH, ambientC);
        assertThat(reference.rmsAgainstV(ours)).isLessThan(limit.rmsV);
        IntStream.rangeClosed(20, limit.highestCutoffTenths)
                .mapToDouble(tenths -> tenths / 10.0)
                .filter(cutoffV -> cutoffV >= reference.lastV())
                .forEach(cutoffV -> assertThat(reference.energyErrorPercent(ours, cutoffV))
                        .as("energy to %s V", cutoffV)
                        .isBetween(-limit.energyPercent, limit.energyPercent));
    }

    /**
     * What is asked of a curve.
     *
     * @param rmsV root mean square error of voltage, V
     * @param energyPercent error of energy at a cutoff, % of the curve's energy
     * @param highestCutoffTenths highest cutoff, tenths of a volt
     */
    private record Limit(double rmsV, double energyPercent, int highestCutoffTenths) {
        static Limit of(String source, double ratePerH, double ambientC) {
            return switch (source) {
                case "ai2020" -> new Limit(0.0088, 1.2, 35);
                // The plateau lies at 3.2 to 3.3 V: 2 mV move the crossing of 3.2 V by a tenth of
                // the energy. There the voltage is held instead.
                case "prada2013" -> new Limit(0.0058, 1.35, 31);
                default -> nmc(ratePerH, ambientC);
            };
        }

        private static Limit nmc(double ratePerH, double ambientC) {
            if (ratePerH <= 0.5) {
                return new Limit(0.0146, 1.6, 35);
            }
            if (ratePerH == 1 && ambientC >= 10) {
                return new Limit(0.0299, 3.25, 35);
            }
            // Outside the validated range, at the honest residual: surfaces of the grains starve,
            // which three modes do not follow. Without heating such rates are not met in practice.
            if (ratePerH == 1) {
                return new Limit(0.0234, 9.6, 35);
            }
            return ambientC >= 40 ? new Limit(0.0248, 2.25, 35) : new Limit(0.0347, 15.05, 35);
        }
    }
}
