package trestle.figure;

/** The sign for a centre of gravity: a disc, two of its quarters filled. */
final class CgSymbol {
    private CgSymbol() {}

    static void draw(Svg svg, double x, double y, double radius) {
        svg.circle(Style.PAPER, x, y, radius + 1.5);
        svg.quarter(Style.INK, x, y, radius, 0);
        svg.quarter(Style.INK, x, y, radius, 2);
        svg.circle(Style.INK_LINE, x, y, radius);
    }
}
