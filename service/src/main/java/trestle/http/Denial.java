package trestle.http;

/** A request that is turned away for what only HTTP knows: its address, its headers, the hour. */
final class Denial extends RuntimeException {
    private final Problems.Kind kind;

    /**
     * Turns a request away.
     *
     * @param kind of problem
     * @param detail what is wrong, in a sentence
     */
    Denial(Problems.Kind kind, String detail) {
        super(detail, null, false, false);
        this.kind = kind;
    }

    Problems.Kind kind() {
        return kind;
    }
}
