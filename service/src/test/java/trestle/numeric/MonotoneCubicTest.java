package trestle.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MonotoneCubicTest {

    @Test
    void aStraightLineStaysStraightAndTheEndsAreHeld() {
        MonotoneCubic line = new MonotoneCubic(new double[] {1, 2, 4}, new double[] {3, 5, 9});
        assertThat(line.at(3.3)).isCloseTo(1 + 2 * 3.3, within(1e-12));
        assertThat(line.at(0)).isEqualTo(3);
        assertThat(line.at(9)).isEqualTo(9);
    }

    @Property(tries = 200)
    void itNeverLeavesTheTwoValuesBesideIt(
            @ForAll @Size(6) List<@DoubleRange(min = -100, max = 100) Double> values,
            @ForAll @DoubleRange(min = 0, max = 5) double at) {
        double[] y = values.stream().mapToDouble(Double::doubleValue).toArray();
        double[] x = {0, 0.3, 1.7, 2, 4.5, 5};
        int i = 0;
        while (i < 4 && at > x[i + 1]) {
            i++;
        }
        double value = new MonotoneCubic(x, y).at(at);
        assertThat(value).isBetween(Math.min(y[i], y[i + 1]) - 1e-9, Math.max(y[i], y[i + 1]) + 1e-9);
    }

    @Test
    void pointsThatDoNotRiseAreRefused() {
        assertThatThrownBy(() -> new MonotoneCubic(new double[] {1, 1}, new double[] {1, 2}))
                .isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new MonotoneCubic(new double[] {1}, new double[] {1}))
                .isInstanceOf(ImpossibleValue.class);
    }
}
