package trestle.endpoint;

import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * An answer of many rows, made while they are sent.
 *
 * @param columns names of the columns
 * @param rows each with its values by the name of the column, made when it is asked for; a row that could not be made has
 *     {@code error}
 */
public record Table(List<String> columns, Iterator<Map<String, Object>> rows) {
    /** Where a row says what is wrong with it. */
    public static final String ERROR = "error";

    /** Copies the list. */
    public Table {
        columns = List.copyOf(columns);
    }
}
