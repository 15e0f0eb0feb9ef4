package trestle.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import trestle.binding.Reason;
import trestle.binding.Refusal;

/** Cuts a stream into lines. Of a line that is too long, no more than its bound is ever held. */
public final class LineReader {
    private static final int PIECE = 1 << 13;

    private final InputStream in;
    private final int longest;
    private final byte[] piece = new byte[PIECE];
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private int at;
    private int end;
    private long number;
    private boolean tooLong;

    /**
     * Reads lines.
     *
     * @param in where from
     * @param longest bound of a line, bytes
     */
    public LineReader(InputStream in, int longest) {
        this.in = in;
        this.longest = longest;
    }

    /** Moves on to the next line; false when there is none. */
    boolean next() throws IOException {
        line.reset();
        tooLong = false;
        boolean any = false;
        while (at < end || fill()) {
            any = true;
            int from = at;
            while (at < end && piece[at] != '\n') {
                at++;
            }
            keep(from, at - from);
            if (at < end) {
                at++;
                break;
            }
        }
        number += any ? 1 : 0;
        return any;
    }

    /** Moves on to the next line that is not blank; false when there is none. */
    boolean nextFilled() throws IOException {
        boolean there = next();
        while (there && !tooLong && blank()) {
            there = next();
        }
        return there;
    }

    /** Number of the line, from 1. */
    long number() {
        return number;
    }

    /** Whether the line is longer than its bound. */
    boolean tooLong() {
        return tooLong;
    }

    /** The line without its end. */
    byte[] bytes() {
        return line.toByteArray();
    }

    /** Size of the line without its end, bytes. */
    int length() {
        return line.size();
    }

    /** Bound of a line, bytes. */
    int longest() {
        return longest;
    }

    private boolean blank() {
        for (byte b : line.toByteArray()) {
            if (b > ' ' || b < 0) {
                return false;
            }
        }
        return true;
    }

    /** What is wrong with a line that is too long. */
    Refusal refusal() {
        return new Refusal(Reason.TOO_LARGE, "a request in a batch may have " + longest + " bytes");
    }

    /** Whether another line may be had without waiting for the client. */
    boolean pending() throws IOException {
        return at < end || in.available() > 0;
    }

    private boolean fill() throws IOException {
        at = 0;
        end = Math.max(0, in.read(piece, 0, PIECE));
        return end > 0;
    }

    private void keep(int from, int count) {
        if (line.size() + count > longest) {
            tooLong = true;
            line.reset();
        }
        if (!tooLong) {
            line.write(piece, from, count);
        }
    }
}
