package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Share of energy above a cutoff at about C/4; see reference/battery-cutoffs/README.md. How far a
 * generic set carries is shown against a published set of another nickel cell.
 */
class CutoffReferenceTest {
    private static final int FIRST_CUTOFF_COLUMN = 3;
    private static final int CUTOFFS = 11;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery-cutoffs/fractions.csv", numLinesToSkip = 1)
    void shareOfEnergyAboveACutoff(ArgumentsAccessor row) {
        String source = row.getString(0);
        CellSet set = Cells.setOf(source);
        double endV = source.startsWith("lco") ? 2.7 : source.startsWith("lfp") ? 2.0 : 2.5;
        SampledCurve ours = atQuarter(set, row.getDouble(1), endV);
        for (int i = 0; i < CUTOFFS; i++) {
            double cutoffV = 2.5 + 0.1 * i;
            String share = row.getString(FIRST_CUTOFF_COLUMN + i);
            if (share != null && cutoffV < highest(source) + 0.01) {
                double oursShare = ours.energyAtJ(cutoffV) / ours.energyAtJ(endV);
                assertThat(oursShare)
                        .as("%s at %.1f V", source, cutoffV)
                        .isCloseTo(Double.parseDouble(share), within(allowance(source, cutoffV)));
            }
        }
    }

    /**
     * What a caller gets who names the chemistry only: the generic nickel set against the set of
     * Ecker et al., a pouch. It keeps less than that cell at every cutoff, which is the careful side:
     * at 25 °C 1.7 % of the energy at 3.0 V, 4.2 % at 3.2 V and 12.5 % at 3.5 V, at 0 °C up to 14.8 %.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0.9810, 0.9601, 0.8246",
        "10, 0.9840, 0.9662, 0.8606",
        "25, 0.9857, 0.9694, 0.8782",
        "40, 0.9864, 0.9705, 0.8841"
    })
    void genericNickelSetKeepsLessThanAnotherNickelCell(double ambientC, double at3V, double at32V, double at35V) {
        SampledCurve ours = atQuarter(Cells.setOf("okane2022"), ambientC, 2.5);
        double allJ = ours.energyAtJ(2.5);
        assertThat(at3V - ours.energyAtJ(3.0) / allJ).isBetween(0.0, 0.0255);
        assertThat(at32V - ours.energyAtJ(3.2) / allJ).isBetween(0.0, 0.0505);
        assertThat(at35V - ours.energyAtJ(3.5) / allJ).isBetween(0.0, 0.148);
    }

    private static SampledCurve atQuarter(CellSet set, double ambientC, double endV) {
        double meanV = endV < 2.5 ? 3.26 : 3.56;
        double powerW = 0.25 * set.fittedCapacityC() / 3600 * meanV;
        PackState full = Cells.one(set, Bath.keepingAt(ambientC + 273.15), 1);
        return SampledCurve.of(full, new Load.Power(powerW), endV - 0.1);
    }

    /** Above 3.1 V lies the plateau of iron phosphate, where a millivolt is a percent. */
    private static double highest(String source) {
        return source.startsWith("lfp") ? 3.1 : 3.5;
    }

    private static double allowance(String source, double cutoffV) {
        boolean high = cutoffV > 3.25;
        return switch (source.split("[_ ]")[0]) {
            case "lfp", "lco" -> 0.008;
            case "nco" -> 0.027;
            // Another set of the same NMC cell: 3 % at 3.4 V and 0 °C.
            default -> source.equals("nmc_chen2020") && high ? 0.04 : 0.015;
        };
    }
}
