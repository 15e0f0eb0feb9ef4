package trestle.batch;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.Map;
import trestle.binding.Json;
import trestle.binding.Reason;
import trestle.binding.Refusal;
import trestle.endpoint.Table;

/** Sends the rows of one answer while they are made. */
public final class TableRun {
    private TableRun() {}

    /** A row of a table. */
    private record Made(Map<String, Object> values) implements Row {
        @Override
        public Object whole() {
            return values;
        }

        @Override
        public JsonNode tree() {
            return Json.MAPPER.valueToTree(values);
        }

        @Override
        public String error() {
            return String.valueOf(values.getOrDefault(Table.ERROR, ""));
        }
    }

    /**
     * Sends row after row until there is none, the time is up or the client is gone.
     *
     * @param table the rows
     * @param rows where they go
     * @param deadline after which no further row is begun
     * @throws IOException when the client is gone
     */
    public static void send(Table table, RowStream rows, Deadline deadline) throws IOException {
        long sent = 0;
        while (table.rows().hasNext()) {
            if (deadline.isPast()) {
                rows.refusal(
                        sent + 1,
                        new Refusal(
                                Reason.TOO_LATE,
                                "a stream may take " + deadline.time().toSeconds() + " s: ask for the rest by slice"));
                break;
            }
            rows.row(new Made(table.rows().next()));
            sent++;
            rows.sendIfDue();
        }
        rows.send();
    }
}
