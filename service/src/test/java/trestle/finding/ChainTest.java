package trestle.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import trestle.finding.Chain.Term;

class ChainTest {
    @Test
    void putsTheNumbersOfEarlierLinesIn() {
        Chain chain = new Chain().given("W", "weight", 57.9, "N").given("x_1", "shift", -3, "m");
        chain.step("V", "speed", 1, "m/s", "sqrt(2*W/1e5)+x_1*pi-max(W,2)", "made up");
        assertThat(chain.lines().get(2).expression())
                .isEqualTo("V = sqrt(2*W/1e5)+x_1*pi-max(W,2)" + " = sqrt(2*57.9/1e5)+(-3)*pi-max(57.9,2)");
    }

    @Test
    void refusesASymbolThatNoEarlierLineGives() {
        Chain chain = new Chain();
        assertThatThrownBy(() -> chain.step("a", "a", 1, "1", "b*2", "made up"))
                .hasMessageContaining("no earlier line gives b");
    }

    @Test
    void printsSixDigitsInAnyLocale() {
        assertThat(List.of(1234567.8, 0.5, 0.0000123456789, 2.5e12, 0.0))
                .extracting(Chain::number)
                .containsExactly("1234570", "0.5", "1.23457e-5", "2.5e12", "0");
    }

    @Test
    void writesALongSumInParts() {
        List<Term> terms =
                IntStream.range(0, 60).mapToObj(i -> new Term("2", 2)).toList();
        List<Working> lines =
                new Chain().sum("m", "mass", "g", terms, "made up").lines();
        assertThat(lines).extracting(Working::value).containsExactly(50.0, 50.0, 20.0, 120.0);
        assertThat(lines.get(3).expression()).isEqualTo("m = m_1to25+m_26to50+m_51to60 = 50+50+20");
    }

    @Test
    void aNumberIsGivenByItself() {
        Chain chain = new Chain().given("W", "weight", -57.9, "N").given("b", "span", 2.8, "m", "a drawing");
        assertThat(chain.lines())
                .containsExactly(
                        new Working("W", "weight", "W = -57.9", -57.9, "N", Chain.REQUEST),
                        new Working("b", "span", "b = 2.8", 2.8, "m", "a drawing"));
    }

    @Test
    void aNumberThatNoFormulaGivesSaysHowItWasFound() {
        Chain chain = new Chain().found("V", "speed", 14, "m/s", "least power over airspeed", "search");
        assertThat(chain.lines())
                .containsExactly(new Working("V", "speed", "V: least power over airspeed", 14, "m/s", "search"));
        assertThat(chain.step("U", "twice", 28, "m/s", "2*V", Chain.ARITHMETIC)
                        .lines()
                        .get(1)
                        .expression())
                .isEqualTo("U = 2*V = 2*14");
    }

    @Test
    void aFormulaOfNumbersStandsOnce() {
        assertThat(new Chain()
                        .step("a", "area", 6, "m²", "2*3", Chain.ARITHMETIC)
                        .lines()
                        .get(0)
                        .expression())
                .isEqualTo("a = 2*3");
    }

    /** Powers of ten where zeros would have to be counted. */
    @Test
    void numbersArePlainAsLongAsTheyRead() {
        assertThat(List.of(1e-4, 9.9e-5, 999_999_000.0, 1e9, -1e-5, 12.0))
                .extracting(Chain::number)
                .containsExactly("0.0001", "9.9e-5", "999999000", "1e9", "(-1e-5)", "12");
    }

    @Test
    void aSumThatReadsStandsInOneLine() {
        List<Term> terms =
                IntStream.range(0, 25).mapToObj(i -> new Term("1", 1)).toList();
        assertThat(new Chain().sum("m", "mass", "g", terms, "made up").lines())
                .extracting(Working::value)
                .containsExactly(25.0);
        List<Term> more = IntStream.range(0, 26).mapToObj(i -> new Term("1", 1)).toList();
        assertThat(new Chain().sum("m", "mass", "g", more, "made up").lines())
                .extracting(Working::meaning)
                .containsExactly("mass, a part of the sum", "mass, a part of the sum", "mass");
    }

    @Test
    void theLinesStayAsTheyWere() {
        Chain chain = new Chain().given("a", "a", 1, "1");
        List<Working> early = chain.lines();
        chain.given("b", "b", 2, "1");
        assertThat(early).hasSize(1);
    }

    @Test
    void theReaderOfTheTestsKnowsTheNotation() {
        assertThat(Arithmetic.of("-2^2+3*(1-(-4))/5-max(1,2)*1e-1")).isEqualTo(-4 + 3 - 0.2);
        assertThat(Arithmetic.of("asinh(0)+ln(exp(2))+sqrt(16)/2^2")).isEqualTo(3);
    }
}
