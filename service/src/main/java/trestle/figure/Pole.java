package trestle.figure;

/** A flag at its place: beside its staff, in a row above the plot; heights are from the plot up. */
record Pole(Flag flag, double x, int row, Anchor anchor) {
    static final double ROW = 17;
    static final double CLEAR = 3;
    private static final double BESIDE = 4;
    private static final double ABOVE_FOOT = 4;

    /** Its name, above a plot that begins at a height. */
    Label label(double plotTop) {
        return new Label(
                anchor == Anchor.START ? x + BESIDE : x - BESIDE,
                plotTop + foot() - ABOVE_FOOT,
                anchor,
                Font.TEXT,
                flag.style(),
                flag.text());
    }

    /** The room of its name, with some clear space beside. */
    Box text() {
        Box box = label(0).box();
        return new Box(box.left() - CLEAR, foot() - ROW, box.width() + 2 * CLEAR, ROW);
    }

    /** The room of its staff. */
    Box staff() {
        double top = foot() - ROW + CLEAR;
        return new Box(x - 0.5, top, 1, -top);
    }

    boolean onPage() {
        Box box = label(0).box();
        return box.left() >= Page.MARGIN && box.right() <= Page.WIDTH - Page.MARGIN;
    }

    Pole on(Anchor side) {
        return new Pole(flag, x, row, side);
    }

    Anchor otherSide() {
        return anchor == Anchor.START ? Anchor.END : Anchor.START;
    }

    Pole in(int otherRow) {
        return new Pole(flag, x, otherRow, anchor);
    }

    private double foot() {
        return -CLEAR - row * ROW;
    }
}
