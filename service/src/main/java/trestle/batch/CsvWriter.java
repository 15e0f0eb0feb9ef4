package trestle.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import trestle.binding.FieldPath;
import trestle.binding.Picks;
import trestle.binding.Refusal;

/** A header and a row for each answer; the last column says what is wrong with a request. */
public final class CsvWriter implements RowWriter {
    private static final String ERROR = "error";

    private final OutputStream out;
    private final int width;
    private final Picks picks;
    private final Function<Refusal, String> words;

    /**
     * Writes the header.
     *
     * @param out where the bytes go
     * @param comments what is said above the header
     * @param columns the values that a row has
     * @param words says what is wrong with a request, in one line
     * @throws IOException when nobody takes the bytes
     */
    public CsvWriter(OutputStream out, List<String> comments, List<FieldPath> columns, Function<Refusal, String> words)
            throws IOException {
        this.out = out;
        this.words = words;
        width = columns.size();
        picks = new Picks(columns);
        for (String comment : comments) {
            out.write(Csv.comment(comment).getBytes(StandardCharsets.UTF_8));
        }
        write(new ArrayList<>(columns.stream().map(FieldPath::dotted).toList()), ERROR);
    }

    @Override
    public void row(Row row) throws IOException {
        List<String> cells = new ArrayList<>();
        picks.whereThere(row.tree()).forEach(value -> cells.add(Csv.cell(value)));
        write(cells, row.error());
    }

    @Override
    public void refusal(long line, Refusal refusal) throws IOException {
        write(new ArrayList<>(Collections.nCopies(width, "")), words.apply(refusal));
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }

    private void write(List<String> cells, String error) throws IOException {
        cells.add(error);
        out.write(Csv.row(cells).getBytes(StandardCharsets.UTF_8));
    }
}
