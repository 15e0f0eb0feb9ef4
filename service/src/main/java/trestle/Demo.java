package trestle;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Locale;
import trestle.finding.Caution;

/**
 * The main job once, as a caller would do it: fetch the example aircraft, post it, read the answer.
 */
final class Demo {
    private static final String REVIEW = "/v1/build-review";
    private static final int LABEL_WIDTH = 28;

    private Demo() {}

    /**
     * Posts the example aircraft to the running service.
     *
     * @param caller asks the running service
     * @return the verdict, the findings, how the checks came out and the key figures as text
     */
    static String run(Caller caller) {
        try {
            byte[] aircraft = caller.get(REVIEW + "/example");
            return text(new ObjectMapper().readTree(caller.post(REVIEW, aircraft)));
        } catch (IOException unreachable) {
            return "the demo could not reach the service: " + unreachable.getMessage() + "\n";
        }
    }

    private static String text(JsonNode answer) {
        StringBuilder text = new StringBuilder();
        line(text, "verdict", answer.path("verdict").asText());
        for (JsonNode finding : answer.path("findings")) {
            text.append("  ")
                    .append(finding.path("severity").asText())
                    .append(": ")
                    .append(finding.path("message").asText())
                    .append(" [")
                    .append(finding.path("at").asText())
                    .append("]\n");
        }
        line(text, "checks", checks(answer.path("checks")));
        answer.path("key_figures")
                .properties()
                .forEach(figure -> line(
                        text,
                        figure.getKey(),
                        String.format(Locale.ROOT, "%.4g", figure.getValue().asDouble())));
        line(text, "cautions", answer.path("cautions").size() + ", in the answer");
        return text.append(Caution.AID).append('\n').toString();
    }

    private static String checks(JsonNode checks) {
        long passed = 0;
        long notJudged = 0;
        for (JsonNode check : checks) {
            String outcome = check.path("outcome").asText();
            passed += outcome.equals("passed") ? 1 : 0;
            notJudged += outcome.equals("not_judged") ? 1 : 0;
        }
        return "%d passed, %d not passed, %d not judged"
                .formatted(passed, checks.size() - passed - notJudged, notJudged);
    }

    private static void line(StringBuilder text, String label, String value) {
        text.append(String.format(Locale.ROOT, "%-" + LABEL_WIDTH + "s %s%n", label, value));
    }
}
