package trestle;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintStream;
import java.util.Locale;

/** Whether this copy works on this machine: every calculation is asked its own example. */
final class SelfCheck {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private SelfCheck() {}

    /**
     * Asks every calculation of the index its own example, and prints a line for each.
     *
     * @param caller asks the running service
     * @param out takes the lines
     * @return whether all were answered
     */
    static boolean run(Caller caller, PrintStream out) {
        boolean whole = true;
        try {
            JsonNode index = MAPPER.readTree(caller.get("/v1"));
            for (JsonNode entry : index.path("calculations")) {
                whole &= answered(caller, entry, out);
            }
        } catch (IOException unreachable) {
            out.println("the index: " + unreachable.getMessage());
            return false;
        }
        return whole;
    }

    private static boolean answered(Caller caller, JsonNode entry, PrintStream out) {
        String name = entry.path("name").asText();
        try {
            byte[] example = caller.get(entry.path("example").asText());
            byte[] answer = caller.post(entry.path("href").asText(), example);
            String verdict = MAPPER.readTree(answer).path("verdict").asText();
            out.printf(Locale.ROOT, "%-20s answered: %s%n", name, verdict);
            return !verdict.isEmpty();
        } catch (IOException failed) {
            out.printf(Locale.ROOT, "%-20s FAILED: %s%n", name, failed.getMessage());
            return false;
        }
    }
}
