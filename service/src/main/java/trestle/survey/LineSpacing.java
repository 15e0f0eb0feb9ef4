package trestle.survey;

/**
 * How far lines and photos stand apart, and how many that makes: lines {@code ceil(width / spacing) + 1}, photos {@code
 * ceil(length / base) + 1} and so many more beyond each end, as the worked plan of [1] counts.
 *
 * @param betweenLinesM spacing of lines, m, above 0
 * @param betweenPhotosM base, m, above 0
 * @param beyond photos beyond each end of a line
 */
record LineSpacing(double betweenLinesM, double betweenPhotosM, int beyond) {
    /** A rounding of the width is no line more. */
    private static final double ROUNDING = 1e-9;

    int strips(double widthM) {
        return (int) Math.ceil(widthM / betweenLinesM - ROUNDING) + 1;
    }

    int photos(double lengthM) {
        return (int) Math.ceil(lengthM / betweenPhotosM - ROUNDING) + 1 + 2 * beyond;
    }
}
