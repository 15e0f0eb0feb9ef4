package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fits text into a width: shortened with an ellipsis, or wrapped. */
final class TextFit {
    private static final String ELLIPSIS = "…";

    /**
     * What a reader takes for one character: a letter with its marks, an emoji of several parts.
     */
    private static final Pattern CLUSTER = Pattern.compile("\\X");

    private TextFit() {}

    /** The text, or as much of it as fits with an ellipsis; never a part of a character. */
    static String shortened(String text, Font font, double width) {
        if (font.width(text) <= width) {
            return text;
        }
        int end = fitting(text, font, width - font.width(ELLIPSIS));
        return text.substring(0, end).stripTrailing() + ELLIPSIS;
    }

    /**
     * At most so many lines, broken at spaces, but not between a number and its unit; the last one
     * shortened where more is left.
     */
    static List<String> wrapped(String text, Font font, double width, int mostLines) {
        List<String> lines = new ArrayList<>();
        String rest = text;
        while (lines.size() < mostLines - 1 && font.width(rest) > width) {
            int end = fitting(rest, font, width);
            int space = breakBefore(rest, end);
            if (space > 0) {
                end = space;
            }
            if (end == 0) {
                break;
            }
            lines.add(rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        if (!rest.isEmpty()) {
            lines.add(shortened(rest, font, width));
        }
        return lines;
    }

    /** The last space up to a place that does not part a number from its unit, if there is one. */
    private static int breakBefore(String text, int end) {
        int last = text.lastIndexOf(' ', end);
        for (int space = last; space > 0; space = text.lastIndexOf(' ', space - 1)) {
            if (!Character.isDigit(text.charAt(space - 1))) {
                return space;
            }
        }
        return last;
    }

    private static int fitting(String text, Font font, double width) {
        Matcher clusters = CLUSTER.matcher(text);
        double used = 0;
        int end = 0;
        while (clusters.find()) {
            used += font.width(clusters.group());
            if (used > width) {
                break;
            }
            end = clusters.end();
        }
        return end;
    }
}
