package trestle.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DigitsTest {
    @Test
    void twoNumbersAreToldApart() {
        assertThat(Digits.beside(10.04, 10, 1)).isEqualTo("10.04");
        assertThat(Digits.beside(10, 10.04, 1)).isEqualTo("10.00");
        assertThat(Digits.beside(12.3, 10, 1)).isEqualTo("12.3");
        assertThat(Digits.beside(12.3, 10, 0)).isEqualTo("12");
    }

    @Test
    void equalNumbersAndThoseNobodyTellsApartEnd() {
        assertThat(Digits.beside(3, 3, 1)).isEqualTo("3.0");
        assertThat(Digits.beside(3, 3 + 1e-9, 1)).isEqualTo("3.000000");
    }

    @Test
    void zerosThatSayNothingAreLeftOut() {
        assertThat(Digits.significant(60, 4)).isEqualTo("60");
        assertThat(Digits.significant(25.2, 4)).isEqualTo("25.2");
        assertThat(Digits.significant(134.567, 3)).isEqualTo("135");
        assertThat(Digits.significant(20_000, 2)).isEqualTo("20000");
        assertThat(Digits.significant(0.00031, 4)).isEqualTo("0.00031");
        assertThat(Digits.significant(0, 4)).isEqualTo("0");
        assertThat(Digits.significant(-0.25, 1)).isEqualTo("-0.3");
    }
}
