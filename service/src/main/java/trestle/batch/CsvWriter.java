package trestle.batch;

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

    private final List<String> comments;
    private final List<FieldPath> columns;
    private final Picks picks;
    private final Function<Refusal, String> words;

    /**
     * Writes rows.
     *
     * @param comments what is said above the header
     * @param columns the values that a row has
     * @param words says what is wrong with a request, in one line
     */
    public CsvWriter(List<String> comments, List<FieldPath> columns, Function<Refusal, String> words) {
        this.comments = List.copyOf(comments);
        this.columns = List.copyOf(columns);
        this.words = words;
        picks = new Picks(columns);
    }

    @Override
    public byte[] head() {
        StringBuilder head = new StringBuilder();
        comments.forEach(comment -> head.append(Csv.comment(comment)));
        List<String> names = columns.stream().map(FieldPath::dotted).toList();
        return head.append(text(names, ERROR)).toString().getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public byte[] row(Row row) {
        List<String> cells =
                picks.whereThere(row.tree()).stream().map(Csv::cell).toList();
        return text(cells, row.error()).getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public byte[] refusal(long line, Refusal refusal) {
        List<String> blank = Collections.nCopies(columns.size(), "");
        return text(blank, words.apply(refusal)).getBytes(StandardCharsets.UTF_8);
    }

    private static String text(List<String> cells, String error) {
        List<String> all = new ArrayList<>(cells);
        all.add(error);
        return Csv.row(all);
    }
}
