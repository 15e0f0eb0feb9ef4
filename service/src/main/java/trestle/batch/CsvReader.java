package trestle.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import trestle.binding.Binder;
import trestle.binding.DottedField;
import trestle.binding.Faults;
import trestle.binding.FieldPath;
import trestle.binding.Nearest;
import trestle.binding.PathCheck;
import trestle.binding.Reason;
import trestle.binding.Refusal;

/** A request a row, under a header of dotted names. A blank cell means that the field is absent. */
public final class CsvReader implements BatchReader {
    private final RowReader rows;
    private final List<String> header;

    private CsvReader(RowReader rows, List<String> header) {
        this.rows = rows;
        this.header = header;
    }

    /**
     * Reads the header.
     *
     * @param rows the table
     * @param model the generated class of the requests
     * @return the requests under the header
     * @throws IOException when the client is gone
     * @throws Refusal when the header names anything but fields of the model, each once
     */
    public static CsvReader of(RowReader rows, Class<?> model) throws IOException {
        if (!rows.next()) {
            throw new Refusal(Reason.UNREADABLE, "the body is empty");
        }
        List<String> header = rows.cells().stream().map(String::strip).toList();
        if (header.size() == 1 && header.get(0).matches("(?s).*[;\t].*")) {
            throw new Refusal(
                    Reason.UNREADABLE,
                    "put commas between the cells and dots into the numbers; this header has other" + " signs");
        }
        requireFields(header, model);
        return new CsvReader(rows, header);
    }

    @Override
    public boolean next() throws IOException {
        return rows.next();
    }

    @Override
    public long line() {
        return rows.line();
    }

    @Override
    public boolean pending() throws IOException {
        return rows.pending();
    }

    @Override
    public int size() {
        return rows.size();
    }

    @Override
    public <Q> Supplier<Q> taken(Class<Q> model) {
        Supplier<List<String>> cells = rows.taken();
        return () -> bound(cells.get(), model);
    }

    private <Q> Q bound(List<String> cells, Class<Q> model) {
        List<DottedField> fields = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).isBlank()) {
                continue;
            }
            if (i >= header.size() || header.get(i).isEmpty()) {
                throw new Refusal(Reason.INVALID, "cell " + (i + 1) + " of the row stands under no name of the header");
            }
            fields.add(new DottedField(header.get(i), cells.get(i)));
        }
        return Binder.bind(fields, model);
    }

    private static void requireFields(List<String> header, Class<?> model) {
        Faults faults = new Faults();
        Set<String> seen = new HashSet<>();
        for (String name : header) {
            if (name.isEmpty() || faults.full()) {
                continue;
            }
            FieldPath path = FieldPath.ofDotted(name);
            if (!seen.add(name)) {
                String shown = Nearest.shortened(name);
                faults.add(path.pointer(), "repeated", shown + " is in the header more than once");
            }
            PathCheck.objection(path, model, "a field here")
                    .ifPresent(because -> faults.add(path.pointer(), "unknown_field", because));
        }
        faults.refuseIfAny(Reason.INVALID);
    }
}
