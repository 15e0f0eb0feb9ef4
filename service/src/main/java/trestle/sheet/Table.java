package trestle.sheet;

import java.util.List;

/**
 * A table on the sheet. Its first column names the row and reads from the left; the others are
 * numbers or single words.
 *
 * @param title what it holds
 * @param summary a sentence under the title; empty for none
 * @param columns heads of the columns, with units
 * @param rows cells, as many in each as there are columns; a cell without a value is empty
 */
public record Table(String title, String summary, List<String> columns, List<List<String>> rows) {
    /** Copies the lists. */
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
