package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example {@code after_flight.py} against the live service, on a log that a known power curve made. */
class AfterFlightHttpTest {
    private static final double DENSITY = 1.225;

    @TempDir
    Path folder;

    /** Twenty minutes, a row a second, five airspeeds; the current in mA under a heading of the recorder's own. */
    private Path log() throws IOException {
        StringBuilder csv = new StringBuilder("time_s,voltage_v,Curr,airspeed_m_per_s,note\n");
        for (int i = 0; i < 1200; i++) {
            double v = 13 + i / 60 % 5 * 2;
            double volts = 25 - 0.001 * i;
            double watts = 14 + 0.0218 * DENSITY * v * v * v + 18.1 * 6.6 * 6.6 / (DENSITY * v);
            csv.append(String.format(
                    Locale.ROOT,
                    "%d,%.3f,%.1f,%.3f,x%n",
                    i,
                    volts,
                    1000 * watts / volts * (1 + 0.01 * Math.sin(i)),
                    v + 0.05 * Math.cos(i)));
        }
        return Files.writeString(folder.resolve("flight.csv"), csv);
    }

    @Test
    void aLogBecomesACalibration() throws IOException {
        Path aircraft = Files.writeString(
                folder.resolve("aircraft.json"), "{\"takeoff_mass_g\": 6600, \"systems_power_w\": 14}");
        Path calibration = folder.resolve("calibration.json");

        Command.Outcome outcome = Python.run(
                LiveService.url(),
                "after_flight.py",
                log().toString(),
                "--column",
                "current_a=Curr:0.001",
                "--aircraft",
                aircraft.toString(),
                "--calibration",
                calibration.toString());

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).contains("verdict: attention", "Not judged", "energy_used_wh: ");
        assertThat(Files.readString(calibration)).contains("\"parasite_power_coefficient\": 0.02", "\"fit\"");
    }

    @Test
    void aFieldThatIsNoneIsNamed() throws IOException {
        Command.Outcome outcome =
                Python.run(LiveService.url(), "after_flight.py", log().toString(), "--column", "amps=Curr");
        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).startsWith("amps is no field");
    }

    @Test
    void aLogWithoutCurrentIsRefusedWithItsPointer() throws IOException {
        Command.Outcome outcome = Python.run(LiveService.url(), "after_flight.py", log().toString());
        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).contains("/telemetry/current_a");
    }
}
