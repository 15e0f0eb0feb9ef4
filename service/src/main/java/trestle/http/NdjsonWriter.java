package trestle.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;

/** An answer a line, in JSON: the whole answer, or the picked values under their dotted names. */
final class NdjsonWriter implements BatchWriter {
    private final OutputStream out;
    private final List<FieldPath> paths;
    private final Picks picks;

    NdjsonWriter(OutputStream out, List<FieldPath> paths) {
        this.out = out;
        this.paths = paths;
        picks = new Picks(paths);
    }

    @Override
    public void answer(Answered<?, ?, ?, ?> answered) throws IOException {
        line(paths.isEmpty() ? answered.whole() : picked(answered.tree()));
    }

    @Override
    public void refusal(long line, Refusal refusal) throws IOException {
        line(Problems.inLine(line, refusal.problem()));
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }

    private ObjectNode picked(JsonNode answer) {
        ObjectNode picked = Json.MAPPER.createObjectNode();
        List<Optional<JsonNode>> values = picks.whereThere(answer);
        for (int i = 0; i < paths.size(); i++) {
            String name = paths.get(i).dotted();
            values.get(i).ifPresent(value -> picked.set(name, value));
        }
        return picked;
    }

    private void line(Object value) throws IOException {
        byte[] json = Json.bytes(value);
        out.write(json);
        out.write('\n');
    }
}
