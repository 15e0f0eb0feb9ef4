package trestle.finding;

import java.util.Map;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Works out an expression as a chain prints it, by recursive descent. */
public final class Arithmetic {
    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?(e-?\\d+)?");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*");
    private static final Map<String, DoubleUnaryOperator> FUNCTIONS = Map.ofEntries(
            Map.entry("sqrt", Math::sqrt),
            Map.entry("exp", Math::exp),
            Map.entry("ln", Math::log),
            Map.entry("sin", Math::sin),
            Map.entry("cos", Math::cos),
            Map.entry("tan", Math::tan),
            Map.entry("acos", Math::acos),
            Map.entry("asin", Math::asin),
            Map.entry("atan", Math::atan),
            Map.entry("asinh", x -> Math.log(x + Math.sqrt(x * x + 1))));
    private static final Map<String, DoubleBinaryOperator> CHOICES = Map.of("min", Math::min, "max", Math::max);

    /** Half a unit of the sixth digit at its coarsest. */
    private static final double ROUNDING = 5e-6;

    private static final int ROUNDED_WAYS = 12;

    private final String text;
    private final Random roundings;
    private int at;

    private Arithmetic(String text, Random roundings) {
        this.text = text;
        this.roundings = roundings;
    }

    /** By how much the value may be off because the numbers are printed with six digits. */
    public static double roundingOf(String expression) {
        double value = of(expression);
        double greatest = 0;
        for (int seed = 0; seed < ROUNDED_WAYS; seed++) {
            double moved = new Arithmetic(expression, new Random(seed)).sum();
            greatest = Math.max(greatest, Math.abs(moved - value));
        }
        return greatest;
    }

    private double rounded(String number) {
        double value = Double.parseDouble(number);
        boolean printedWhole = number.matches("\\d{1,5}");
        return printedWhole || roundings == null
                ? value
                : value * (1 + (roundings.nextBoolean() ? ROUNDING : -ROUNDING));
    }

    /** The value of an expression of numbers, brackets, operators and functions. */
    public static double of(String expression) {
        Arithmetic reader = new Arithmetic(expression, null);
        double value = reader.sum();
        if (reader.at != expression.length()) {
            throw new IllegalArgumentException("left over: " + expression.substring(reader.at) + " of " + expression);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (sees("+") || sees("-")) {
            value = take("+") ? value + product() : value - next("-", this::product);
        }
        return value;
    }

    private double product() {
        double value = signed();
        while (sees("*") || sees("/")) {
            value = take("*") ? value * signed() : value / next("/", this::signed);
        }
        return value;
    }

    private double signed() {
        return take("-") ? -power() : power();
    }

    private double power() {
        double base = atom();
        return take("^") ? Math.pow(base, signed()) : base;
    }

    private double atom() {
        if (take("(")) {
            double value = sum();
            return closed(value);
        }
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        if (number.lookingAt()) {
            at = number.end();
            return rounded(number.group());
        }
        Matcher name = NAME.matcher(text).region(at, text.length());
        if (!name.lookingAt()) {
            throw new IllegalArgumentException("no number at " + at + " of " + text);
        }
        at = name.end();
        return name.group().equals("pi") ? Math.PI : function(name.group());
    }

    private double function(String name) {
        double value = next("(", this::sum);
        if (!CHOICES.containsKey(name)) {
            return closed(FUNCTIONS.get(name).applyAsDouble(value));
        }
        while (take(",")) {
            value = CHOICES.get(name).applyAsDouble(value, sum());
        }
        return closed(value);
    }

    private double closed(double value) {
        return next(")", () -> value);
    }

    private double next(String sign, DoubleSupplier then) {
        if (!take(sign)) {
            throw new IllegalArgumentException("no " + sign + " at " + at + " of " + text);
        }
        return then.getAsDouble();
    }

    private boolean sees(String sign) {
        return text.startsWith(sign, at);
    }

    private boolean take(String sign) {
        boolean there = sees(sign);
        at += there ? sign.length() : 0;
        return there;
    }
}
