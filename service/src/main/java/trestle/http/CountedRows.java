package trestle.http;

import trestle.batch.Row;
import trestle.batch.RowWriter;
import trestle.binding.Refusal;

/**
 * Counts rows as they are made.
 *
 * @param writer what makes them
 * @param calculation whose rows they are
 * @param metrics where they are counted
 */
record CountedRows(RowWriter writer, String calculation, Metrics metrics) implements RowWriter {
    @Override
    public byte[] head() {
        return writer.head();
    }

    @Override
    public byte[] row(Row row) {
        byte[] made = writer.row(row);
        metrics.row(calculation, true);
        return made;
    }

    @Override
    public byte[] refusal(long line, Refusal refusal) {
        byte[] made = writer.refusal(line, refusal);
        metrics.row(calculation, false);
        return made;
    }
}
