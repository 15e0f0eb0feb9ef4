package trestle.figure;

/**
 * Sizes of text, and the estimate of its width.
 *
 * <p>The face is the reader's own, so widths are those of a wide one, DejaVu Sans, as a browser
 * measured them: text of a narrower face leaves a little room.
 */
enum Font {
    TITLE(17, true),
    HEADING(14, true),
    TEXT(13, false);

    /** Space to tilde, in thousandths of the size. */
    private static final short[] ASCII = {
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636,
        636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698,
        770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732,
        684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635,
        634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592,
        525, 636, 337, 636, 838
    };

    /** Letters beyond ASCII are mostly narrower; capitals with accents and signs are not. */
    private static final int OTHER = 880;

    /** Ideographs, emoji. */
    private static final int WIDE = 1250;

    private static final int FIRST_WIDE = 0x2e80;

    /** Bold over regular; the widest letters grow by a fifth, the usual ones by a tenth. */
    private static final double BOLD_RATIO = 1.14;

    private final double size;
    private final boolean bold;

    Font(double size, boolean bold) {
        this.size = size;
        this.bold = bold;
    }

    double size() {
        return size;
    }

    boolean bold() {
        return bold;
    }

    /** Estimated width of a text on one line. */
    double width(String text) {
        int thousandths = 0;
        for (int i = 0; i < text.length(); ) {
            int point = text.codePointAt(i);
            thousandths += thousandths(point);
            i += Character.charCount(point);
        }
        return size * (bold ? BOLD_RATIO : 1) * thousandths / 1000;
    }

    private static int thousandths(int point) {
        if (point >= ' ' && point <= '~') {
            return ASCII[point - ' '];
        }
        return switch (Character.getType(point)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
            default -> point < FIRST_WIDE ? OTHER : WIDE;
        };
    }
}
