package trestle.figure;

/** How an element is painted: a class of the style sheet. */
enum Style {
    PAPER("p", "fill", Colour.PAPER, ""),
    INK("i", "fill", Colour.INK, ""),
    MUTED("m", "fill", Colour.MUTED, ""),
    LIMIT_TEXT("r", "fill", Colour.LIMIT, ""),
    ATTENTION_TEXT("y", "fill", Colour.ATTENTION, ""),
    GRID("g", "stroke", Colour.GRID, ";fill:none"),
    AXIS("x", "stroke", Colour.AXIS, ";fill:none"),
    INK_LINE("k", "stroke", Colour.INK, ";stroke-width:1.6;fill:none"),
    FIRST_LINE("a", "stroke", Colour.FIRST, Style.CURVE),
    SECOND_LINE("b", "stroke", Colour.SECOND, Style.CURVE),
    THIRD_LINE("c", "stroke", Colour.THIRD, Style.CURVE),
    FIRST_DASHED("d", "stroke", Colour.FIRST, Style.DASHED),
    SECOND_DASHED("e", "stroke", Colour.SECOND, Style.DASHED),
    THIRD_DASHED("f", "stroke", Colour.THIRD, Style.DASHED),
    THIRD_DOTTED("h", "stroke", Colour.THIRD, Style.CURVE + ";stroke-dasharray:2 2.5"),
    FIRST_FILL("A", "fill", Colour.FIRST, ""),
    SECOND_FILL("B", "fill", Colour.SECOND, ""),
    THIRD_FILL("C", "fill", Colour.THIRD, ""),
    LIMIT_FILL("R", "fill", Colour.LIMIT, ""),
    MASS("M", "fill", Colour.FIRST, ";fill-opacity:.3"),
    MASS_EDGE("N", "stroke", Colour.FIRST, ";fill:none"),
    PALE("P", "fill", Colour.FIRST, ";fill-opacity:.35"),
    LIMIT_CROSS("s", "stroke", Colour.LIMIT, ";stroke-width:2.4;fill:none"),
    LIMIT_LINE("l", "stroke", Colour.LIMIT, ";stroke-width:1.4;stroke-dasharray:6 3;fill:none"),
    TRAVEL("t", "stroke", Colour.SECOND, ";stroke-width:1.4;fill:none"),
    GUIDE("u", "stroke", Colour.MUTED, ";stroke-dasharray:2 3;fill:none"),
    LIMIT_BAND("L", "fill", Colour.LIMIT, ";fill-opacity:.18"),
    ATTENTION_BAND("Y", "fill", Colour.ATTENTION, ";fill-opacity:.24"),
    GOOD_BAND("G", "fill", Colour.GOOD, ";fill-opacity:.26");

    private static final String CURVE = ";stroke-width:2.2;stroke-linejoin:round;fill:none";
    private static final String DASHED = CURVE + ";stroke-dasharray:7 4";

    /** Keeps the rules of a page that a figure is put into off its elements. */
    private static final String PREFIX = "tf-";

    private final String cssClass;
    private final String paint;
    private final Colour colour;
    private final String more;

    Style(String cssClass, String paint, Colour colour, String more) {
        this.cssClass = PREFIX + cssClass;
        this.paint = paint;
        this.colour = colour;
        this.more = more;
    }

    String cssClass() {
        return cssClass;
    }

    String paint() {
        return paint;
    }

    Colour colour() {
        return colour;
    }

    String more() {
        return more;
    }
}
