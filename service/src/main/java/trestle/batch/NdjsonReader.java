package trestle.batch;

import java.io.IOException;
import trestle.binding.Binder;

/** A request a line, in JSON. Blank lines are passed over, as many tools leave one at the end. */
public final class NdjsonReader implements BatchReader {
    private final LineReader lines;

    /**
     * Reads requests.
     *
     * @param lines each of which is one
     */
    public NdjsonReader(LineReader lines) {
        this.lines = lines;
    }

    @Override
    public boolean next() throws IOException {
        return lines.nextFilled();
    }

    @Override
    public long line() {
        return lines.number();
    }

    @Override
    public boolean pending() throws IOException {
        return lines.pending();
    }

    @Override
    public <Q> Q request(Class<Q> model) {
        if (lines.tooLong()) {
            throw lines.refusal();
        }
        return Binder.bind(lines.bytes(), model);
    }
}
