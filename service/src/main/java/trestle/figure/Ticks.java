package trestle.figure;

import java.util.ArrayList;
import java.util.List;

/** Marks at steps of 1, 2 or 5 times a power of ten. */
final class Ticks {
    /** Keeps a tick that lies on the end of the axis but for rounding. */
    private static final double ROUNDING = 1e-9;

    /** Decades that still have room for 2 and 5. */
    private static final double FEW_DECADES = 3.2;

    /** With more places a number has no room beside a plot. */
    private static final int MOST_PLACES = 4;

    private Ticks() {}

    /** The step that cuts a length into about so many. */
    static double step(double length, int about) {
        double rough = length / about;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double digit = rough / power;
        if (digit > 5) {
            return 10 * power;
        }
        if (digit > 2) {
            return 5 * power;
        }
        return digit > 1 ? 2 * power : power;
    }

    /** The multiples of a step from one end to the other. */
    static List<Tick> linear(double from, double to, double step) {
        double slack = ROUNDING * (to - from);
        List<Tick> ticks = new ArrayList<>();
        long first = (long) Math.ceil((from - slack) / step);
        long last = (long) Math.floor((to + slack) / step);
        Multiple multiple = Multiple.of(Math.max(Math.abs(from), Math.abs(to)), step);
        for (long i = first; i <= last; i++) {
            ticks.add(new Tick(i * step, multiple.label(i * step, step)));
        }
        return ticks;
    }

    /** Powers of ten, and 2 and 5 times them where there are few. */
    static List<Tick> logarithmic(double from, double to) {
        boolean few = Math.log10(to / from) < FEW_DECADES;
        List<Tick> ticks = new ArrayList<>();
        for (int power = (int) Math.floor(Math.log10(from)); ; power++) {
            for (int digit : few ? new int[] {1, 2, 5} : new int[] {1}) {
                double at = digit * Math.pow(10, power);
                if (at > to * (1 + ROUNDING)) {
                    return ticks;
                }
                if (at >= from * (1 - ROUNDING)) {
                    ticks.add(new Tick(at, Numbers.significant(at, 1)));
                }
            }
        }
    }

    /** Six digits have no room beside a plot: thousands and millions are written as such. */
    private record Multiple(double factor, String sign) {
        private static final Multiple ONE = new Multiple(1, "");
        private static final List<Multiple> LARGER = List.of(new Multiple(1e3, "k"), new Multiple(1e6, "M"));
        private static final double LONGEST = 1e5;
        private static final double LONGEST_WITH_SIGN = 1e4;

        static Multiple of(double greatest, double step) {
            return greatest < LONGEST
                    ? ONE
                    : LARGER.stream()
                            .filter(one -> greatest / one.factor < LONGEST_WITH_SIGN && step >= one.factor)
                            .findFirst()
                            .orElse(ONE);
        }

        String label(double at, double step) {
            return at == 0 && factor > 1 ? "0" : Ticks.label(at / factor, step / factor) + sign;
        }
    }

    private static String label(double at, double step) {
        int places = (int) Math.max(0, -Math.floor(Math.log10(step) + ROUNDING));
        return places > MOST_PLACES ? Numbers.power(at, 3) : Numbers.fixed(at, places);
    }
}
