package trestle.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.IllegalFormatException;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each kind of place as the library fills it. */
class SentenceTest {
    private static final Object[] VALUES = {12.345, 7, "a wire", -0.04, 3L};

    @ParameterizedTest
    @ValueSource(
            strings = {
                "nothing to fill",
                "%.1f V of %d in %s",
                "%.0f%% of %d, %s, %.1f at %d",
                "%s%s%s%s%s",
                "%.2f",
                "%.3g of %d",
                "%8.2f",
                "%1$.1f and %1$.2f",
                "ends in %%",
                ""
            })
    void fillsAsTheLibraryDoes(String sentence) {
        assertThat(Sentence.filled(sentence, VALUES)).isEqualTo(String.format(Locale.ROOT, sentence, VALUES));
    }

    @ParameterizedTest
    @CsvSource({"0.125, %.2f, 0.13", "2.5, %.0f, 3", "1e9, %.1f, 1000000000.0", "NaN, %.1f, NaN", "1.005, %.2f, 1.01"})
    void aNumberInDoubtGoesTheLongWay(double value, String sentence, String text) {
        assertThat(Sentence.filled(sentence, value)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"%", "%q", "%.1f", "%d"})
    void aWrongPlaceIsRefusedAsTheLibraryRefusesIt(String sentence) {
        assertThatThrownBy(() -> Sentence.filled(sentence, "text")).isInstanceOf(IllegalFormatException.class);
    }
}
