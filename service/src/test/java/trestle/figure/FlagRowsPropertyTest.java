package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class FlagRowsPropertyTest {
    @Test
    void twoApartStandInOneRowAndTwoTogetherInTwo() {
        assertThat(arranged(List.of(100.0, 300.0), 3)).allMatch(pole -> pole.row() == 0);
        assertThat(arranged(List.of(200.0, 200.0, 201.0), 3))
                .hasSize(3)
                .extracting(Pole::row)
                .contains(0, 1);
    }

    @Property(tries = 150)
    void noNameLiesOverAnotherOrOverItsStaff(
            @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = Panels.LEFT, max = Panels.RIGHT) Double> places,
            @ForAll @IntRange(min = 1, max = 12) int rows) {
        List<Pole> poles = arranged(places, rows);
        assertThat(poles).isNotEmpty().allMatch(Pole::onPage).allMatch(p -> p.row() < rows);
        for (Pole pole : poles) {
            for (Pole other : poles) {
                assertThat(pole != other
                                && (pole.text().overlaps(other.text())
                                        || pole.text().overlaps(other.staff())))
                        .isFalse();
            }
        }
    }

    @Property(tries = 100)
    void fewFlagsInTheMiddleAllFindRoom(
            @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 150, max = 330) Double> places) {
        assertThat(arranged(places, 8)).hasSameSizeAs(places);
    }

    private static List<Pole> arranged(List<Double> places, int rows) {
        List<Flag> flags = IntStream.range(0, places.size())
                .mapToObj(i -> new Flag(places.get(i), Style.INK, "name " + 7 * i))
                .toList();
        return FlagRows.arranged(flags, x -> x, rows);
    }
}
