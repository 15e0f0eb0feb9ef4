package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Discharges that heat the cell, against the porous-electrode model of PyBaMM with lumped heating. */
class SelfHeatingReferenceTest {
    private static final double NMC_W_PER_K = 0.0531;
    private static final double NMC_J_PER_K = 42.8;
    private static final double LCO_W_PER_K = 0.2;
    private static final double LCO_J_PER_K = 41.3;

    /**
     * With the reference's own definition of heat, which leaves out what relaxing concentrations
     * set free, so that only the electrical model is judged.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery-curves/heated.csv", numLinesToSkip = 1)
    void energyIsMetWhenHeatIsDefinedAlike(
            String source, String file, double powerW, double ratePerH, double ambientC) {
        SampledCurve reference = SampledCurve.read("/reference/" + source + "/" + file);
        double ambientK = ambientC + 273.15;
        SampledCurve ours = SampledCurve.of(
                Cells.one(Cells.setOf(source), Bath.keepingAt(ambientK), 1),
                new Load.Power(powerW),
                reference.lastV() - 0.1,
                new SurfaceHeat(bath(source, ambientK)));
        boolean within1C = ratePerH <= 1;
        // 2E lies outside the range and is held at its residual: 39 mV, and 1.000 % (LCO, 0 °C).
        double mostPercent = within1C ? 1.0 : 1.05;
        assertThat(reference.rmsAgainstV(ours)).isLessThan(within1C ? 0.018 : 0.039);
        IntStream.rangeClosed(20, 32)
                .mapToDouble(tenths -> tenths / 10.0)
                .filter(cutoffV -> cutoffV >= reference.lastV())
                .forEach(cutoffV -> assertThat(reference.energyErrorPercent(ours, cutoffV))
                        .as("energy to %s V", cutoffV)
                        .isBetween(-mostPercent, mostPercent));
    }

    /**
     * With the heat that the model counts, which conserves energy. It ends 1 to 7 K warmer up to
     * 1E, and so gains energy in the cold: 3.9 % at 0 °C, 1E.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery-curves/heated.csv", numLinesToSkip = 1)
    void conservedHeatIsWarmerAndGainsEnergyInTheCold(
            String source, String file, double powerW, double ratePerH, double ambientC) {
        SampledCurve reference = SampledCurve.read("/reference/" + source + "/" + file);
        double ambientK = ambientC + 273.15;
        SampledCurve ours = SampledCurve.of(
                Cells.one(Cells.setOf(source), bath(source, ambientK), 1),
                new Load.Power(powerW),
                reference.lastV() - 0.1);
        double warmerK = ours.at(reference.durationS(), 3) - 273.15 - reference.at(reference.durationS(), 3);
        assertThat(warmerK).isBetween(-1.2, 7.9);
        double mostPercent = ratePerH < 1 ? 1.6 : ratePerH > 1 ? 6.2 : ambientC > 0 ? 1.3 : 3.9;
        IntStream.rangeClosed(25, 32)
                .mapToDouble(tenths -> tenths / 10.0)
                .filter(cutoffV -> cutoffV >= reference.lastV())
                .forEach(cutoffV -> assertThat(reference.energyErrorPercent(ours, cutoffV))
                        .as("energy to %s V", cutoffV)
                        .isBetween(-0.95, mostPercent));
    }

    private static Bath bath(String source, double ambientK) {
        return source.equals("ai2020")
                ? new Bath(ambientK, ambientK, LCO_W_PER_K, LCO_J_PER_K)
                : new Bath(ambientK, ambientK, NMC_W_PER_K, NMC_J_PER_K);
    }

    /** Warms the cell by {@code i (U at the surfaces - V)}. */
    private static final class SurfaceHeat implements Trace {
        private static final double FARADAY = 96485.33212;
        private static final double GAS = 8.314462618;

        private final Bath bath;
        private double timeS;
        private double heatW;
        private double cellK;

        SurfaceHeat(Bath bath) {
            this.bath = bath;
            this.cellK = bath.startK();
        }

        @Override
        public void point(Stepper now) {
            double dtS = now.tally().timeS - timeS;
            double lostW = bath.conductanceWPerK() * (cellK - bath.ambientK());
            cellK += (heatW - lostW) * dtS / bath.heatCapacityJPerK();
            timeS = now.tally().timeS;
            Circuit circuit = now.circuit();
            heatW = circuit.currentA() * (surfaceV(circuit.cell(0)) - circuit.voltageV());
            circuit.cell(0).temperatureK = cellK;
        }

        /** Difference of the electrode potentials at the surfaces: the voltage without the electrolyte's share. */
        private static double surfaceV(CellState cell) {
            CellModel model = cell.cell();
            double lawsK = cell.thermalV() * FARADAY / (2 * GAS);
            double fullExchangeA = 2
                    * model.exchangeA()
                    * Math.exp(-model.set().exchangeActivationK() * (1 / lawsK - 1 / CellModel.REFERENCE_K));
            double electrolyte = Math.pow(cell.twoExchangeA() / fullExchangeA, 2);
            return cell.openV() - cell.thermalV() * Math.log(electrolyte);
        }
    }
}
