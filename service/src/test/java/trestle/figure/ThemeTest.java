package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThemeTest {
    /** Web Content Accessibility Guidelines 2.1, criterion 1.4.3. */
    private static final double LEAST_CONTRAST = 4.5;

    @ParameterizedTest
    @EnumSource(
            value = Style.class,
            mode = EnumSource.Mode.MATCH_ANY,
            names = {"INK", "MUTED", ".*_TEXT", ".*_FILL"})
    void textStandsOutFromThePaper(Style style) {
        for (boolean dark : new boolean[] {false, true}) {
            assertThat(contrast(style.colour().hex(dark), Colour.PAPER.hex(dark)))
                    .as("dark: %s", dark)
                    .isGreaterThan(LEAST_CONTRAST);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark", "auto"})
    void themesAreFoundByName(String name) {
        assertThat(Theme.named(name).orElseThrow().rootClass()).isEqualTo("trestle-" + name);
        assertThat(Theme.named(name.toUpperCase(java.util.Locale.ROOT))).isEmpty();
    }

    /** Relative luminances with 5 % added, the same source's definition. */
    private static double contrast(String one, String other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(String hex) {
        int rgb = Integer.parseInt(hex.substring(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
