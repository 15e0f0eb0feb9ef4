package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.rails.Rail;
import trestle.rails.RailTask;
import trestle.rails.Rails;
import trestle.rails.Supply;

class RailFigureTest {
    private static final int RAILS = 50;
    private static final int DRAWN = 24;

    /** Of more rails than there is room for, the one that fails is on top, wherever it stands in the document. */
    @Test
    void theRailThatFailsIsDrawnFirst() {
        List<Rail> rails = new ArrayList<>();
        for (int i = 0; i < RAILS - 1; i++) {
            rails.add(rail("good " + i, 0.5));
        }
        rails.add(rail("overloaded", 5));
        RailTask task = new RailTask(new Supply(25, 18), rails);

        List<String> words = Drawing.read(RailFigure.of(task, Rails.of(task), Theme.LIGHT))
                .isSound()
                .words();

        List<String> names = words.stream()
                .filter(it -> it.startsWith("good ") || it.startsWith("overloaded"))
                .toList();
        assertThat(names).hasSize(DRAWN);
        assertThat(names.get(0)).startsWith("overloaded");
        assertThat(words).contains("and " + (RAILS - DRAWN) + " more, not drawn.");
    }

    private static Rail rail(String name, double typicalA) {
        return new Rail(
                name,
                Samples.regulator(5, 3, OptionalDouble.empty()),
                List.of(Samples.load("x", 1, typicalA, 1.2 * typicalA)),
                false);
    }
}
