package trestle.figure;

import java.util.ArrayList;
import java.util.List;

/** The heading of a panel with its key, flowing into as many rows as it takes. */
final class Heading {
    static final double ROW = 18;
    private static final double GAP = 14;

    private final String text;
    private final List<List<KeyEntry>> rows = new ArrayList<>();

    Heading(String text, List<KeyEntry> keys) {
        this.text = TextFit.shortened(text, Font.HEADING, Page.INNER_WIDTH);
        List<KeyEntry> row = new ArrayList<>();
        rows.add(row);
        double used = Font.HEADING.width(this.text);
        for (KeyEntry key : keys) {
            KeyEntry fitted = fitted(key);
            if (used + GAP + fitted.width() > Page.INNER_WIDTH) {
                row = new ArrayList<>();
                rows.add(row);
                used = -GAP;
            }
            row.add(fitted);
            used += GAP + fitted.width();
        }
    }

    private static KeyEntry fitted(KeyEntry key) {
        double room = Page.INNER_WIDTH - (key.width() - Font.TEXT.width(key.text()));
        return new KeyEntry(key.sign(), key.style(), TextFit.shortened(key.text(), Font.TEXT, room));
    }

    double height() {
        return ROW * rows.size();
    }

    void draw(Svg svg, double top) {
        double baseline = top + 13;
        double x = Page.MARGIN + Font.HEADING.width(text) + GAP;
        svg.text(new Label(Page.MARGIN, baseline, Anchor.START, Font.HEADING, Style.INK, text));
        for (List<KeyEntry> row : rows) {
            for (KeyEntry key : row) {
                key.draw(svg, x, baseline);
                x += key.width() + GAP;
            }
            x = Page.MARGIN;
            baseline += ROW;
        }
    }
}
