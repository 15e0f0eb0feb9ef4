package trestle.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.finding.Finding;
import trestle.units.Temperature;

/**
 * What a builder should know about the choice: of the sizes, of the one asked about, of the run.
 */
final class WireFindings {
    private WireFindings() {}

    static List<Finding> of(
            WireTask task,
            List<GaugeAnswer> candidates,
            Optional<GaugeAnswer> recommended,
            Optional<GaugeAnswer> checked) {
        List<Finding> findings = new ArrayList<>();
        if (recommended.isEmpty()) {
            findings.addAll(NoGaugeFindings.of(task, candidates.get(candidates.size() - 1)));
        }
        checked.ifPresent(answer -> findings.addAll(CheckedGaugeFindings.of(task, answer, recommended)));
        findings.addAll(RunFindings.of(task.run()));
        return findings;
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    static double celsius(double temperatureK) {
        return Temperature.cFromK(temperatureK);
    }
}
