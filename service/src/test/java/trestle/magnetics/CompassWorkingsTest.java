package trestle.magnetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.finding.Arithmetic;
import trestle.finding.Basis;
import trestle.finding.Working;

/** The lines of a clearance: which there are, and that each gives its number. */
class CompassWorkingsTest {
    private static final LeadRun MAIN =
            new LeadRun("main lead", 10, OptionalDouble.of(50), 0.006, false, 0.25, OptionalDouble.of(0.5));

    private static final LeadRun FEED =
            new LeadRun("feed", 4, OptionalDouble.empty(), 0.004, true, 0.125, OptionalDouble.empty());

    private static List<Working> lines(LeadRun... runs) {
        CompassTask task = new CompassTask(List.of(runs), 20e-6, Math.toRadians(2), Basis.REQUEST);
        return CompassWorkings.of(task, CompassClearance.of(task));
    }

    @Test
    void everyFormulaGivesItsNumber() {
        assertThat(lines(MAIN, FEED))
                .filteredOn(line -> line.expression().split(" = ").length == 3)
                .hasSizeGreaterThan(20)
                .allSatisfy(line -> {
                    String numbers =
                            line.expression().substring(line.expression().lastIndexOf(" = ") + 3);
                    assertThat(Arithmetic.of(numbers))
                            .as(line.expression())
                            .isCloseTo(line.value(), within(1e-4 * (1 + Math.abs(line.value()))));
                });
    }

    @Test
    void theLinesComeInTheOrderOfComputation() {
        assertThat(lines(MAIN, FEED))
                .extracting(Working::symbol)
                .containsExactly(
                        "B_h", "a", "B_a", "s_1", "d_1", "s_2", "d_2", "I_1", "B_1", "p_1", "e_1", "D_1", "I_2", "B_2",
                        "p_2", "e_2", "D_2", "B_w", "p_w", "e_w", "D_w", "B2", "B_l", "p_l", "e_l", "D_l", "I_1p",
                        "B_1p", "p_1p", "e_1p", "D_1p", "I_2p", "B_2p", "p_2p", "e_2p", "D_2p", "B_wp", "p_wp", "e_wp",
                        "D_wp", "B2p", "B_lp", "p_lp", "e_lp", "D_lp");
    }

    /** By hand: 0.2 µT m/A · 4 A · 0.2 mm over the square of 125 mm, and so on. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "B_a | B_h*sin(a*pi/180) | 0.69799",
                "s_2 | 4/20 | 0.2",
                "s_1 | 6 | 6",
                "B_2 | 200*I_2*s_2/(d_2^2-s_2^2/4) | 0.01024",
                "B_1p | 200*I_1p*(500/((d_1-s_1/2)*sqrt(500^2+4*(d_1-s_1/2)^2))-500/((d_1+s_1/2)*sqrt(500^2+4*(d_1+s_1/2)^2))) | 1.01839",
                "e_1p | asin(B_1p/B_h)*180/pi | 2.91872",
                "B_w | B_1+B_2 | 0.21392",
                "B2 | B_1^2+B_2^2 | 0.04159",
                "B_l | sqrt(B2) | 0.20393",
                "B_lp | sqrt(B2p) | 1.01844",
                "p_w | 100*B_w/B_h | 1.06959"
            })
    void eachLineSaysItsFormula(String symbol, String formula, double value) {
        Working line = lines(MAIN, FEED).stream()
                .filter(l -> l.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
        assertThat(line.expression()).startsWith(symbol + " = ").contains(" = " + formula);
        assertThat(line.value()).isCloseTo(value, within(6e-6));
    }

    @Test
    void fullThrottleThatIsNotKnownHasNoLines() {
        assertThat(lines(FEED)).extracting(Working::symbol).contains("e_l").noneMatch(symbol -> symbol.endsWith("p"));
        assertThat(lines()).extracting(Working::symbol).containsExactly("B_h", "a", "B_a");
    }

    /** Where there is no heading there is no line for its error. */
    @Test
    void aFieldBeyondTheEarthsHasNoError() {
        LeadRun near = new LeadRun("near", 200, OptionalDouble.empty(), 0.02, false, 0.1, OptionalDouble.empty());
        assertThat(lines(near))
                .extracting(Working::symbol)
                .contains("B_1", "D_1")
                .doesNotContain("e_1", "e_w");
    }
}
