package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class TextFitPropertyTest {
    @Test
    void shortTextStaysAndLongTextEndsInAnEllipsis() {
        assertThat(TextFit.shortened("motor", Font.TEXT, 100)).isEqualTo("motor");
        assertThat(TextFit.shortened("a very long name of a motor", Font.TEXT, 100))
                .isEqualTo("a very long n…");
    }

    @Test
    void numbersKeepTheirUnits() {
        assertThat(TextFit.wrapped("a missing item at 433 mm", Font.TEXT, 150, 3))
                .containsExactly("a missing item at", "433 mm");
        assertThat(TextFit.wrapped("1 2 3 4 5 6 7 8 9", Font.TEXT, 60, 9)).allMatch(line -> !line.endsWith("…"));
    }

    @Test
    void charactersOfSeveralPartsAreNeverCut() {
        String family = "👩‍👩‍👧‍👦";
        String shortened = TextFit.shortened(family.repeat(9), Font.TEXT, 150);
        assertThat(shortened.replace(family, "")).isEqualTo("…");
    }

    @Property(tries = 200)
    void shortenedTextFits(
            @ForAll @StringLength(max = 120) String given, @ForAll @DoubleRange(min = 20, max = 400) double width) {
        String shortened = TextFit.shortened(PlainText.clean(given), Font.TEXT, width);
        assertThat(Font.TEXT.width(shortened)).isLessThanOrEqualTo(width);
    }

    @Property(tries = 200)
    void wrappedTextFitsIntoItsLines(
            @ForAll @StringLength(max = 300) String given, @ForAll @DoubleRange(min = 30, max = 400) double width) {
        assertThat(TextFit.wrapped(PlainText.clean(given), Font.TEXT, width, 3))
                .hasSizeLessThanOrEqualTo(3)
                .allMatch(line -> Font.TEXT.width(line) <= width);
    }

    @Property(tries = 200)
    void cleanTextIsOneLineAndFitForXml(@ForAll @StringLength(max = 120) String given) {
        StringBuilder escaped = new StringBuilder("<svg><text>");
        String clean = PlainText.clean(given);
        PlainText.escape(clean, escaped);
        escaped.append("</text></svg>");
        assertThat(Drawing.read(escaped.toString()).root().getTextContent()).isEqualTo(clean);
        assertThat(clean).doesNotContain("\n", "\r", "\t", "\u202e", "\u2067");
    }
}
