package trestle.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The standard atmosphere against published tables; see reference/ussa76/README.md. */
class StandardAtmosphereReferenceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ussa76/published.csv", numLinesToSkip = 1)
    void printedTablesAreReproduced(
            double geopotentialM, double temperatureK, double pressureBar, double densityKgPerM3, double soundMPerS) {
        AirState air = StandardAtmosphere.at(geopotentialM);
        assertThat(air.temperatureK()).isCloseTo(temperatureK, within(0.0051));
        assertThat(air.pressurePa() / 1e5).isCloseTo(pressureBar, within(0.000051));
        assertThat(air.densityKgPerM3()).isCloseTo(densityKgPerM3, within(0.000051));
        // One entry of the source (5000 m) is one unit off in its last digit; hence one unit, not
        // half.
        assertThat(air.speedOfSoundMPerS()).isCloseTo(soundMPerS, within(0.11));
    }

    /**
     * ICAO Doc 7488 / ISA, geopotential 0 and 11 000 m, five digits: temperature and pressure read in a secondary
     * table, the rest worked out from the standard's constants.
     */
    @Test
    void icaoStandardAtmosphereIsMetToFiveDigits() {
        AirState seaLevel = StandardAtmosphere.at(0);
        assertThat(seaLevel.densityKgPerM3()).isCloseTo(1.2250, within(5e-5));
        assertThat(seaLevel.speedOfSoundMPerS()).isCloseTo(340.294, within(5e-4));
        AirState tropopause = StandardAtmosphere.at(11_000);
        assertThat(tropopause.temperatureK()).isCloseTo(216.65, within(1e-9));
        assertThat(tropopause.pressurePa()).isCloseTo(22_632, within(0.5));
        assertThat(tropopause.densityKgPerM3()).isCloseTo(0.36392, within(5e-6));
        assertThat(tropopause.speedOfSoundMPerS()).isCloseTo(295.07, within(5e-3));
    }

    /** USSA 1976 viscosity, five digits, from memory. */
    @Test
    void viscosityFollowsSutherland() {
        assertThat(StandardAtmosphere.at(0).viscosityPaS()).isCloseTo(1.7894e-5, within(5e-10));
        assertThat(StandardAtmosphere.at(5000).viscosityPaS()).isCloseTo(1.6281e-5, within(5e-10));
    }

    /**
     * FAA Pilot's Handbook of Aeronautical Knowledge, figure 10-3: 29.70 inHg at sea level is +205
     * ft.
     */
    @Test
    void pressureAltitudeOfALowAltimeterSetting() {
        double pascalPerInchOfMercury = 3386.389;
        double pressurePa = 29.70 * pascalPerInchOfMercury;
        double altitudeFt = 205;
        assertThat(StandardAtmosphere.pressurePa(altitudeFt * 0.3048)).isCloseTo(pressurePa, withPercentage(0.004));
    }

    @Test
    void densityAltitudeOfStandardAirIsItsAltitude() {
        for (double altitudeM : new double[] {-500, 0, 1234, 10_999, 11_001, 19_000}) {
            double density = StandardAtmosphere.at(altitudeM).densityKgPerM3();
            assertThat(StandardAtmosphere.densityAltitudeM(density)).isCloseTo(altitudeM, within(1e-3));
        }
    }
}
