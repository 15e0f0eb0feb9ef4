package trestle.figure;

import java.util.ArrayList;
import java.util.List;

/** Labels under a drawing: each in the highest row where it touches no other. */
final class LabelRows {
    static final double ROW = 16;
    private static final double APART = 6;

    private final List<Label> placed = new ArrayList<>();
    private int rows;

    /** Lays labels out under a height, within the page. */
    LabelRows(List<Label> labels, double top) {
        for (Label label : labels) {
            Label kept = label.within(Page.MARGIN, Page.WIDTH - Page.MARGIN);
            int row = 0;
            while (!free(at(kept, top, row))) {
                row++;
            }
            placed.add(at(kept, top, row));
            rows = Math.max(rows, row + 1);
        }
    }

    double height() {
        return rows * ROW;
    }

    void draw(Svg svg) {
        placed.forEach(svg::text);
    }

    private boolean free(Label label) {
        Box box = label.box();
        Box apart = new Box(box.left() - APART, box.top(), box.width() + 2 * APART, box.height());
        return placed.stream().noneMatch(other -> other.box().overlaps(apart));
    }

    private static Label at(Label label, double top, int row) {
        return new Label(
                label.x(),
                top + row * ROW + Font.TEXT.size(),
                label.anchor(),
                label.font(),
                label.style(),
                label.text());
    }
}
