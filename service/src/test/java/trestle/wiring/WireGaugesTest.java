package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trestle.numeric.ImpossibleValue;

/** Names, sizes on offer, reference rows, doors. */
class WireGaugesTest {
    @Test
    void sizesOnOfferAreThoseOfTheTradeThinnestFirst() {
        assertThat(WireGauges.offered(GaugeSystem.AWG))
                .extracting(Gauge::designation)
                .containsExactly("30", "28", "26", "24", "22", "20", "18", "16", "14", "12", "10", "8", "6", "4", "2");
        assertThat(WireGauges.offered(GaugeSystem.METRIC))
                .extracting(Gauge::designation)
                .containsExactly(
                        "0.14", "0.25", "0.34", "0.5", "0.75", "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35");
    }

    @Test
    void namesAreReadAsTheyAreWritten() {
        assertThat(Gauge.parse(GaugeSystem.METRIC, "6.0")).isEqualTo(Gauge.metric(6));
        assertThat(Gauge.parse(GaugeSystem.AWG, "2/0")).isEqualTo(Gauge.awg(-1));
        assertThat(Gauge.parse(GaugeSystem.AWG, "000").label()).isEqualTo("AWG 000");
        assertThat(Gauge.metric(10).label()).isEqualTo("10 mm²");
        for (int number = Awg.THICKEST_NUMBER; number <= Awg.THINNEST_NUMBER; number++) {
            assertThat(Awg.number(Awg.designation(number))).isEqualTo(number);
        }
    }

    @Test
    void sizesThatDoNotExistAreRefused() {
        for (String name : List.of("41", "-1", "5/0", "ten", "")) {
            assertThatThrownBy(() -> Gauge.parse(GaugeSystem.AWG, name))
                    .isInstanceOf(ImpossibleValue.class)
                    .hasMessageContaining("0000 to 40");
        }
        assertThatThrownBy(() -> Gauge.parse(GaugeSystem.METRIC, "7"))
                .isInstanceOf(ImpossibleValue.class)
                .hasMessageContaining("7 mm² is not a standard area")
                .hasMessageContaining("4, 6, 10");
        assertThatThrownBy(() -> Gauge.parse(GaugeSystem.METRIC, "six")).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> Gauge.parse(GaugeSystem.METRIC, "NaN")).isInstanceOf(ImpossibleValue.class);
    }

    @Test
    void referenceRowsCoverEverySizeThatCanBeChecked() {
        List<GaugeRow> american = WireGauges.rows(GaugeSystem.AWG);
        assertThat(american).hasSize(44);
        assertThat(american.get(0).gauge().designation()).isEqualTo("40");
        assertThat(american.get(43).gauge().designation()).isEqualTo("0000");
        assertThat(WireGauges.rows(GaugeSystem.METRIC)).hasSize(15);
        GaugeRow ten = american.get(30);
        assertThat(ten.gauge().designation()).isEqualTo("10");
        assertThat(ten.solidDiameterM()).isCloseTo(2.588e-3, within(5e-7));
        assertThat(ten.copperKgPerM()).isCloseTo(0.04677, within(5e-6));
    }

    @Test
    void referenceRowsOfInsulationsAreThoseOfTheContract() {
        assertThat(Insulations.rows())
                .extracting(row -> row.insulation().name())
                .containsExactly("PVC_80", "PVC_105", "XLPE_125", "ETFE_150", "SILICONE_200", "PTFE_200", "PTFE_260");
        assertThat(Insulations.rows())
                .allSatisfy(row -> assertThat(row.insulation().name())
                        .endsWith("_" + Math.round(row.ratingTemperatureK() - 273.15)));
    }

    @Test
    void usualWallsNeverThinWithSize() {
        for (InsulationMaterial material : InsulationMaterial.values()) {
            double last = 0;
            for (GaugeRow row : WireGauges.rows(GaugeSystem.AWG)) {
                double wall = material.typicalWallM(row.gauge().areaM2());
                assertThat(wall).isGreaterThanOrEqualTo(last);
                last = wall;
            }
        }
    }

    @Test
    void impossibleRunsAreRefused() {
        assertThatThrownBy(() -> WireRun.plain("r", -1, 1, 12)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> WireRun.plain("r", 1, 0, 12)).isInstanceOf(ImpossibleValue.class);
        WireRun run = WireRun.plain("r", 10, 1, 12);
        assertThatThrownBy(() -> WireTasks.peaking(run, 5, 1))
                .isInstanceOf(ImpossibleValue.class)
                .hasMessage("a peak of 5 A is below the continuous current of 10 A");
        assertThatThrownBy(() -> new WireRun("r", 1, 1, 12, Optional.empty(), 0, List.of(), true, false))
                .isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> WireTasks.in(Enclosure.FREE_AIR, 20, 0)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new Connector("c", 1e-3, 60, 0)).isInstanceOf(ImpossibleValue.class);
    }
}
