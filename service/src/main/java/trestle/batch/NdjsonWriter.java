package trestle.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import trestle.binding.FieldPath;
import trestle.binding.Json;
import trestle.binding.Picks;
import trestle.binding.Refusal;

/** A row a line, in JSON: the whole, or the picked values under their dotted names. */
public final class NdjsonWriter implements RowWriter {
    private final OutputStream out;
    private final List<FieldPath> paths;
    private final Picks picks;
    private final BiFunction<Long, Refusal, Object> words;

    /**
     * Writes rows.
     *
     * @param out where the bytes go
     * @param paths the picked values; none for the whole
     * @param words what JSON is written of in place of a row: the line of a request, and what is wrong with it
     */
    public NdjsonWriter(OutputStream out, List<FieldPath> paths, BiFunction<Long, Refusal, Object> words) {
        this.out = out;
        this.paths = paths;
        this.words = words;
        picks = new Picks(paths);
    }

    @Override
    public void row(Row row) throws IOException {
        line(paths.isEmpty() ? row.whole() : picked(row.tree()));
    }

    @Override
    public void refusal(long line, Refusal refusal) throws IOException {
        line(words.apply(line, refusal));
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
