package trestle.figure;

/** Text of a user made safe to draw: one line, nothing that XML or the line's direction minds. */
public final class PlainText {
    private static final char FIRST_STRONG_ISOLATE = '\u2068';
    private static final char POP_ISOLATE = '\u2069';
    private static final char REPLACEMENT = '\ufffd';

    private PlainText() {}

    /**
     * One line without control characters, marks that turn the writing round, lone surrogates and
     * what XML forbids.
     *
     * @param text of a user
     * @return the line
     */
    public static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); ) {
            int point = text.codePointAt(i);
            i += Character.charCount(point);
            if (Character.isWhitespace(point) || Character.isSpaceChar(point)) {
                clean.append(' ');
            } else if (!Character.isISOControl(point) && !turnsWriting(point)) {
                clean.appendCodePoint(drawable(point) ? point : REPLACEMENT);
            }
        }
        return clean.toString().strip().replaceAll(" {2,}", " ");
    }

    /** A name within a longer text: writing from the right does not reorder what stands beside. */
    static String isolated(String name) {
        boolean fromTheRight = name.codePoints()
                .mapToObj(Character::getDirectionality)
                .anyMatch(d -> d == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || d == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);
        return fromTheRight ? FIRST_STRONG_ISOLATE + name + POP_ISOLATE : name;
    }

    /**
     * Text as XML content or attribute.
     *
     * @param text clean text
     * @param out where it goes
     */
    public static void escape(String text, StringBuilder out) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
    }

    /** Embeddings, overrides, isolates and marks of direction. */
    private static boolean turnsWriting(int point) {
        return point >= 0x202a && point <= 0x202e
                || point >= 0x2066 && point <= 0x2069
                || point == 0x200e
                || point == 0x200f
                || point == 0x061c;
    }

    private static boolean drawable(int point) {
        return Character.getType(point) != Character.SURROGATE && (point & 0xfffe) != 0xfffe;
    }
}
