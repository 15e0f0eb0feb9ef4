package trestle.figure;

import java.util.List;

/** What a sign of a panel stands for: a piece of a line, of a band or a mark, and its meaning. */
record KeyEntry(Sign sign, Style style, String text) {
    /** How it is drawn. */
    enum Sign {
        LINE,
        BAND,
        DOT,
        RING,
        CROSS,
        ARROW,
        CG;

        /** A piece of a line or of a band has to be long enough to be known by. */
        private double width() {
            return this == LINE || this == BAND ? 18 : 10;
        }
    }

    private static final double GAP = 5;

    static KeyEntry line(Style style, String text) {
        return new KeyEntry(Sign.LINE, style, text);
    }

    static KeyEntry band(Style style, String text) {
        return new KeyEntry(Sign.BAND, style, text);
    }

    static KeyEntry dot(Style style, String text) {
        return new KeyEntry(Sign.DOT, style, text);
    }

    double width() {
        return sign.width() + GAP + Font.TEXT.width(text);
    }

    void draw(Svg svg, double x, double baseline) {
        double middle = baseline - 4.5;
        double centre = x + sign.width() / 2;
        switch (sign) {
            case LINE -> svg.line(style, x, middle, x + sign.width(), middle);
            case BAND -> svg.rect(style, new Box(x, middle - 6, sign.width(), 12));
            case DOT -> svg.circle(style, centre, middle, 4);
            case RING -> {
                svg.circle(style, centre, middle, 4);
                svg.circle(Style.PAPER, centre, middle, 2.2);
            }
            case CROSS -> Plot.cross(svg, style, centre, middle);
            case CG -> CgSymbol.draw(svg, centre, middle, 5);
            case ARROW ->
                svg.polygon(
                        style,
                        List.of(
                                new Point(centre, middle - 4),
                                new Point(centre + 4, middle + 4),
                                new Point(centre - 4, middle + 4)));
        }
        svg.text(new Label(x + sign.width() + GAP, baseline, Anchor.START, Font.TEXT, Style.MUTED, text));
    }
}
