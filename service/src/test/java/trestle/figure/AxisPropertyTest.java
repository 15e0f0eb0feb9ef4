package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class AxisPropertyTest {
    @Property(tries = 200)
    void stepsAreOneTwoOrFiveTimesAPowerOfTen(
            @ForAll @Scale(8) @DoubleRange(min = 1e-6, max = 1e9) double length,
            @ForAll @IntRange(min = 2, max = 10) int about) {
        double step = Ticks.step(length, about);
        double digit = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
        assertThat(List.of(1L, 2L, 5L)).contains(Math.round(digit));
        assertThat(digit).isCloseTo(Math.round(digit), offset(1e-9));
        assertThat(length / step).isBetween(about / 2.5 - 1e-9, about + 1e-9);
    }

    @Property(tries = 200)
    void ticksRiseWithinTheAxisAndAreLabelledApart(
            @ForAll @Scale(8) @DoubleRange(min = -1e7, max = 1e7) double from,
            @ForAll @Scale(8) @DoubleRange(min = 1e-3, max = 1e7) double length) {
        Axis axis = Axis.between(from, from + length, 5);
        assertThat(axis.ticks()).hasSizeBetween(1, 7);
        for (int i = 0; i < axis.ticks().size(); i++) {
            assertThat(axis.share(axis.ticks().get(i).at())).isBetween(-1e-6, 1 + 1e-6);
            if (i > 0) {
                assertThat(axis.ticks().get(i).at())
                        .isGreaterThan(axis.ticks().get(i - 1).at());
            }
        }
    }

    @Property(tries = 500)
    void numbersBesideAPlotHaveRoomAndDiffer(
            @ForAll @Scale(8) @DoubleRange(min = 1e-5, max = 1e12) double greatest,
            @ForAll @IntRange(min = 2, max = 5) int about) {
        List<String> labels =
                Axis.fromZero(greatest, about).ticks().stream().map(Tick::label).toList();
        assertThat(labels).doesNotHaveDuplicates().allMatch(label -> Font.TEXT.width(label) <= Panels.NUMBER_WIDTH);
    }

    @Property(tries = 200)
    void fractionsStayBetweenTheEndsWhateverIsAsked(@ForAll double from, @ForAll double to, @ForAll double value) {
        Axis axis = Axis.between(Math.min(from, to) / 4, Math.max(from, to) / 4, 5);
        assertThat(axis.fraction(value)).isBetween(0.0, 1.0);
    }

    @Property(tries = 200)
    void decadesTakeEqualLengths(
            @ForAll @Scale(8) @DoubleRange(min = 1e-6, max = 1e3) double from,
            @ForAll @Scale(8) @DoubleRange(min = 100, max = 1e5) double ratio) {
        Axis axis = Axis.logarithmic(from, from * ratio);
        double first = axis.share(10 * from) - axis.share(from);
        double second = axis.share(100 * from) - axis.share(10 * from);
        assertThat(first).isCloseTo(second, offset(1e-9));
        assertThat(axis.ticks()).isNotEmpty();
    }
}
