package trestle.rails;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.finding.Arithmetic;
import trestle.finding.Working;

/** The lines of a budget: which there are, and that each gives its number. */
class RailWorkingsTest {
    private static final RailTask TASK = new RailTask(new Supply(25.2, 18), List.of(servos(), payload(), spare()));

    private static Rail servos() {
        Regulator regulator = new Regulator(
                new Conversion.Switching(0.8),
                6,
                10,
                OptionalDouble.of(20),
                7,
                30,
                Optional.of(new Cooling(20, 313.15, 398.15)));
        Load aileron = new Load("aileron", 2, 0.25, OptionalDouble.of(1.5), 0.5, true, LoadRole.SERVO);
        Load flap = new Load("flap", 1, 0.5, OptionalDouble.of(2), 0.125, false, LoadRole.SERVO);
        Load gear = new Load("gear", 1, 0.5, OptionalDouble.of(8), 0.125, false, LoadRole.SERVO);
        return new Rail("servos", regulator, List.of(aileron, flap, gear), false);
    }

    private static Rail payload() {
        Regulator linear =
                new Regulator(new Conversion.Linear(), 5, 2, OptionalDouble.empty(), 7, 30, Optional.empty());
        Load pump = new Load("pump", 1, 0.25, OptionalDouble.empty(), 1, true, LoadRole.OTHER);
        return new Rail("payload", linear, List.of(pump), false);
    }

    private static Rail spare() {
        Regulator linear =
                new Regulator(new Conversion.Linear(), 5, 2, OptionalDouble.empty(), 7, 30, Optional.empty());
        return new Rail("spare", linear, List.of(), false);
    }

    private static List<Working> lines() {
        return RailWorkings.of(TASK, Rails.of(TASK));
    }

    @Test
    void everyFormulaGivesItsNumber() {
        assertThat(lines())
                .filteredOn(RailWorkingsTest::isWorked)
                .hasSizeGreaterThan(25)
                .allSatisfy(line -> {
                    String numbers =
                            line.expression().substring(line.expression().lastIndexOf(" = ") + 3);
                    assertThat(Arithmetic.of(numbers)).as(line.expression()).isCloseTo(line.value(), within(1e-6));
                });
    }

    private static boolean isWorked(Working line) {
        return line.expression().split(" = ").length == 3;
    }

    @Test
    void theLinesComeInTheOrderOfComputation() {
        assertThat(lines())
                .extracting(Working::symbol)
                .containsExactly(
                        "V_hi", "V_lo", "I_1", "W_1", "R_1", "K_1", "p_1", "pp_1", "V_1", "P_1", "Q_1", "H_1", "J_1",
                        "L_1", "T_1", "I_2", "W_2", "R_2", "K_2", "p_2", "pp_2", "V_2", "P_2", "Q_2", "H_2", "J_2",
                        "L_2", "I_3", "K_3", "p_3", "pp_3", "V_3", "P_3", "Q_3", "H_3", "J_3", "L_3", "P", "Q");
    }

    /** By hand: two ailerons of 0.25 A at half duty, flap and gear of 0.5 A at an eighth; the gear's rise is greatest. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "I_1 | 2*0.25*0.5+1*0.5*0.125+1*0.5*0.125 | 0.375",
                "W_1 | 2*0.25+1*0.5+1*0.5 | 1.5",
                "R_1 | 2*(1.5-0.25)+0+0 | 2.5",
                "K_1 | W_1+max(R_1,1*(8-0.5)) | 9",
                "p_1 | 100*I_1/10 | 3.75",
                "pp_1 | 100*K_1/20 | 45",
                "P_1 | V_1*I_1/0.8 | 2.8125",
                "Q_1 | V_1*K_1/0.8 | 67.5",
                "H_1 | max(0,P_1-V_1*I_1) | 0.5625",
                "J_1 | (V_1*I_1/0.8)/V_lo | 0.15625",
                "L_1 | (V_1*K_1/0.8)/V_lo | 3.75",
                "T_1 | 40+H_1*20 | 51.25",
                "R_2 | 1*(0.25-0.25) | 0",
                "K_2 | W_2+max(R_2,0) | 0.25",
                "P_2 | V_hi*I_2 | 6.3",
                "J_2 | (V_lo*I_2)/V_lo | 0.25",
                "P | P_1+P_2+P_3 | 9.1125",
                "Q | Q_1+Q_2+Q_3 | 73.8"
            })
    void eachLineSaysItsFormula(String symbol, String formula, double value) {
        Working line = lines().stream()
                .filter(l -> l.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
        assertThat(line.expression()).startsWith(symbol + " = ").contains(" = " + formula);
        assertThat(line.value()).isCloseTo(value, within(1e-9));
    }

    @Test
    void aRailWithoutLoadsSaysSo() {
        assertThat(lines())
                .filteredOn(l -> l.symbol().equals("I_3"))
                .singleElement()
                .satisfies(l -> assertThat(l.meaning()).endsWith("which has no load"));
    }

    @Test
    void noRailsHaveNoSum() {
        RailTask none = new RailTask(new Supply(25.2, 18), List.of());
        assertThat(RailWorkings.of(none, Rails.of(none)))
                .extracting(Working::symbol)
                .containsExactly("V_hi", "V_lo");
    }
}
