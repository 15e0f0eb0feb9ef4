package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {
    @ParameterizedTest
    @CsvSource({
        "12.345, 3, 12.3",
        "1224, 3, 1220",
        "0.0312, 2, 0.031",
        "-2.5, 2, −2.5",
        "0, 3, 0",
        "-0.0, 3, 0",
        "1234567, 3, 1.23e6",
        "0.00001234, 2, 1.2e−5",
        "9.996, 3, 10",
        "1e300, 3, 1e300"
    })
    void significantDigitsAreKept(double value, int digits, String text) {
        assertThat(Numbers.significant(value, digits)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"12.34, 1, 12.3", "-0.04, 1, 0.0", "7, 0, 7", "-3.6, 0, −4", "2e7, 1, 2e7"})
    void placesAreKept(double value, int places, String text) {
        assertThat(Numbers.fixed(value, places)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"12.34, 12.3", "12, 12", "-0.04, 0", "-3.25, -3.2", "479.96, 480", "0.05, 0.1"})
    void coordinatesAreWrittenToATenth(double value, String text) {
        StringBuilder out = new StringBuilder();
        Numbers.coordinate(value, out);
        assertThat(out).hasToString(text);
    }
}
