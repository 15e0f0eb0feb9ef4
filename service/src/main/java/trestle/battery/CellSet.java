package trestle.battery;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import trestle.numeric.PolyLine;
import trestle.units.Charge;
import trestle.units.Time;

/**
 * A parameter set: the behaviour of one kind of cell, free of its size. Symbols of the model in
 * brackets.
 *
 * @param electrodes potentials over charge [UP, UN]
 * @param ohmicOhmC ohmic resistance times capacity at 25 °C, Ω C [R Q]
 * @param ohmicActivationK its Arrhenius temperature, K [BR]
 * @param emptyRiseRatio rise of the ohmic resistance of an empty cell, 1 [rs]
 * @param exchangePerS exchange current over capacity at 25 °C, 1/s [i0/Q]
 * @param exchangeActivationK its Arrhenius temperature, K [BI]
 * @param positiveS radius squared over diffusivity of the positive grain, s [TP]
 * @param positiveActivationK its Arrhenius temperature, K [BP]
 * @param negativeS the same of the negative grain, s [TN]
 * @param negativeActivationK its Arrhenius temperature, K [BN]
 * @param electrolyteGainS electrolyte depletion over current per capacity, s [ge]
 * @param electrolyteS time constant of the electrolyte, s [te]
 * @param electrolyteActivationK Arrhenius temperature of both, K [BE]
 * @param coldFactorK growth of ohmic and kinetic drop in the cold beyond these laws, K [BX]; 0: none
 * @param fittedCapacityC capacity of the cell that was fitted, C
 */
record CellSet(
        Electrodes electrodes,
        double ohmicOhmC,
        double ohmicActivationK,
        double emptyRiseRatio,
        double exchangePerS,
        double exchangeActivationK,
        double positiveS,
        double positiveActivationK,
        double negativeS,
        double negativeActivationK,
        double electrolyteGainS,
        double electrolyteS,
        double electrolyteActivationK,
        double coldFactorK,
        double fittedCapacityC) {

    /**
     * Reads a set from the class path; done once, when the chemistries are loaded.
     *
     * @param resource absolute name of a properties file, which names its electrode table
     * @return the set
     */
    static CellSet read(String resource) {
        Properties file = new Properties();
        try (InputStream in = open(resource)) {
            file.load(in);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
        return new CellSet(
                electrodes(file.getProperty("electrodes")),
                Charge.cFromAh(number(file, "ohmic_resistance_ohm_ah")),
                number(file, "ohmic_activation_k"),
                number(file, "ohmic_rise_when_empty_ratio"),
                number(file, "exchange_current_per_h") / Time.sFromH(1),
                number(file, "exchange_activation_k"),
                number(file, "positive_diffusion_s"),
                number(file, "positive_activation_k"),
                number(file, "negative_diffusion_s"),
                number(file, "negative_activation_k"),
                number(file, "electrolyte_gain_s"),
                number(file, "electrolyte_time_s"),
                number(file, "electrolyte_activation_k"),
                number(file, "cold_factor_k"),
                Charge.cFromAh(number(file, "fitted_capacity_ah")));
    }

    CellSet withElectrodes(Electrodes others) {
        return with(others, coldFactorK);
    }

    /** The same with another growth in the cold, K; 0 is the fitted set itself. */
    CellSet withColdFactorK(double otherK) {
        return with(electrodes, otherK);
    }

    private CellSet with(Electrodes others, double otherColdFactorK) {
        return new CellSet(
                others,
                ohmicOhmC,
                ohmicActivationK,
                emptyRiseRatio,
                exchangePerS,
                exchangeActivationK,
                positiveS,
                positiveActivationK,
                negativeS,
                negativeActivationK,
                electrolyteGainS,
                electrolyteS,
                electrolyteActivationK,
                otherColdFactorK,
                fittedCapacityC);
    }

    private static Electrodes electrodes(String resource) {
        List<double[]> rows;
        try (InputStream in = open(resource)) {
            rows = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("state"))
                    .map(CellSet::row)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
        double[] fraction = column(rows, 0);
        return Electrodes.of(new PolyLine(fraction, column(rows, 1))::at, new PolyLine(fraction, column(rows, 2))::at);
    }

    private static InputStream open(String resource) {
        InputStream in = CellSet.class.getResourceAsStream(resource);
        if (in == null) {
            throw new IllegalStateException("the service was built without " + resource);
        }
        return in;
    }

    private static double number(Properties file, String key) {
        return Double.parseDouble(file.getProperty(key));
    }

    private static double[] row(String line) {
        return java.util.Arrays.stream(line.split(","))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static double[] column(List<double[]> rows, int which) {
        return rows.stream().mapToDouble(row -> row[which]).toArray();
    }
}
