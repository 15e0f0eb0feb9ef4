package trestle.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trestle.binding.FieldPath;
import trestle.binding.Reason;
import trestle.binding.Refusal;

/** One request may stream rows: what it needs is here without a server and without a batch. */
class RowStreamTest {
    private static final Refusal REFUSAL = new Refusal(Reason.TOO_LATE, "time is up");

    private final StringBuilder sent = new StringBuilder();
    private final OutputStream out = new Client();
    private long nowNs = 7;

    /** Sees only what is sent. */
    private final class Client extends ByteArrayOutputStream {
        @Override
        public void flush() {
            sent.append(toString(StandardCharsets.UTF_8));
            reset();
        }
    }

    private static Row row(int number) {
        JsonNode tree = JsonNodeFactory.instance.objectNode().put("n", number).put("half", number / 2.0);
        return new Row() {
            @Override
            public Object whole() {
                return tree;
            }

            @Override
            public JsonNode tree() {
                return tree;
            }
        };
    }

    private RowStream lines(List<FieldPath> picks) throws IOException {
        RowWriter writer = new NdjsonWriter(picks, (line, r) -> Map.of(line, r.getMessage()));
        return new RowStream(writer, out, () -> nowNs);
    }

    private void pass(long ms) {
        nowNs += Duration.ofMillis(ms).toNanos();
    }

    @Test
    void aRowWaitsAQuarterOfASecondForOthers() throws IOException {
        RowStream rows = lines(List.of());
        rows.row(row(1));
        pass(250);
        rows.sendIfDue();
        assertThat(sent).isEmpty();
        rows.row(row(2));
        nowNs++;
        rows.sendIfDue();
        assertThat(sent).hasToString("{\"n\":1,\"half\":0.5}\n{\"n\":2,\"half\":1.0}\n");
    }

    @Test
    void theWaitBeginsAnewWhenRowsAreSent() throws IOException {
        RowStream rows = lines(List.of());
        pass(200);
        rows.row(row(1));
        rows.send();
        sent.setLength(0);
        pass(200);
        rows.row(row(2));
        rows.sendIfDue();
        assertThat(sent).isEmpty();
    }

    @Test
    void linesHaveThePicksOfTheirRowsAndRefusalsInBetween() throws IOException {
        RowStream rows = lines(List.of(FieldPath.ofPointer("/half"), FieldPath.ofPointer("/none")));
        rows.row(row(3));
        rows.refusal(4, REFUSAL);
        rows.send();
        assertThat(sent).hasToString("{\"half\":1.5}\n{\"4\":\"time is up\"}\n");
    }

    @Test
    void tablesHaveAHeaderAndAColumnForWhatIsWrong() throws IOException {
        List<FieldPath> columns = List.of(FieldPath.ofPointer("/n"), FieldPath.ofPointer("/none"));
        RowStream rows = new RowStream(new CsvWriter(List.of(), columns, Refusal::getMessage), out, () -> nowNs);
        rows.row(row(3));
        rows.refusal(4, REFUSAL);
        rows.send();
        assertThat(sent).hasToString("n,none,error\r\n3,,\r\n,,time is up\r\n");
    }

    @Test
    void aDeadlineIsPastWhenMoreThanItsTimeHasGoneBy() {
        Deadline deadline = new Deadline(Duration.ofSeconds(2), () -> nowNs);
        assertThat(deadline.time()).isEqualTo(Duration.ofSeconds(2));
        pass(2000);
        assertThat(deadline.isPast()).isFalse();
        nowNs++;
        assertThat(deadline.isPast()).isTrue();
        assertThat(Deadline.after(Duration.ofDays(1)).isPast()).isFalse();
    }
}
