package trestle.batch;

import trestle.binding.Refusal;

/** Makes bytes of rows. Rows may be made side by side, on several threads. */
public interface RowWriter {
    /**
     * What stands above the rows.
     *
     * @return bytes; none where nothing does
     */
    byte[] head();

    /**
     * A row.
     *
     * @param row the row
     * @return its bytes
     */
    byte[] row(Row row);

    /**
     * Why there is no row.
     *
     * @param line of the request, from 1
     * @param refusal what is wrong with it
     * @return its bytes
     */
    byte[] refusal(long line, Refusal refusal);
}
