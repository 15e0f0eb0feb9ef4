package trestle.batch;

import java.io.IOException;
import trestle.binding.Refusal;

/** Rows as bytes, in their order. */
public interface RowWriter {
    /**
     * Writes a row; whole or, if that fails, not at all.
     *
     * @param row the row
     * @throws IOException when nobody takes the bytes
     */
    void row(Row row) throws IOException;

    /**
     * Writes why there is no row.
     *
     * @param line of the request, from 1
     * @param refusal what is wrong with it
     * @throws IOException when nobody takes the bytes
     */
    void refusal(long line, Refusal refusal) throws IOException;

    /**
     * Sends what has been written.
     *
     * @throws IOException when nobody takes the bytes
     */
    void flush() throws IOException;
}
