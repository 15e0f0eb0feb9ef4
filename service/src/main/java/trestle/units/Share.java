package trestle.units;

/** Share: percent at the edge, fraction inside. */
public final class Share {
    private Share() {}

    /**
     * Share, 0 to 1.
     *
     * @param sharePercent share, %
     * @return share, 0 to 1
     */
    public static double fractionFromPercent(double sharePercent) {
        return sharePercent / 100;
    }

    /**
     * Share, %.
     *
     * @param shareFraction share, 0 to 1
     * @return share, %
     */
    public static double percentFromFraction(double shareFraction) {
        return shareFraction * 100;
    }
}
