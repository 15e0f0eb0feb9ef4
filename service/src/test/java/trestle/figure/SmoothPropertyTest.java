package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class SmoothPropertyTest {
    private static final double ROUNDING = 1e-9;

    @Example
    void aStraightLineStaysStraight() {
        List<Point> line = List.of(new Point(0, 1), new Point(1, 3), new Point(2, 5));
        assertThat(Smooth.through(line))
                .hasSizeGreaterThan(3)
                .allMatch(p -> Math.abs(p.y() - (1 + 2 * p.x())) < ROUNDING);
    }

    @Property(tries = 200)
    void theLineMeetsEveryValueAndStaysBetweenNeighbours(
            @ForAll @Size(min = 3, max = 20) List<@DoubleRange(min = -1e3, max = 1e3) Double> heights) {
        List<Point> values = IntStream.range(0, heights.size())
                .mapToObj(i -> new Point(0.5 * i, heights.get(i)))
                .toList();
        List<Point> line = Smooth.through(values);
        assertThat(line).containsAll(values);
        for (Point p : line) {
            int i = (int) Math.min(values.size() - 2, Math.floor(p.x() / 0.5));
            double a = heights.get(i);
            double b = heights.get(i + 1);
            assertThat(p.y()).isBetween(Math.min(a, b) - ROUNDING, Math.max(a, b) + ROUNDING);
        }
    }
}
