package trestle.batch;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.util.List;
import java.util.function.Supplier;
import trestle.binding.Reason;
import trestle.binding.Refusal;

/**
 * The rows of a table, of which a quoted cell may go on over several lines. A quote that is never
 * closed ends with the row's bound, and the rows after that are read again.
 */
public final class RowReader {
    private static final String BYTE_ORDER_MARK = "\ufeff";

    private final LineReader lines;
    private final Charset encoding;
    private final StringBuilder row = new StringBuilder();
    private long line;
    private Refusal refusal;

    /**
     * Reads rows.
     *
     * @param lines of the table
     * @param encoding of its text
     */
    public RowReader(LineReader lines, Charset encoding) {
        this.lines = lines;
        this.encoding = encoding;
    }

    /** Moves on to the next row that is not blank; false when there is none. */
    boolean next() throws IOException {
        if (!lines.nextFilled()) {
            return false;
        }
        row.setLength(0);
        refusal = null;
        line = lines.number();
        boolean open = take();
        while (open && refusal == null && lines.next()) {
            row.append('\n');
            open ^= take();
        }
        return true;
    }

    /** Line at which the row begins, from 1. */
    long line() {
        return line;
    }

    /** Whether another row may be had without waiting for the client. */
    boolean pending() throws IOException {
        return lines.pending();
    }

    /** Size of the row, letters. */
    int size() {
        return row.length();
    }

    /**
     * The cells of the row.
     *
     * @throws Refusal when it cannot be read
     */
    List<String> cells() {
        return taken().get();
    }

    /** The cells of the row, told apart later; throws a {@link Refusal} when they cannot be read. */
    Supplier<List<String>> taken() {
        Refusal refused = refusal;
        String text = row.toString();
        return () -> {
            if (refused != null) {
                throw refused;
            }
            return Csv.cells(text);
        };
    }

    /** Takes a line into the row; tells whether a quote opens or closes in it. */
    private boolean take() {
        if (lines.tooLong() || row.length() + lines.length() > lines.longest()) {
            refusal = lines.refusal();
            return false;
        }
        String text = text();
        row.append(text);
        return text.chars().filter(c -> c == '"').count() % 2 == 1;
    }

    private String text() {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(lines.bytes());
            String text = encoding.newDecoder().decode(bytes).toString();
            return text.startsWith(BYTE_ORDER_MARK) && lines.number() == 1 ? text.substring(1) : text;
        } catch (CharacterCodingException noText) {
            refusal = new Refusal(Reason.UNREADABLE, "the row is no text in " + encoding);
            return "";
        }
    }
}
