package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import trestle.units.Area;
import trestle.units.Length;
import trestle.units.Temperature;

/** Conductors against published tables; see reference/awg, iec60228, ac43-13-1b. */
class GaugeReferenceTest {
    private static final double M_PER_1000_FT = 304.8;

    /** A circular mil is π/4 of a square mil. */
    private static final double MM2_PER_CIRCULAR_MIL = Math.PI / 4 * 0.0254 * 0.0254;

    /** Four printed digits, one of them up to 0.06 % off: the area law is held to 0.1 %. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/awg/conductors.csv", numLinesToSkip = 1)
    void americanGaugesHaveThePublishedDiameterAreaAndResistance(
            int awg, double diameterIn, double circularMils, Double ohmPer1000Ft) {
        Gauge gauge = Gauge.awg(awg);
        assertThat(Length.inFromM(gauge.solidDiameterM())).isCloseTo(diameterIn, withPercentage(0.06));
        assertThat(Area.mm2FromM2(gauge.areaM2())).isCloseTo(circularMils * MM2_PER_CIRCULAR_MIL, withPercentage(0.1));
        if (ohmPer1000Ft != null) {
            assertThat(Copper.resistancePerMOhm(gauge.areaM2()) * M_PER_1000_FT)
                    .isCloseTo(ohmPer1000Ft, withPercentage(0.06));
            // Stranding is all that parts the two, and it stays within 2 %.
            assertThat(gauge.resistancePerMOhm() * M_PER_1000_FT).isCloseTo(ohmPer1000Ft, withPercentage(2.1));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/iec60228/class5.csv", numLinesToSkip = 1)
    void metricConductorsHaveTheGreatestResistanceOfClass5(double areaMm2, double ohmPerKm) {
        assertThat(Gauge.metric(areaMm2).resistancePerMOhm() * 1000).isCloseTo(ohmPerKm, within(1e-9));
    }

    /**
     * Below the table a ratio is carried on. DIN VDE 0812 flexible wire, from memory: 138, 79 and
     * 57.5 Ω/km at most.
     */
    @Test
    void fineMetricConductorsAreNearTheirUsualGreatestResistance() {
        assertThat(Gauge.metric(0.14).resistancePerMOhm() * 1000).isCloseTo(138, withPercentage(2));
        assertThat(Gauge.metric(0.25).resistancePerMOhm() * 1000).isCloseTo(79, withPercentage(2));
        assertThat(Gauge.metric(0.34).resistancePerMOhm() * 1000).isCloseTo(57.5, withPercentage(2));
    }

    /**
     * IEC 60228 rounds the coefficient to 0.004 /K, we use 0.00393 /K of IEC 60028. What parts the
     * two is that and half a unit of the third digit: 0.003 at 100 °C.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/iec60228/temperature-factor.csv", numLinesToSkip = 1)
    void resistanceRisesWithTemperatureAsPublished(double temperatureC, double factor) {
        double coefficients = (0.004 - 0.00393) * Math.abs(temperatureC - 20) * factor * factor;
        assertThat(1 / Copper.resistanceRatio(Temperature.kFromC(temperatureC)))
                .isCloseTo(factor, within(0.0005 + coefficients));
    }

    /** NBS Handbook 100: 0.017241 Ω mm²/m; AC 43.13-1B page 11-22: 254.5 / (234.5 + T). */
    @Test
    void copperIsTheInternationalStandard() {
        assertThat(Copper.RESISTIVITY_20_C_OHM_M * 1e6).isCloseTo(0.017241, within(5e-7));
        assertThat(1 / Copper.resistanceRatio(Temperature.kFromC(100))).isCloseTo(0.7608, within(5e-5));
        assertThat(1 / Copper.resistanceRatio(Temperature.kFromC(20))).isEqualTo(1);
    }

    /**
     * The table's maxima belong to tin-plated wire of real strand counts, whose area is not the
     * nominal one (18 and 20 have more, 12 and 10 less), printed with two digits from size 8 up:
     * they lie between 0.94 and 1.25 of ours.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ac43-13-1b/table-11-9.csv", numLinesToSkip = 1)
    void aircraftWireIsAllowedAboutOurResistance(String awg, double a, double b, double c, double ohmPer1000Ft) {
        double ours = Gauge.parse(GaugeSystem.AWG, awg).resistancePerMOhm() * M_PER_1000_FT;
        assertThat(ohmPer1000Ft / ours).isBetween(0.94, 1.25);
    }

    /** Worked drops; the run lengths of the source count the return. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ac43-13-1b/drop.csv", numLinesToSkip = 1)
    void workedDropsAreReproduced(double ohmPerFt, double lengthFt, double currentA, double dropV, double halfDigitV) {
        Gauge gauge = new Gauge(GaugeSystem.AWG, "table", 1e-6, ohmPerFt / 0.3048);
        WireRun run = WireRun.plain("run", currentA, lengthFt * 0.3048 / 2, 28);
        Wire wire = Wire.usual(gauge, Insulation.ETFE_150);
        double ohm = run.wireResistanceOhm(wire, Temperature.kFromC(20));
        assertThat(currentA * ohm).isCloseTo(dropV, within(halfDigitV));
    }
}
