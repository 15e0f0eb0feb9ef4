package trestle.figure;

import java.util.List;

/** Writes SVG elements: the same bytes for the same calls, on any machine. */
final class Svg {
    private final StringBuilder out = new StringBuilder(8192);

    void line(Style style, double x1, double y1, double x2, double y2) {
        open("line", style);
        attribute("x1", x1);
        attribute("y1", y1);
        attribute("x2", x2);
        attribute("y2", y2);
        out.append("/>");
    }

    void rect(Style style, Box box) {
        open("rect", style);
        attribute("x", box.left());
        attribute("y", box.top());
        attribute("width", box.width());
        attribute("height", box.height());
        out.append("/>");
    }

    void circle(Style style, double x, double y, double radius) {
        open("circle", style);
        attribute("cx", x);
        attribute("cy", y);
        attribute("r", radius);
        out.append("/>");
    }

    /** A line through places, left open. */
    void polyline(Style style, List<Point> places) {
        path("polyline", style, places);
    }

    /** A closed shape. */
    void polygon(Style style, List<Point> corners) {
        path("polygon", style, corners);
    }

    /** A quarter of a disc, from one of the four directions clockwise; 0 is up. */
    void quarter(Style style, double x, double y, double radius, int direction) {
        double sine = Math.round(Math.sin(direction * Math.PI / 2));
        double cosine = Math.round(Math.cos(direction * Math.PI / 2));
        open("path", style);
        out.append(" d=\"M");
        pair(x, y);
        out.append('L');
        pair(x + radius * sine, y - radius * cosine);
        out.append('A');
        pair(radius, radius);
        out.append(" 0 0 1 ");
        pair(x + radius * cosine, y + radius * sine);
        out.append("Z\"/>");
    }

    void text(Label label) {
        open("text", label.style());
        attribute("x", label.x());
        attribute("y", label.y());
        attribute("font-size", label.font().size());
        if (label.font().bold()) {
            out.append(" font-weight=\"600\"");
        }
        if (label.anchor() != Anchor.START) {
            out.append(" text-anchor=\"").append(label.anchor().svgName()).append('"');
        }
        out.append('>');
        PlainText.escape(label.text(), out);
        out.append("</text>");
    }

    @Override
    public String toString() {
        return out.toString();
    }

    private void path(String element, Style style, List<Point> places) {
        open(element, style);
        out.append(" points=\"");
        for (int i = 0; i < places.size(); i++) {
            if (i > 0) {
                out.append(' ');
            }
            pair(places.get(i).x(), places.get(i).y());
        }
        out.append("\"/>");
    }

    private void open(String element, Style style) {
        out.append("\n<")
                .append(element)
                .append(" class=\"")
                .append(style.cssClass())
                .append('"');
    }

    private void attribute(String name, double value) {
        out.append(' ').append(name).append("=\"");
        Numbers.coordinate(value, out);
        out.append('"');
    }

    private void pair(double x, double y) {
        Numbers.coordinate(x, out);
        out.append(',');
        Numbers.coordinate(y, out);
    }
}
