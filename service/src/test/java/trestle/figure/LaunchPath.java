package trestle.figure;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A path of a launch, kept as CSV: our own numbers, as something to draw. */
final class LaunchPath {
    private LaunchPath() {}

    /** The path of {@link Samples#launch()}, as the launch model integrates it. */
    static List<LaunchMoment> thrown() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                LaunchPath.class.getResourceAsStream("launch-path.csv"), StandardCharsets.UTF_8))) {
            return lines.lines().skip(1).map(LaunchPath::moment).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static LaunchMoment moment(String line) {
        String[] cells = line.split(",");
        return new LaunchMoment(
                Double.parseDouble(cells[0]), Double.parseDouble(cells[1]), Double.parseDouble(cells[2]));
    }
}
