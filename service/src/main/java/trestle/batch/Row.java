package trestle.batch;

import com.fasterxml.jackson.databind.JsonNode;

/** What one row says. It may be made when it is asked for, and then fail. */
public interface Row {
    /**
     * All of it.
     *
     * @return what JSON is written of
     */
    Object whole();

    /**
     * All of it, to take values from.
     *
     * @return the tree that its JSON has
     */
    JsonNode tree();

    /**
     * What is wrong with it.
     *
     * @return a line of text; empty where nothing is
     */
    default String error() {
        return "";
    }
}
