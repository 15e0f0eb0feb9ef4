package trestle.figure;

/** Which part of a text stands at its place. */
enum Anchor {
    START("start", 0),
    MIDDLE("middle", 0.5),
    END("end", 1);

    private final String svgName;
    private final double share;

    Anchor(String svgName, double share) {
        this.svgName = svgName;
        this.share = share;
    }

    String svgName() {
        return svgName;
    }

    /** Left end of a text of a width. */
    double leftOf(double x, double width) {
        return x - share * width;
    }
}
