package trestle.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import trestle.binding.FieldPath;
import trestle.binding.Json;
import trestle.binding.Picks;
import trestle.binding.Refusal;

/** A row a line, in JSON: the whole, or the picked values under their dotted names. */
public final class NdjsonWriter implements RowWriter {
    private final List<FieldPath> paths;
    private final Picks picks;
    private final BiFunction<Long, Refusal, Object> words;

    /**
     * Writes rows.
     *
     * @param paths the picked values; none for the whole
     * @param words what JSON is written of in place of a row: the line of a request, and what is wrong with it
     */
    public NdjsonWriter(List<FieldPath> paths, BiFunction<Long, Refusal, Object> words) {
        this.paths = paths;
        this.words = words;
        picks = new Picks(paths);
    }

    @Override
    public byte[] head() {
        return new byte[0];
    }

    @Override
    public byte[] row(Row row) {
        return line(paths.isEmpty() ? row.whole() : picked(row.tree()));
    }

    @Override
    public byte[] refusal(long line, Refusal refusal) {
        return line(words.apply(line, refusal));
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

    private static byte[] line(Object value) {
        byte[] json = Json.bytes(value);
        byte[] line = Arrays.copyOf(json, json.length + 1);
        line[json.length] = '\n';
        return line;
    }
}
