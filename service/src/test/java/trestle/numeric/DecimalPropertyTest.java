package trestle.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** The quick way to decimal text against the long one. */
class DecimalPropertyTest {
    @Property(tries = 20_000)
    void fixedPlacesAreThoseOfTheFormatter(@ForAll("numbers") double value, @ForAll @IntRange(max = 8) int places) {
        assertThat(Decimal.fixed(value, places)).isEqualTo(String.format(Locale.ROOT, "%." + places + "f", value));
    }

    @Property(tries = 20_000)
    void significantDigitsAreThoseOfALongDivision(
            @ForAll("numbers") double value, @ForAll @IntRange(min = 1, max = 9) int digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        String text = Decimal.significant(value, digits);
        assertThat(Double.parseDouble(text)).isEqualTo(rounded.doubleValue());
        // The library of Java 17 writes some short decimals as a longer one beside them.
        String usual = Double.toString(Math.copySign(rounded.doubleValue(), value));
        assertThat(text.length() < usual.length() || text.equals(usual))
                .as(text)
                .isTrue();
    }

    /** Of every size; short decimals, halves of them, and their neighbours, where rounding is in doubt. */
    @Provide
    Arbitrary<Double> numbers() {
        Arbitrary<Double> sizes = Arbitraries.doubles().between(-25, 25).map(power -> Math.pow(10, power));
        Arbitrary<Double> shorts = Arbitraries.longs()
                .between(-2_000_000_001L, 2_000_000_001L)
                .flatMap(units ->
                        Arbitraries.integers().between(-12, 12).map(power -> Double.parseDouble(units + "e" + power)));
        Arbitrary<Double> beside = shorts.flatMap(v ->
                Arbitraries.of(v, v / 2, Math.nextUp(v), Math.nextDown(v), Math.nextUp(v / 2), Math.nextDown(v / 2)));
        Arbitrary<Double> any = Arbitraries.doubles().between(-1e12, 1e12);
        Arbitrary<Double> ends =
                Arbitraries.of(0.0, -0.0, Double.MIN_VALUE, Double.MAX_VALUE, 1e22, 1e23, 999999999.5, 0.5);
        return Arbitraries.oneOf(sizes, sizes.map(v -> -v), shorts, beside, any, ends);
    }
}
