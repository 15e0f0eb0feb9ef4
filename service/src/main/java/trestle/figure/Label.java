package trestle.figure;

/** A text at a place; y is its baseline. */
record Label(double x, double y, Anchor anchor, Font font, Style style, String text) {
    /** Letters reach this far above the baseline, over the size. */
    private static final double ASCENT = 0.8;

    /** And with those below it. */
    private static final double HEIGHT = 1.04;

    /** The same text moved sideways, to keep within a range. */
    Label within(double left, double right) {
        Box box = box();
        double shift = Math.max(left - box.left(), Math.min(0, right - box.right()));
        return new Label(x + shift, y, anchor, font, style, text);
    }

    /** Where it stands, by the estimated width. */
    Box box() {
        double width = font.width(text);
        return new Box(anchor.leftOf(x, width), y - ASCENT * font.size(), width, HEIGHT * font.size());
    }
}
