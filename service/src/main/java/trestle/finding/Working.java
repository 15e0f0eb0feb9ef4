package trestle.finding;

import trestle.numeric.Guard;

/**
 * One line of how a result was reached.
 *
 * @param symbol what later lines call the number
 * @param meaning what it is, in a few words
 * @param expression one line: {@code symbol = formula = formula with the numbers put in}; {@code
 *     symbol: words} where the number comes from a search or an integration
 * @param value the number, in {@code unit}
 * @param unit as printed: {@code m/s}, {@code mm²}; {@code 1} for a pure number
 * @param source author, title, equation or section; or that it is arithmetic, the request, or
 *     common practice
 */
public record Working(String symbol, String meaning, String expression, double value, String unit, String source) {
    /** Checks that nothing is missing. */
    public Working {
        Guard.present("symbol", symbol);
        Guard.present("meaning", meaning);
        Guard.present("expression", expression);
        Guard.finite("value", value);
        Guard.present("unit", unit);
        Guard.present("source", source);
    }

    /**
     * The same line, said to be about a part of a whole.
     *
     * @param part name of the part
     * @return the line with the part before its meaning
     */
    public Working about(String part) {
        return new Working(symbol, part + ": " + meaning, expression, value, unit, source);
    }
}
