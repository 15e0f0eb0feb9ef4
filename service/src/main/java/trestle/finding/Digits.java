package trestle.finding;

/**
 * Two numbers of one sentence, with as many digits as it takes to tell them apart.
 *
 * @param first the first
 * @param second the second
 */
public record Digits(String first, String second) {
    private static final int MOST = 4;

    /**
     * Two numbers as a sentence prints them.
     *
     * @param first the first
     * @param second the second
     * @param usual decimals where these tell them apart
     * @return the texts
     */
    public static Digits apart(double first, double second, int usual) {
        int decimals = usual;
        while (decimals < MOST && first != second && in(first, decimals).equals(in(second, decimals))) {
            decimals++;
        }
        return new Digits(in(first, decimals), in(second, decimals));
    }

    private static String in(double number, int decimals) {
        return Judge.text("%." + decimals + "f", number);
    }
}
