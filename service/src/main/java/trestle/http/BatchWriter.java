package trestle.http;

import java.io.IOException;

/** The answers of a batch, each in the place of its request. */
interface BatchWriter {
    /** Writes an answer; whole or, if that fails, not at all. */
    void answer(Answered<?, ?, ?, ?> answered) throws IOException;

    /** Writes what is wrong with a request. */
    void refusal(long line, Refusal refusal) throws IOException;

    /** Sends what has been written. */
    void flush() throws IOException;
}
