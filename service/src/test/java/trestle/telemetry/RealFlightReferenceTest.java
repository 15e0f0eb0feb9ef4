package trestle.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The log of a solar seaplane of 9.4 kg, 3 May 2023: P. Sharpe and R. J. Hansman, Physics-Informed Regression and
 * Uncertainty Quantification of Aircraft Performance from Minimal Flight Data, AIAA SciTech 2024. The log stands outside
 * this project, in the folder that {@code TRESTLE_FLIGHTS} names. Charge, energy, distance, wind and resistance were
 * worked out from it apart from this service, by trapezium rule, haversines and least squares; the power curve is the
 * paper's.
 */
class RealFlightReferenceTest {
    private static FlightLog airborne;

    @BeforeAll
    static void read() throws IOException {
        String folder = System.getenv("TRESTLE_FLIGHTS");
        Assumptions.assumeTrue(folder != null, "TRESTLE_FLIGHTS names no folder with solar-surfer-flight.csv");
        List<String> lines = Files.readAllLines(Path.of(folder, "solar-surfer-flight.csv"));
        List<double[]> rows = lines.stream()
                .skip(1)
                .map(line -> java.util.Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .filter(row -> row[0] >= 577 && row[0] <= 840)
                .toList();
        List<String> headings = List.of(lines.get(0).split(","));
        Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
        Map.of(
                        Channel.VOLTAGE, "voltage_v",
                        Channel.CURRENT, "current_a",
                        Channel.AIRSPEED, "airspeed_m_per_s",
                        Channel.ALTITUDE, "altitude_m",
                        Channel.VELOCITY_NORTH, "velocity_north_m_per_s",
                        Channel.VELOCITY_EAST, "velocity_east_m_per_s",
                        Channel.LATITUDE, "latitude_deg",
                        Channel.LONGITUDE, "longitude_deg")
                .forEach((channel, heading) -> columns.put(
                        channel,
                        rows.stream()
                                .mapToDouble(row -> row[headings.indexOf(heading)])
                                .map(x -> heading.endsWith("_deg") ? Math.toRadians(x) : x)
                                .toArray()));
        airborne = FlightLog.of(
                        Telemetry.of(rows.stream().mapToDouble(row -> row[0]).toArray(), columns),
                        new Flown(OptionalDouble.of(9.4), 5, 1.2116, 0.69))
                .orElseThrow();
    }

    @Test
    void chargeEnergyAndPowerAreThoseOfTheTrapeziumRule() {
        assertThat(airborne.totals().coveredS()).isCloseTo(262.8, within(0.05));
        assertThat(airborne.totals().chargeC() / 3600).isCloseTo(0.75111, within(5e-6));
        assertThat(airborne.totals().energyJ() / 3600).isCloseTo(10.2813, within(5e-5));
        assertThat(airborne.totals().meanPowerW()).isCloseTo(140.84, within(5e-3));
        assertThat(airborne.totals().airDistanceM().orElseThrow()).isCloseTo(2832.1, within(0.05));
    }

    /** Geodesics against haversines, and positions nearer than 5 m to the last one left out: 0.5 %. */
    @Test
    void theWayOverTheGroundIsThatOfTheReceiver() {
        assertThat(airborne.totals().groundDistanceM().orElseThrow()).isCloseTo(2678.8, within(13.4));
        assertThat(airborne.totals().jumpCount()).isZero();
    }

    @Test
    void theWindIsTheLeastSquaresOne() {
        Wind wind = airborne.wind().flatMap(WindFit::wind).orElseThrow();
        assertThat(wind.speedMPerS()).isCloseTo(3.98, within(0.05));
        assertThat(Math.toDegrees(wind.fromRad())).isCloseTo(94, within(1.0));
    }

    /** 66.0 mΩ was over steps of more than 5 A, 65.7 over 3 A, the medians 61.7 and 61.5: ours chooses its own bound. */
    @Test
    void theResistanceIsThatOfTheSteps() {
        PackResistance resistance = airborne.resistance().orElseThrow();
        assertThat(resistance.resistanceOhm()).isCloseTo(0.066, within(0.002));
        assertThat(resistance.medianOhm()).isCloseTo(0.0617, within(0.002));
    }
}
