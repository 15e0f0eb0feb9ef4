package trestle.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import trestle.binding.Reason;
import trestle.binding.Refusal;

/** Rows of a table with commas (RFC 4180): decimal dots, lines that end in CR LF. */
public final class Csv {
    /** What such a table is, as a header has it. */
    public static final String MEDIA_TYPE = "text/csv;charset=utf-8";

    private static final String LINE_END = "\r\n";

    /** What makes a spreadsheet take a text for a formula. */
    private static final String FORMULA_STARTS = "=+-@\t\r\n";

    private static final CsvMapper MAPPER = CsvMapper.builder()
            .enable(CsvParser.Feature.WRAP_AS_ARRAY)
            .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
            .build();

    private static final ObjectWriter ROW = MAPPER.writer(MAPPER.schema().withLineSeparator(LINE_END));
    private static final ObjectReader CELLS = MAPPER.readerFor(String[].class);

    private Csv() {}

    /**
     * One row with the end of its line.
     *
     * @param cells as they are to be read again
     * @return the row, with quotes where they are needed
     */
    public static String row(List<String> cells) {
        try {
            return ROW.writeValueAsString(cells);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException("a row could not be written", unwritable);
        }
    }

    /**
     * A line above the header that is no row: readers of tables leave out what begins with this sign if
     * they are told to.
     *
     * @param text what it says
     * @return the line with its end
     */
    public static String comment(String text) {
        return "# " + text.replaceAll("\\p{Cntrl}+", " ") + LINE_END;
    }

    /**
     * One row without the end of its line.
     *
     * @param cells as they are to be read again
     * @return the row, with quotes where they are needed
     */
    public static String bareRow(List<String> cells) {
        String row = row(cells);
        return row.substring(0, row.length() - LINE_END.length());
    }

    /**
     * The cell of a value.
     *
     * @param value a plain value, or none
     * @return its text; empty where there is none
     */
    public static String cell(Optional<JsonNode> value) {
        return value.map(v -> v.isTextual() ? text(v.textValue()) : v.toString())
                .orElse("");
    }

    /** The cell of a text, which no spreadsheet will run as a formula. */
    static String text(String text) {
        boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
        return formula ? "'" + text : text;
    }

    /**
     * The cells of one row.
     *
     * @param row without the end of its line
     * @return what stands between the commas, without quotes
     * @throws Refusal when it is no row
     */
    public static List<String> cells(String row) {
        try (MappingIterator<String[]> rows = CELLS.readValues(row)) {
            return rows.hasNextValue() ? List.of(rows.nextValue()) : List.of();
        } catch (JsonProcessingException malformed) {
            throw new Refusal(Reason.UNREADABLE, "this is no row of a table: " + row(malformed));
        } catch (IOException unreadable) {
            throw new IllegalStateException("a text in memory cannot be unreadable", unreadable);
        }
    }

    private static String row(JsonProcessingException malformed) {
        return malformed.getOriginalMessage().lines().findFirst().orElse("").replaceAll(" \\(.*", "");
    }
}
