package trestle.figure;

/**
 * A flag at its place: beside its staff, in a row above the plot; heights are from the plot up.
 *
 * @param flag what stands there
 * @param x its place on the page
 * @param width of its name
 * @param row from 0 at the bottom
 * @param anchor on which side of the staff the name begins
 */
record Pole(Flag flag, double x, double width, int row, Anchor anchor) {
    static final double ROW = 17;

    /** Keeps the lowest names off the topmost number of the upright axis. */
    static final double ABOVE_PLOT = 6;

    private static final double CLEAR = 3;
    private static final double STAFF = 1;
    private static final double BESIDE = 4;
    private static final double ABOVE_FOOT = 4;

    static Pole of(Flag flag, double x) {
        return new Pole(flag, x, Font.TEXT.width(flag.text()), 0, Anchor.START);
    }

    Pole on(Anchor side) {
        return new Pole(flag, x, width, row, side);
    }

    Anchor otherSide() {
        return anchor == Anchor.START ? Anchor.END : Anchor.START;
    }

    Pole in(int otherRow) {
        return new Pole(flag, x, width, otherRow, anchor);
    }

    /** Its name, above a plot that begins at a height. */
    Label label(double plotTop) {
        return new Label(textX(), plotTop + foot() - ABOVE_FOOT, anchor, Font.TEXT, flag.style(), flag.text());
    }

    /** The room of its name, with some clear space beside. */
    Box text() {
        return new Box(left() - CLEAR, foot() - ROW, width + 2 * CLEAR, ROW);
    }

    /** The room of its staff. */
    Box staff() {
        double top = foot() - ROW + CLEAR;
        return new Box(x - STAFF / 2, top, STAFF, -top);
    }

    /** Whether its name stands over a place. */
    boolean passes(double place) {
        return place + STAFF / 2 > left() - CLEAR && place - STAFF / 2 < left() + width + CLEAR;
    }

    boolean onPage() {
        return left() >= Page.MARGIN && left() + width <= Page.WIDTH - Page.MARGIN;
    }

    private double textX() {
        return anchor == Anchor.START ? x + BESIDE : x - BESIDE;
    }

    private double left() {
        return anchor.leftOf(textX(), width);
    }

    private double foot() {
        return -ABOVE_PLOT - row * ROW;
    }
}
