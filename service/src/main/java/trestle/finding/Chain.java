package trestle.finding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Writes workings down in order. A formula may only use symbols that stand on an earlier line, so
 * that a chain can be redone from its first line on; their numbers are put in here.
 *
 * <p>The notation: {@code + - * / ^}, brackets, {@code pi}, and functions as {@code name(...)}:
 * sqrt, cbrt, exp, ln, sin, cos, tan, asin, acos, atan, asinh, min, max. Angles in rad.
 */
public final class Chain {
    /** Source of a number that was asked with. */
    public static final String REQUEST = "the request, or the default that the assumptions list, in this unit";

    /** Source of a sum, a conversion, a share. */
    public static final String ARITHMETIC = "arithmetic";

    /** A name that is neither a function nor the exponent of a number. */
    private static final Pattern NAME = Pattern.compile("(?<![\\w.])(?!pi\\b)[A-Za-z]\\w*+(?!\\()");

    /** Inputs are rarely better known; enough to redo three digits through a cancellation. */
    private static final MathContext DIGITS = new MathContext(6);

    /** A sum of more terms is written in parts, so that a line can be read. */
    private static final int MOST_TERMS = 25;

    private static final double LEAST_PLAIN = 1e-4;
    private static final double MOST_PLAIN = 1e9;

    private final List<Working> lines = new ArrayList<>();
    private final Map<String, Double> known = new HashMap<>();

    /**
     * A term of a long sum.
     *
     * @param formula as in {@link #step}
     * @param value its value
     */
    public record Term(String formula, double value) {}

    /** A chain without a line. */
    public Chain() {}

    /**
     * A number that was asked with.
     *
     * @param symbol what later lines call it
     * @param meaning what it is
     * @param value the number
     * @param unit its unit
     * @return this
     */
    public Chain given(String symbol, String meaning, double value, String unit) {
        return given(symbol, meaning, value, unit, REQUEST);
    }

    /**
     * A number that is taken from somewhere.
     *
     * @param symbol what later lines call it
     * @param meaning what it is
     * @param value the number
     * @param unit its unit
     * @param source where it is from
     * @return this
     */
    public Chain given(String symbol, String meaning, double value, String unit, String source) {
        return write(symbol, meaning, symbol + " = " + plain(value), value, unit, source);
    }

    /**
     * A number that follows from earlier lines.
     *
     * @param symbol what later lines call it
     * @param meaning what it is
     * @param value the number, as the calculation has it
     * @param unit its unit
     * @param formula in the symbols of earlier lines
     * @param source of the formula
     * @return this
     */
    public Chain step(String symbol, String meaning, double value, String unit, String formula, String source) {
        String filled = NAME.matcher(formula).replaceAll(this::numberOf);
        String expression =
                formula.equals(filled) ? symbol + " = " + formula : symbol + " = " + formula + " = " + filled;
        return write(symbol, meaning, expression, value, unit, source);
    }

    /**
     * A number that no formula gives: a search, an integration, a table.
     *
     * @param symbol what later lines call it
     * @param meaning what it is
     * @param value the number, as the calculation has it
     * @param unit its unit
     * @param how how it was found
     * @param source of the method
     * @return this
     */
    public Chain found(String symbol, String meaning, double value, String unit, String how, String source) {
        return write(symbol, meaning, symbol + ": " + how, value, unit, source);
    }

    /**
     * A sum of any number of terms; a long one in parts, each on its own line.
     *
     * @param symbol what later lines call it
     * @param meaning what it is
     * @param unit its unit
     * @param terms at least one
     * @param source of the sum
     * @return this
     */
    public Chain sum(String symbol, String meaning, String unit, List<Term> terms, String source) {
        if (terms.size() <= MOST_TERMS) {
            return step(symbol, meaning, total(terms), unit, joined(terms), source);
        }
        List<Term> parts = new ArrayList<>();
        for (int from = 0; from < terms.size(); from += MOST_TERMS) {
            List<Term> part = terms.subList(from, Math.min(from + MOST_TERMS, terms.size()));
            String name = symbol + "_" + (from + 1) + "to" + (from + part.size());
            step(name, meaning + ", a part of the sum", total(part), unit, joined(part), source);
            parts.add(new Term(name, total(part)));
        }
        return step(symbol, meaning, total(parts), unit, joined(parts), source);
    }

    /**
     * The lines so far.
     *
     * @return in order
     */
    public List<Working> lines() {
        return List.copyOf(lines);
    }

    /**
     * A number as formulas have it: six digits, bracketed where negative.
     *
     * @param value the number, finite
     * @return such as {@code 57.9}, {@code (-3)} or {@code 1.5e-7}
     */
    public static String number(double value) {
        return value < 0 ? "(" + plain(value) + ")" : plain(value);
    }

    private static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        double size = rounded.abs().doubleValue();
        if (size == 0 || (size >= LEAST_PLAIN && size < MOST_PLAIN)) {
            return rounded.toPlainString();
        }
        int exponent = rounded.precision() - rounded.scale() - 1;
        return String.format(
                Locale.ROOT, "%se%d", rounded.scaleByPowerOfTen(-exponent).toPlainString(), exponent);
    }

    private String numberOf(MatchResult name) {
        Double value = known.get(name.group());
        if (value == null) {
            throw new IllegalStateException("no earlier line gives " + name.group());
        }
        return number(value);
    }

    private Chain write(String symbol, String meaning, String expression, double value, String unit, String source) {
        lines.add(new Working(symbol, meaning, expression, value, unit, source));
        known.put(symbol, value);
        return this;
    }

    private static double total(List<Term> terms) {
        return terms.stream().mapToDouble(Term::value).sum();
    }

    private static String joined(List<Term> terms) {
        return String.join("+", terms.stream().map(Term::formula).toList());
    }
}
