package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import trestle.atmosphere.AirState;
import trestle.units.Temperature;

/**
 * Currents and temperatures against published ones; see reference/free-air-ampacity, ac43-13-1b and
 * ambient-correction.
 */
class AmpacityReferenceTest {
    private static final double M_PER_FT = 0.3048;

    /**
     * Within 15 % was asked; AWG 14 to 4 are found from 0.955 (AWG 14, 60 °C) to 1.128 (AWG 12, 90
     * °C) of the source, which rounds to 5 A, 2 to 4/0 from 1.004 to 1.095. Building wire has about
     * the walls that PVC usually has here.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/free-air-ampacity/copper.csv", numLinesToSkip = 1)
    void freeAirCurrentsAreMet(int awg, double at60A, double at75A, double at90A) {
        double[] publishedA = {at60A, at75A, at90A};
        for (int i = 0; i < publishedA.length; i++) {
            Wire wire = Wire.usual(Gauge.awg(awg), Insulation.PVC_105);
            double ours = ampacityA(wire, 60 + 15 * i, 30, 0, 1);
            assertThat(ours / publishedA[i])
                    .as("AWG %d at %d °C", awg, 60 + 15 * i)
                    .isBetween(0.95, 1.13);
        }
    }

    /**
     * The published factor is {@code sqrt((Tc − Ta) / (Tc − 40))}, cooling in proportion to the
     * rise. Still air cools more than in proportion, so near the rating, where the rise is small,
     * ours falls faster: to 6 % lower (the careful side) with 5 K left. With 15 K and more left it
     * is within 3 %.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ambient-correction/base-40-c.csv", numLinesToSkip = 1)
    void currentFallsWithAmbientTemperatureAsPublished(double ambientC, double ratingC, double factor) {
        Wire wire = Wire.usual(Gauge.awg(10), Insulation.PVC_105);
        double ours = ampacityA(wire, ratingC, ambientC, 0, 1) / ampacityA(wire, ratingC, 40, 0, 1);
        double leastShare = ratingC - ambientC < 15 ? 0.935 : 0.97;
        assertThat(ours).isBetween(leastShare * factor - 0.005, 1.03 * factor + 0.005);
    }

    /**
     * AC 43.13-1B page 11-27: 47 A by the chart, AWG 14, 150 K above 50 °C; ours is 7 % higher. The
     * chart belongs to tested wire with a margin of its own.
     */
    @Test
    void harnessChartPointIsMet() {
        assertThat(ampacityA(aircraftWire(), 200, 50, 0, 1)).isCloseTo(47, withPercentage(8));
    }

    /** Same page: 0.91 at 20 000 ft; ours 0.934. */
    @Test
    void altitudeDeratingIsMet() {
        double ratio =
                ampacityA(aircraftWire(), 200, 50, 20_000 * M_PER_FT, 1) / ampacityA(aircraftWire(), 200, 50, 0, 1);
        assertThat(ratio).isCloseTo(0.91, within(0.025));
    }

    /**
     * Same page: 0.6 for 8 wires with 60 % of the harness's capacity in use. Read as 4.8 wires that
     * carry the current. The conductivity of the bundle is set by this point, so this is no proof.
     */
    @Test
    void bundleDeratingIsMet() {
        double ratio = ampacityA(aircraftWire(), 200, 50, 0, 0.6 * 8) / ampacityA(aircraftWire(), 200, 50, 0, 1);
        assertThat(ratio).isCloseTo(0.6, within(0.005));
    }

    /**
     * A point that set nothing: 0.52 for 35 wires at 20 %, AC 43.13-1B example 1, from memory; AWG
     * 20 at 140 K above 60 °C.
     */
    @Test
    void bundleDeratingOfALargeHarnessIsMet() {
        Wire wire = Wire.usual(Gauge.awg(20), Insulation.PTFE_200);
        double ratio = ampacityA(wire, 200, 60, 0, 0.2 * 35) / ampacityA(wire, 200, 60, 0, 1);
        assertThat(ratio).isCloseTo(0.52, within(0.015));
    }

    /** Same page, all together: 26 A; ours 28.4 A, the three residuals multiplied. */
    @Test
    void harnessExampleIsMet() {
        assertThat(ampacityA(aircraftWire(), 200, 50, 20_000 * M_PER_FT, 0.6 * 8))
                .isCloseTo(26, withPercentage(10));
    }

    /**
     * AC 43.13-1B table 11-9, note 1: 70 °C ambient, 60 000 ft, 33 wires (9 from size 8 up) with 20
     * % of the harness in use. At 7 % of sea level's pressure, far above where this service is
     * meant to work, ours is 1.00 to 1.26 of the table, whose small currents have one digit.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ac43-13-1b/table-11-9.csv", numLinesToSkip = 1)
    void harnessTableIsNeverFarOff(String awg, double at105A, double at150A, double at200A, double ohm) {
        Gauge gauge = Gauge.parse(GaugeSystem.AWG, awg);
        double heated = 0.2 * (Awg.number(awg) >= 10 ? 33 : 9);
        Wire wire = Wire.usual(gauge, Insulation.PTFE_200);
        double[] ratingsC = {105, 150, 200};
        double[] publishedA = {at105A, at150A, at200A};
        for (int i = 0; i < ratingsC.length; i++) {
            double ours = ampacityA(wire, ratingsC[i], 70, 60_000 * M_PER_FT, heated);
            assertThat(ours / publishedA[i]).as(awg).isBetween(1.0, 1.26);
        }
    }

    /**
     * AC 43.13-1B page 11-28: AWG 14 in the harness above carries 20 A of its 26 A. The circular's
     * formula, {@code T1 + (TR − T1) sqrt(I2 / Imax)} from memory, gives 182 °C and calls itself
     * quite conservative; a rise with the square of the current gives 139 °C, and ours lies there.
     */
    @Test
    void temperatureAtPartOfTheRatedCurrentIsBelowTheCircularsEstimate() {
        HeatPath path = path(aircraftWire(), 50, 20_000 * M_PER_FT, 0.6 * 8);
        double ratedA = SteadyState.currentA(aircraftWire(), path, Temperature.kFromC(200));
        double conductorC = Temperature.cFromK(SteadyState.of(aircraftWire(), path, ratedA * 20 / 26)
                .orElseThrow()
                .conductorK());
        double circularC = 50 + 150 * Math.sqrt(20.0 / 26);
        assertThat(circularC).isCloseTo(182, within(0.5));
        assertThat(conductorC).isLessThan(circularC).isCloseTo(138.76, within(1.5));
        double longestFt = 15.5 / Copper.resistanceRatio(Temperature.kFromC(circularC));
        assertThat(longestFt).isCloseTo(9.5, within(0.05));
    }

    /**
     * Incropera and DeWitt, example 9.4, from memory: a pipe of 0.1 m at 165 °C in air of 23 °C
     * gives off 325 W/m by convection.
     */
    @Test
    void textbookPipeGivesOffItsHeat() {
        double heatWPerM = NaturalConvection.heatWPerM(Temperature.kFromC(165), Temperature.kFromC(23), 0.1, 101_325);
        assertThat(heatWPerM).isCloseTo(325, withPercentage(1));
    }

    /** Incropera and DeWitt, table A.4, from memory: 26.3 and 40.7 mW/(m K), Pr 0.707 and 0.684. */
    @Test
    void airConductsAsTabled() {
        assertThat(NaturalConvection.airConductivityWPerMK(300)).isCloseTo(0.0263, withPercentage(1));
        assertThat(NaturalConvection.airConductivityWPerMK(500)).isCloseTo(0.0407, withPercentage(2));
        assertThat(new AirState(300, 101_325).viscosityPaS()).isCloseTo(1.846e-5, within(5e-8));
    }

    /** AWG 14 with a thin fluoropolymer wall. */
    private static Wire aircraftWire() {
        return Wire.usual(Gauge.awg(14), Insulation.PTFE_200);
    }

    private static double ampacityA(Wire wire, double ratingC, double ambientC, double altitudeM, double heatedCount) {
        return SteadyState.currentA(wire, path(wire, ambientC, altitudeM, heatedCount), Temperature.kFromC(ratingC));
    }

    private static HeatPath path(Wire wire, double ambientC, double altitudeM, double heatedCount) {
        return new HeatPath(wire, Surroundings.freeAir(Temperature.kFromC(ambientC), altitudeM), heatedCount);
    }
}
