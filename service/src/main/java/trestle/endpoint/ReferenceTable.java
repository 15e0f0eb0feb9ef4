package trestle.endpoint;

import java.util.List;

/** A table behind the numbers, as callers can look it up. */
public interface ReferenceTable {
    /**
     * Name of the table: kebab-case, the last part of its path.
     *
     * @return the name
     */
    String name();

    /**
     * What the table holds and where it is from.
     *
     * @return one sentence
     */
    String summary();

    /**
     * The rows: generated models, all of one class.
     *
     * @return the rows
     */
    List<?> rows();
}
