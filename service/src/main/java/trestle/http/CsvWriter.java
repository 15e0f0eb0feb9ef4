package trestle.http;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A header and a row for each answer; the last column says what is wrong with a request. */
final class CsvWriter implements BatchWriter {
    private static final String ERROR = "error";

    private final OutputStream out;
    private final int width;
    private final Picks picks;

    /** Writes the header. */
    CsvWriter(OutputStream out, List<FieldPath> columns) throws IOException {
        this.out = out;
        width = columns.size();
        picks = new Picks(columns);
        row(new ArrayList<>(columns.stream().map(FieldPath::dotted).toList()), ERROR);
    }

    @Override
    public void answer(Answered<?, ?, ?, ?> answered) throws IOException {
        List<String> cells = new ArrayList<>();
        picks.whereThere(answered.tree()).forEach(value -> cells.add(Csv.cell(value)));
        row(cells, "");
    }

    @Override
    public void refusal(long line, Refusal refusal) throws IOException {
        row(new ArrayList<>(Collections.nCopies(width, "")), InlineError.text(refusal));
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }

    private void row(List<String> cells, String error) throws IOException {
        cells.add(error);
        out.write(Csv.row(cells).getBytes(StandardCharsets.UTF_8));
    }
}
