package trestle.batch;

import java.io.IOException;
import java.util.function.Supplier;
import trestle.binding.Binder;
import trestle.binding.Refusal;

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
    public int size() {
        return lines.length();
    }

    @Override
    public <Q> Supplier<Q> taken(Class<Q> model) {
        if (lines.tooLong()) {
            Refusal refusal = lines.refusal();
            return () -> {
                throw refusal;
            };
        }
        byte[] line = lines.bytes();
        return () -> Binder.bind(line, model);
    }
}
